import fc from 'fast-check';
import { expect, test } from 'vitest';
import { controlChart } from '../../../src/core/records/control-chart.ts';

test('limits do not depend on the unit', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -0.3, max: 0.3, noNaN: true }), { minLength: 2, maxLength: 40 }),
      (values) => {
        const a = controlChart(values);
        const b = controlChart(values.map((x) => 100 * x));
        expect(b.low).toBeCloseTo(100 * a.low, 8);
        expect(b.high).toBeCloseTo(100 * a.high, 8);
        expect(a.low).toBeLessThanOrEqual(a.high);
      },
    ),
  );
});

test('the points flagged do not depend on the unit', () => {
  const values = [...Array(8).fill(1.2), 1, 1.1, 0.9, ...Array(8).fill(0.8), 1, 5];
  const found = ({ beyond, jumps, runs }: ReturnType<typeof controlChart>) => ({
    beyond,
    jumps,
    runs,
  });
  // The centre is 25/21: the first eight lie just above it, the twelve before the last below.
  expect(found(controlChart(values))).toEqual({ beyond: [20], jumps: [20], runs: [7, 19] });
  for (const unit of [2 ** -40, 2 ** 40])
    expect(found(controlChart(values.map((x) => x * unit)))).toEqual(found(controlChart(values)));
});

test('an outlier is beyond the limits and a jump, on either side', () => {
  const quiet = [0.01, -0.01, 0.02, 0, -0.02, 0.01, 0, 0.01, -0.01, 0, 0.02, -0.01];
  expect(controlChart(quiet).beyond).toEqual([]);
  const wild = controlChart([...quiet, 0.4]);
  expect(wild.beyond).toEqual([12]);
  expect(wild.jumps).toEqual([12]);
  // Turned over: too low is as wild as too high.
  const low = controlChart([...quiet.map((x) => -x), -0.4]);
  expect(low.beyond).toEqual([12]);
  expect(low.jumps).toEqual([12]);
  expect(low.low).toBeCloseTo(-wild.high, 12);
});

test('the limit of a jump is 3.267 mean ranges', () => {
  // D₄ for ranges of two: NIST/SEMATECH 6.3.2, table of factors, from memory.
  const ranges = (last: number) => [1, 2, 1, 2, 1, 2, 1, 2, 1, 2, 1, 2, 1, 2, 1, 2, 1, 1 + last];
  const chart = controlChart(ranges(1));
  expect(chart.meanRange).toBe(1);
  expect(Math.abs(chart.rangeHigh - 3.267)).toBeLessThan(0.0006);
  // Sixteen ranges of 1 and one of r: the mean range is (16 + r)/17, so r = 3.267 × 16/(17 − 3.267).
  expect(controlChart(ranges(3.78)).jumps).toEqual([]);
  expect(controlChart(ranges(3.83)).jumps).toEqual([17]);
});

test('eight values on one side of the centre are a run, seven are not', () => {
  const side = (n: number) => [...Array(n).fill(1), ...Array(n).fill(-1)];
  expect(controlChart(side(7)).runs).toEqual([]);
  expect(controlChart(side(8)).runs).toEqual([7, 15]);
  // A side is a side of the centre, not of nought.
  for (const shift of [5, -5])
    expect(controlChart(side(8).map((x) => x + shift)).runs).toEqual([7, 15]);
});

test('equal values are never flagged', () => {
  const chart = controlChart([0.3, 0.3, 0.3]);
  expect(chart.beyond).toEqual([]);
  expect(chart.jumps).toEqual([]);
  expect(chart.provisional).toBe(true);
  // Ten times 0.1 sum to less than 1 in binary: the centre is a last digit below them all.
  for (const value of [0, 0.1, -0.1, 1e-9]) {
    const { beyond, jumps, runs } = controlChart(Array(10).fill(value));
    expect({ beyond, jumps, runs }).toEqual({ beyond: [], jumps: [], runs: [] });
  }
});

test('limits are provisional up to the nineteenth batch', () => {
  const wave = (n: number) => Array.from({ length: n }, (_, i) => i % 2);
  expect(controlChart(wave(19)).provisional).toBe(true);
  expect(controlChart(wave(20)).provisional).toBe(false);
});

test('refuses fewer than two values, and values that are not finite', () => {
  for (const values of [[], [1], [1, Number.NaN, 2], [1, 2, Number.POSITIVE_INFINITY]])
    expect(() => controlChart(values)).toThrow(/^values/);
});

test('the ± of the mean is by Student’s t, and shrinks with the number of batches', () => {
  // 0.02 and 0.04: range 0.02, σ = 0.02/1.12838, t(1) = 12.706, over √2.
  expect(controlChart([0.02, 0.04]).centreReach).toBeCloseTo(0.15925, 4);
  const wave = (n: number) => Array.from({ length: n }, (_, i) => (i % 2 ? 0.01 : -0.01));
  expect(controlChart(wave(20)).centreReach).toBeLessThan(controlChart(wave(6)).centreReach);
});
