import { expect, test } from 'vitest';
import { READINGS } from '../../src/bench/records/readings.ts';
import { KINDS, type Kind, unitOf } from '../../src/core/quantity/kinds.ts';
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

test('words for units are read only in fields that are asked in them', () => {
  const readings = Object.values(READINGS).flatMap((one) => ('kind' in one ? [one.kind] : []));
  const asked = new Set<Kind>(
    [...numbers, ...readings.map((kind) => ({ kind }))].map(({ kind }) => kind),
  );
  // These have none: a plain number, and two that are copied with their symbols.
  const bySymbol: readonly Kind[] = ['count', 'molarEnergy', 'specificEnergy'];
  const spelt = (Object.keys(KINDS) as Kind[]).filter((kind) =>
    KINDS[kind].units.some(({ aliases }) => aliases.length > 0),
  );
  expect(spelt.toSorted()).toEqual([...asked].filter((kind) => !bySymbol.includes(kind)).sort());
});
