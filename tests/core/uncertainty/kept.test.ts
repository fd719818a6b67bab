import { expect, test } from 'vitest';
import { demand } from '../../../src/core/domain-error.ts';
import { firstOrder } from '../../../src/core/uncertainty/first-order.ts';
import { simulateNormal } from '../../../src/core/uncertainty/monte-carlo.ts';

const run = (seed: number, trials: number, size = 1) =>
  simulateNormal({
    mean: Array.from({ length: size }, () => 0),
    u: Array.from({ length: size }, () => 1),
    model: (x, y) => {
      y[0] = x[0]!;
    },
    results: 1,
    trials,
    seed,
  });

test('random numbers kept from one run are reused for the same seed only, and a longer run draws the rest', () => {
  const short = run(11, 100).values[0]!;
  const longer = run(11, 300);
  expect(longer.impossible).toBe(0);
  expect([...longer.values[0]!.slice(0, 100)]).toEqual([...short]);
  expect(run(12, 100).values[0]![0]).not.toBe(short[0]);
  expect([...run(11, 100).values[0]!]).toEqual([...short]);
});

test('where the model refuses one side, the one-sided slope of a parabola is still exact', () => {
  const parabola = (allowed: (x: number) => boolean) => (x: readonly number[]) => {
    if (!allowed(x[0]!)) demand('x', x[0]!, 'count', { max: -1 }, 'refused');
    return x[0]! ** 2 + 3 * x[0]!;
  };
  // At 2 the slope is 7; with u = 0.1 that carries 0.7.
  expect(
    firstOrder(
      parabola((x) => x >= 2),
      [2],
      [0.1],
    ).u,
  ).toBeCloseTo(0.7, 9);
  expect(
    firstOrder(
      parabola((x) => x <= 2),
      [2],
      [0.1],
    ).u,
  ).toBeCloseTo(0.7, 9);
  expect(() =>
    firstOrder(
      parabola((x) => x === 2),
      [2],
      [0.1],
    ),
  ).toThrow('refused');
});
