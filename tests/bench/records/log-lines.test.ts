import { expect, test } from 'vitest';
import { dropLinesBut, keepLines, linesOf } from '../../../src/bench/records/log-lines.ts';
import { FakeStorage } from './fake-storage.ts';

const fake = () => {
  const fake = new FakeStorage();
  return { fake, store: fake as unknown as Storage };
};
const lines = '0\t18.5\n1\t19.0';

test('lines not attached are there again, each at its batch, until they are emptied', () => {
  const { store } = fake();
  expect(keepLines('a', lines, store)).toBe(true);
  expect(keepLines('b', '5', store)).toBe(true);
  expect([linesOf('a', store), linesOf('b', store), linesOf('c', store)]).toEqual([lines, '5', '']);
  expect(keepLines('a', ' \n', store)).toBe(true);
  expect(Object.keys(store)).toHaveLength(1);
});

test('what cannot be kept is said, and no older lines stay in its place', () => {
  const { fake: full, store } = fake();
  keepLines('a', '0 18', store);
  full.hold(10);
  expect(keepLines('a', lines, store)).toBe(false);
  expect(linesOf('a', store)).toBe('');
  expect(keepLines('a', 'x'.repeat(300_000), fake().store)).toBe(true);
  expect(keepLines('a', 'x'.repeat(300_001), fake().store)).toBe(false);
  expect(keepLines('a', lines, undefined)).toBe(false);
});

test('of batches that are gone for good none stay', () => {
  const { store } = fake();
  keepLines('a', lines, store);
  keepLines('b', lines, store);
  dropLinesBut(['b'], store);
  expect([linesOf('a', store), linesOf('b', store)]).toEqual(['', lines]);
});
