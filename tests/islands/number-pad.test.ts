import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { parseQuantity } from '../../src/core/quantity/parse.ts';
import { readNumber } from '../../src/islands/engine/read-number.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { Fields, NumberField } from '../../src/islands/fields.ts';
import { NumberInput } from '../../src/islands/parts/NumberInput.tsx';
import { sheets } from '../worksheets/all.ts';

const say = speaker('metric');

/** Whether a phone shows keys for numbers alone. */
function hasPad(field: NumberField): boolean {
  const reading = readNumber(field, undefined, {}, say);
  const props = { reading, entry: undefined, system: 'metric', problem: undefined } as const;
  const given = { ...props, id: 'it', onEntry: () => {}, onLeave: () => {} };
  const [input] = /<input[^>]*>/.exec(renderToString(h(NumberInput, given)))!;
  return input.includes('inputmode="decimal"');
}

const numbers = sheets.flatMap(({ fields }) =>
  Object.values(fields as Fields).filter((field) => field.type === 'number'),
);
const mayBeNegative = ({ min, kind }: NumberField) => {
  const least = parseQuantity(min ?? '', kind);
  return least.ok && least.number < 0;
};

test('fields that may be negative have no number pad, as some lack a minus', () => {
  const negative = numbers.filter(mayBeNegative);
  expect(negative.some(({ kind }) => kind === 'ratio')).toBe(true);
  expect(negative.filter(hasPad).map(({ label }) => label)).toEqual([]);
  expect(numbers.some(hasPad)).toBe(true);
});
