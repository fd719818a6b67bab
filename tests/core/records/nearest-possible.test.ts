import { expect, test } from 'vitest';
import { demand } from '../../../src/core/domain-error.ts';
import { nearestPossible } from '../../../src/core/records/nearest-possible.ts';

const any = () => true;
/** Nothing at 2, and at 12. */
const ends = [(x: number) => 3 * (x - 2), (x: number) => 12 - x];

test('finds the nearest possible value, and none where none is possible', () => {
  const at = (read: number, can: (x: number) => boolean = any) =>
    nearestPossible({ read, doubt: 0.5, ends, can });
  expect(at(4)).toBeCloseTo(2, 12);
  expect(at(10)).toBeCloseTo(12, 12);
  expect(at(4, (x) => x > 3)).toBeCloseTo(12, 12);
  // From nothing there is no way down.
  expect(at(0)).toBeCloseTo(2, 12);
  expect(at(4, (x) => x > 13)).toBeUndefined();
});

test('finds nothing beyond the limits of a reading, but a limit itself where that is possible', () => {
  const at = (min: number, max: number, can: (x: number) => boolean = any) =>
    nearestPossible({ read: 4, doubt: 0.5, limits: { min, max }, ends, can });
  expect(at(0, 20)).toBeCloseTo(2, 12);
  expect(at(3, 20, (x) => x < 4)).toBe(3);
  expect(at(3, 20, (x) => x > 4)).toBeCloseTo(12, 12);
  expect(at(3, 11, (x) => x >= 12)).toBeUndefined();
  expect(at(3, 20, (x) => x < 3)).toBeUndefined();
  expect(at(3, 11, (x) => x > 4)).toBe(11);
});

test('finds it on curved relations as well as straight ones', () => {
  const bent = (x: number) => x / (1 + x / 100) - 5;
  expect(nearestPossible({ read: 20, doubt: 1, ends: [bent], can: any })).toBeCloseTo(100 / 19, 9);
});

test('a refusal counts as impossible, and any other error is thrown on', () => {
  const positive = (x: number) => {
    demand('x', x, 'mass', { min: 0 });
    return x + 1;
  };
  expect(nearestPossible({ read: 3, doubt: 1, ends: [positive], can: any })).toBeUndefined();
  const broken = () => {
    throw new TypeError('broken');
  };
  expect(() => nearestPossible({ read: 3, doubt: 1, ends: [broken], can: any })).toThrow('broken');
});
