import { expect, test } from 'vitest';
import { wholeFilled, wholeOnes } from '../../../src/core/mix/whole.ts';

test.each([
  [0.2, 1],
  [2, 2],
  // What two bags of 25 kg come to after they were shared out to a cubic metre and back.
  [2.0000000000000004, 2],
  [2 * (1 + 0.9e-9), 2],
  [2 * (1 + 1.1e-9), 3],
  [2.01, 3],
])('%d takes %d', (amount, ones) => {
  expect(wholeOnes(amount)).toBe(ones);
});

test('rounds up, at least to the number given', () => {
  expect(wholeOnes(2.1, 2)).toBe(3);
  expect(wholeOnes(2.1, 4)).toBe(4);
});

test.each([
  [0.2, 0],
  [2, 2],
  [1.9999999999999998, 2],
  [2 * (1 - 0.9e-9), 2],
  [2 * (1 - 1.1e-9), 1],
  [2.99, 2],
])('%d fills %d', (amount, ones) => {
  expect(wholeFilled(amount)).toBe(ones);
});
