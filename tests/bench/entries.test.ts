import { expect, test } from 'vitest';
import { isKept, keptValue } from '../../src/bench/entries.ts';

test.each<[unknown, boolean]>([
  [{ v: 600, from: 'What goes into it?', by: 'proportion' }, true],
  [{ v: 600, pm: 5, from: 'What goes into it?' }, true],
  [{ waits: true, from: 'What goes into it?', by: 'proportion' }, true],
  [{ v: 600, from: 'What goes into it?', by: 3 }, false],
  [{ waits: true, from: 'What goes into it?', by: {} }, false],
  [{ waits: true, by: 'proportion' }, false],
  [{ waits: 1, from: 'What goes into it?' }, false],
  [{ v: 600, by: 'proportion' }, false],
  [{ v: null, from: 'What goes into it?' }, false],
  [{ v: 600, from: 'What goes into it?', example: 'yes' }, false],
  [{ v: 600, pm: 'wide', from: 'What goes into it?' }, false],
  [1, false],
  [null, false],
])('%j is a kept result: %s', (x, is) => {
  expect(isKept(x)).toBe(is);
});

test('a waiting result has no number', () => {
  expect(keptValue({ v: 0, from: 'x' })).toBe(0);
  expect(keptValue({ waits: true, from: 'x' })).toBeUndefined();
  expect(keptValue(undefined)).toBeUndefined();
});
