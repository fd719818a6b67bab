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

test('a batch far out is beyond the limits, and a jump', () => {
  const quiet = [0.01, -0.01, 0.02, 0, -0.02, 0.01, 0, 0.01, -0.01, 0, 0.02, -0.01];
  expect(controlChart(quiet).beyond).toEqual([]);
  const wild = controlChart([...quiet, 0.4]);
  expect(wild.beyond).toEqual([12]);
  expect(wild.jumps).toEqual([12]);
});

test('eight on one side are a run, seven are not', () => {
  const side = (n: number) => [...Array(n).fill(1), ...Array(n).fill(-1)];
  expect(controlChart(side(7)).runs).toEqual([]);
  expect(controlChart(side(8)).runs).toEqual([7, 15]);
});

test('equal values have no limits to be outside of', () => {
  const chart = controlChart([0.3, 0.3, 0.3]);
  expect(chart.beyond).toEqual([]);
  expect(chart.jumps).toEqual([]);
  expect(chart.provisional).toBe(true);
});

test('the reach of the mean is that of Student, and shrinks with the batches', () => {
  // 0.02 and 0.04: range 0.02, σ = 0.02/1.12838, t(1) = 12.706, over √2.
  expect(controlChart([0.02, 0.04]).centreReach).toBeCloseTo(0.15925, 4);
  const wave = (n: number) => Array.from({ length: n }, (_, i) => (i % 2 ? 0.01 : -0.01));
  expect(controlChart(wave(20)).centreReach).toBeLessThan(controlChart(wave(6)).centreReach);
});
