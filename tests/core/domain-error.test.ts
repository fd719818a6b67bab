import { expect, test } from 'vitest';
import { demand, ifAllowed, Unsettled } from '../../src/core/domain-error.ts';

test('what core refuses or does not settle is nothing, and a fault is not hidden', () => {
  const thrown = (error: Error) => () => {
    throw error;
  };
  expect(ifAllowed(() => 0)).toBe(0);
  expect(ifAllowed(() => demand('x', -1, 'mass', { min: 0 }))).toBeUndefined();
  expect(ifAllowed(thrown(new Unsettled()))).toBeUndefined();
  expect(() => ifAllowed(thrown(new TypeError('broken')))).toThrow('broken');
});
