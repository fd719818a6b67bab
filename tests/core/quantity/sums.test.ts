import { expect, test } from 'vitest';
import { parseQuantity } from '../../../src/core/quantity/parse.ts';
import { problem } from './read.ts';

test.each([
  ['10.2+10.2', 20.4],
  ['10,2 + 10,2 kg', 20.4],
  ['10 kg + 850 g', 10.85],
  ['4.2 + 4.2 + 0.6', 9],
  ['1e+1 + 2', 12],
  ['+5', 5],
])('a mass weighed in several goes: %j', (text, kilograms) => {
  const read = parseQuantity(text, 'mass', 'kg');
  expect(read.ok && read.value).toBeCloseTo(kilograms, 9);
});

test.each([
  ['10.2 + 10.2 kg', 'kg', 20.4],
  ['1 + 2 + 3 lb', 'lb', 6 * 0.45359237],
  ['10.2 kg + 10.2', 'lb', 20.4],
  ['10 kg + 5', 'g', 15],
  ['1 lb + 2 + 3', 'kg', 6 * 0.45359237],
  ['1 + 2 lb + 3', 'lb', 6 * 0.45359237],
  ['10 kg + 500 g', 'lb', 10.5],
  ['3 lb 4 oz + 1 lb', 'kg', 4.25 * 0.45359237],
  ['10 + 2', 'lb', 12 * 0.45359237],
])('one unit said is that of each part: %j in a field of %s', (text, unit, kg) => {
  const read = parseQuantity(text, 'mass', unit);
  expect(read.ok && read.value).toBeCloseTo(kg, 9);
});

test.each([
  ['10 kg + 500 g + 3', '3'],
  ['10 lb + 5 + 2 kg', '5'],
  ['3 lb 4 oz + 2', '2'],
])('beside several units a part with none is not guessed: %j', (text, part) => {
  expect(problem(text)).toEqual({ code: 'part-without-unit', read: text, part });
});

test.each([
  // Half a kilogram and 250 g, or two weighings on a scale that shows grams?
  ['0.5 + 250 g', '0.5', 'mass', 'kg'],
  ['10.2 + 9.8 lb', '10.2', 'mass', 'kg'],
  ['1 + 2 lb + 3', '1', 'mass', 'kg'],
  ['12 + 3 gal', '12', 'volume', 'L'],
] as const)(
  'nor is a first part with none where another unit is shown: %j',
  (read, part, kind, unit) => {
    expect(parseQuantity(read, kind, unit)).toEqual({
      ok: false,
      problem: { code: 'part-without-unit', read, part },
    });
  },
);

test('pounds and gallons add up in their own units, and keep the first', () => {
  expect(parseQuantity('1 gal + 2 qt', 'volume')).toMatchObject({
    number: 1.5,
    unit: { id: 'gal' },
  });
});

test('a part that cannot be read is named, and kinds that do not add up are not summed', () => {
  expect(problem('5 + 3 mm', 'mass')).toMatchObject({ code: 'unknown-unit', unit: 'mm' });
  expect(problem('abc + 3', 'mass')).toMatchObject({ code: 'not-a-number' });
  expect(problem('5 +', 'mass')).toBeDefined();
  expect(problem('20 + 5', 'temperature')).toMatchObject({ code: 'several-numbers' });
  expect(problem('1e308 t + 1e308', 'mass')).toMatchObject({ code: 'too-large' });
  expect(problem('1 t + 1e308', 'mass')).toMatchObject({ code: 'too-large' });
});
