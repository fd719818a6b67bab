import { expect, test } from 'vitest';
import { interpolate } from '../../src/core/interpolate.ts';

const xs = [0.1, 0.3, 0.7];
const ys = [1.1, 2.3, 0.3];

test('interpolates linearly between points and is constant outside them', () => {
  xs.forEach((x, i) => {
    expect(interpolate(xs, ys, x)).toBe(ys[i]);
  });
  expect(interpolate(xs, ys, 0.2)).toBeCloseTo(1.7, 12);
  expect(interpolate(xs, ys, 0.6)).toBeCloseTo(0.8, 12);
  expect([-1, 0.099, 0.71, 9].map((x) => interpolate(xs, ys, x))).toEqual([1.1, 1.1, 0.3, 0.3]);
  expect(interpolate([5], [7], 6)).toBe(7);
});
