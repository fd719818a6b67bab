import { afterEach, expect, test, vi } from 'vitest';
import { readCompound } from '../../../src/core/quantity/compound.ts';
import { parseQuantity } from '../../../src/core/quantity/parse.ts';

// A unit's spelling is brought into one form before two are held against each other.
const compared = () => vi.spyOn(String.prototype, 'normalize');
afterEach(() => vi.restoreAllMocks());

test.each(['5.43', '5,43', '5.43 kg', '1,234.5'])(
  '%s is one number, compared with no unit',
  (text) => {
    const spellings = compared();
    expect(readCompound(text, 'mass')).toBeUndefined();
    expect(spellings).not.toHaveBeenCalled();
  },
);

test('a number followed by a unit and another number is compared with the units', () => {
  const spellings = compared();
  expect(readCompound('3 lb 4 oz', 'mass')?.number).toBe(3.25);
  expect(spellings).toHaveBeenCalled();
});

test.each([
  ["1'000", 1000],
  ['1’011', 1011],
  ["1'200 mm", 1200],
])('%s groups thousands with an apostrophe, and has no inches', (text, mm) => {
  const read = parseQuantity(text, 'length', 'mm');
  expect(read.ok && read.value * 1000).toBeCloseTo(mm, 9);
});

test.each(["5'6", '5\' 6"', `5'-6"`])('%s is read as feet and inches', (text) => {
  expect(readCompound(text, 'length')?.number).toBe(5.5);
});
