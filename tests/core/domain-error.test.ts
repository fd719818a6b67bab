import { expect, test } from 'vitest';
import {
  type Allowed,
  DomainError,
  demand,
  demandWhole,
  ifAllowed,
  Unsettled,
} from '../../src/core/domain-error.ts';

test('a refusal or an unsettled search gives undefined, and any other error is thrown on', () => {
  const thrown = (error: Error) => () => {
    throw error;
  };
  expect(ifAllowed(() => 0)).toBe(0);
  expect(ifAllowed(() => demand('x', -1, 'mass', { min: 0 }))).toBeUndefined();
  expect(ifAllowed(thrown(new Unsettled()))).toBeUndefined();
  expect(() => ifAllowed(thrown(new TypeError('broken')))).toThrow('broken');
});

/** Whether a value is let through. */
const passes = (value: number, allowed: Allowed) =>
  ifAllowed(() => demand('x', value, 'mass', allowed) ?? true) ?? false;

test('the ends of a range belong to it unless excluded', () => {
  const values = [0.9, 1, 1.5, 2, 2.1];
  const through = (allowed: Allowed) => values.filter((value) => passes(value, allowed));
  expect(through({ min: 1, max: 2 })).toEqual([1, 1.5, 2]);
  expect(through({ min: 1, max: 2, aboveMin: true })).toEqual([1.5, 2]);
  expect(through({ min: 1, max: 2, belowMax: true })).toEqual([1, 1.5]);
  expect(through({ min: 1 })).toEqual([1, 1.5, 2, 2.1]);
  expect(through({ max: 2 })).toEqual([0.9, 1, 1.5, 2]);
});

test('NaN and infinity are refused by every range', () => {
  for (const value of [Number.NaN, Infinity, -Infinity]) expect(passes(value, {})).toBe(false);
});

test('a DomainError carries the value, the allowed range and the reason', () => {
  const facts = { quantity: 'x', value: 3, kind: 'mass', allowed: { max: 2 } };
  const refused = (because?: string) => () => demand('x', 3, 'mass', { max: 2 }, because);
  expect(refused()).toThrow(DomainError);
  expect(refused()).toThrow(expect.objectContaining({ ...facts, because: undefined }));
  expect(refused('too-much')).toThrow(expect.objectContaining({ ...facts, because: 'too-much' }));
  expect(refused('too-much')).toThrow('x = 3 is not within {"max":2} (too-much)');
  expect(refused()).toThrow(/\{"max":2\}$/);
});

test('a count out of its range is refused for that first, then one that is not whole', () => {
  expect(() => demandWhole('n', 3, { min: 1 })).not.toThrow();
  const facts = { quantity: 'n', kind: 'count', allowed: { min: 1 } };
  expect(() => demandWhole('n', 2.5, { min: 1 })).toThrow(
    expect.objectContaining({ ...facts, value: 2.5, because: 'not-a-whole-number' }),
  );
  expect(() => demandWhole('n', 0.5, { min: 1 })).toThrow(
    expect.objectContaining({ ...facts, value: 0.5, because: undefined }),
  );
});
