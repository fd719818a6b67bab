import { expect, test } from 'vitest';
import { costliestMultiplier } from '../../../src/core/demould/lifting-equation/advice.ts';

const multipliers = {
  horizontal: 0.9,
  vertical: 0.95,
  distance: 0.9,
  asymmetry: 1,
  frequency: 0.94,
  coupling: 1,
};

test('the smallest multiplier costs most; of equals the first in the equation', () => {
  expect(costliestMultiplier(multipliers)).toBe('horizontal');
  expect(costliestMultiplier({ ...multipliers, frequency: 0.75 })).toBe('frequency');
  expect(costliestMultiplier({ ...multipliers, coupling: 0.89 })).toBe('coupling');
});
