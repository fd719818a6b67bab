import { expect, test } from 'vitest';
import { outsideRange } from '../../src/core/note.ts';
import { justOver, justUnder } from '../../src/core/quantity/dust.ts';

const note = [{ code: 'outside-range', of: 'age' }];

test('a value beyond either end of a source’s range gets a note, one on an end none', () => {
  const covered = { min: 2, max: 3 };
  for (const value of [2, 2.5, 3]) expect(outsideRange('age', value, covered)).toEqual([]);
  for (const value of [1.9999, 3.0001]) expect(outsideRange('age', value, covered)).toEqual(note);
});

test('an end that is not given is open', () => {
  expect(outsideRange('age', -1e300, { max: 3 })).toEqual([]);
  expect(outsideRange('age', 1e300, { min: 2 })).toEqual([]);
  expect(outsideRange('age', 3.1, { max: 3 })).toEqual(note);
  expect(outsideRange('age', 1.9, { min: 2 })).toEqual(note);
});

test('a value on an end is still on it after conversion to another unit and back', () => {
  const covered = { min: 0.0762, max: 0.1524 };
  // 3 in and 6 in.
  expect(outsideRange('length', 0.0762 * (1 - 1e-14), covered)).toEqual([]);
  expect(outsideRange('length', 0.1524 * (1 + 1e-14), covered)).toEqual([]);
});

test('a value within a rounding error of an end counts as inside', () => {
  expect(outsideRange('age', justUnder(1), { min: 1 })).toEqual([]);
  expect(outsideRange('age', justOver(1), { max: 1 })).toEqual([]);
});
