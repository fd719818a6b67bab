import { expect, test } from 'vitest';
import { KINDS, unitOf } from '../../src/core/quantity/kinds.ts';
import { parseQuantity } from '../../src/core/quantity/parse.ts';
import { unread } from '../../src/islands/engine/problems.ts';
import type { Fields, NumberField } from '../../src/islands/fields.ts';
import { sheets } from './all.ts';

const numbers = sheets.flatMap(({ fields }) =>
  Object.values(fields as Fields).flatMap((field) =>
    field.type === 'number'
      ? [field]
      : field.type === 'rows' || field.type === 'lines'
        ? Object.values(field.of).filter((of): of is NumberField => of.type === 'number')
        : [],
  ),
);

test.each(['metric', 'us'] as const)(
  'what an empty field asks for is written as it stands there, and can be typed so: %s',
  (system) => {
    expect(numbers.length).toBeGreaterThan(300);
    for (const field of numbers) {
      const { kind, example, label } = field;
      const of = parseQuantity(example, kind);
      if (!of.ok) continue;
      const shown = (field.units ?? KINDS[kind].shown)[system];
      const said = unread(field, { code: 'empty' }, shown);
      const [, asked = ''] = /such as (.*)\.$/.exec(said)!;
      const { symbol } = unitOf(kind, shown);
      expect(asked, label).toMatch(symbol === '' ? /^[\d.]+$/ : ` ${symbol}`);
      const read = parseQuantity(asked, kind, shown);
      if (!read.ok) throw new Error(`${label}: ${asked}`);
      expect(read.unit.id, label).toBe(shown);
      // In another unit it is rounded to three digits.
      expect(Math.abs(read.value - of.value), said).toBeLessThanOrEqual(
        5e-3 * Math.abs(of.value) + 1e-12,
      );
    }
  },
);
