import { expect, test } from 'vitest';
import { FIBRES, triedUpTo } from '../../../src/core/mix/fibres.ts';

test('a fibre is not doubted up to the dose read of, or else up to a line of our own', () => {
  expect(triedUpTo('polypropylene')).toBe(FIBRES.polypropylene.tried);
  // No dose of steel was read: the least of those that were.
  const tried = Object.values(FIBRES).flatMap(({ tried }) => tried ?? []);
  expect(FIBRES.steel.tried).toBeUndefined();
  expect(triedUpTo('steel')).toBe(Math.min(...tried));
});
