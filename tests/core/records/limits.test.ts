import { describe, expect, test } from 'vitest';
import { drainedPerMinute, foamDrift } from '../../../src/core/records/foam-drift.ts';
import { landingOdds } from '../../../src/core/records/landing-odds.ts';
import { learn } from '../../../src/core/records/learn.ts';
import { median, pullIn, robustDeviation } from '../../../src/core/records/robust.ts';
import { expectLimits } from '../refuses.ts';

const positive = { refuses: [0, -1] };

describe('learning', () => {
  const prior = { mean: 0, spread: 1, weight: 1, freedom: 3 };

  test('one batch gives the estimate worked out by hand', () => {
    // κ = 2, ν = 4, m = 1, ν s² = 3 + ½ · 2² = 5; the next batch with scale s √1.5, and ± √(4/2) of it.
    const { estimate, plusMinus, own, next, t } = learn({ values: [2], prior });
    expect(estimate).toBe(1);
    expect(t).toEqual({ mean: 1, scale: expect.closeTo(Math.sqrt(1.875), 12), freedom: 4 });
    expect(plusMinus).toBeCloseTo(Math.sqrt(3.75), 12);
    // t of 4 degrees of freedom, 95 %: 2.776445.
    expect(own.high - 1).toBeCloseTo(2.776445 * Math.sqrt(1.25 / 2), 5);
    expect(1 - next.low).toBeCloseTo(2.776445 * Math.sqrt(1.875), 5);
  });

  test('two batches give the estimate worked out by hand', () => {
    // κ = 3, ν = 5, m = 6/3; ν s² = 3 + (1 + 1) about their middle + (1 · 2/3) · 3², 11 in all.
    const { estimate, t } = learn({ values: [2, 4], prior });
    expect(estimate).toBeCloseTo(2, 12);
    expect(t.freedom).toBe(5);
    expect(t.scale).toBeCloseTo(Math.sqrt((11 / 5) * (4 / 3)), 12);
  });

  test('on a logarithmic scale one batch at prior weight 1 gives the geometric mean', () => {
    const l = learn({ values: [4], prior: { ...prior, mean: 1, log: true } });
    expect(l.estimate).toBeCloseTo(2, 12);
    const deviation = l.t.scale * Math.SQRT2;
    expect(l.plusMinus).toBeCloseTo(Math.exp(deviation) - Math.exp(-deviation), 9);
  });

  test('refuses priors with a weight or spread of 0, or degrees of freedom that are not whole', () => {
    expectLimits((p: typeof prior) => learn({ values: [2], prior: p }), prior, {
      weight: positive,
      spread: positive,
      freedom: { takes: [3], refuses: [2, 3.5] },
      mean: { takes: [0, -1], refuses: [Number.NaN], as: 'values' },
    });
    expect(() => learn({ values: [2, Number.NaN], prior })).toThrow('values');
    expect(() => learn({ values: [2], prior: { ...prior, log: true } })).toThrow('values');
  });
});

describe('robust figures', () => {
  test('the median of an even number of readings is the mean of the middle two', () => {
    expect(median([10, 1, 3, 2])).toBe(2.5);
    expect(robustDeviation([1, 2, 3, 4, 100])).toBeCloseTo(1.4826, 12);
    expect(() => median([])).toThrow('values');
    expect(() => median([1, Number.NaN])).toThrow('values');
  });

  test('of four readings an outlier is moved to two and a half deviations', () => {
    expect(pullIn([1, 1, 1, 9], 0.1)).toEqual({ values: [1, 1, 1, 1.25], moved: [3] });
    expect(pullIn([1, 1, 1, -9], 0.1)).toEqual({ values: [1, 1, 1, 0.75], moved: [3] });
    expect(pullIn([1, 1, 9], 0.1).moved).toEqual([]);
    expect(() => pullIn([1, 2, 3, 4], -0.1)).toThrow('least');
  });
});

test('the odds of landing refuse aims, tolerances, scatters and foams out of range', () => {
  const of = { aim: 0.9, tolerance: 0.05, scale: 0.03, foamDensity: 80 };
  expectLimits(
    ({ aim, tolerance, scale, foamDensity }: typeof of) =>
      landingOdds({
        plan: { target: 600, baseDensity: 1951, foamDensity },
        aim,
        next: { mean: 0.9, scale, freedom: 9 },
        tolerance,
      }),
    of,
    {
      aim: { takes: [1], refuses: [0, 1.01] },
      tolerance: { takes: [0], refuses: [-0.01, 1] },
      scale: positive,
      foamDensity: { refuses: [0, -1, 1000] },
    },
  );
  // A foam of 512 in water of 1024 that lives whole: neither it nor the base mix is a mix of both.
  const at = (target: number) =>
    landingOdds({
      plan: { target, baseDensity: 2048, foamDensity: 512, waterDensity: 1024 },
      aim: 1,
      next: { mean: 0.9, scale: 0.03, freedom: 9 },
      tolerance: 0.05,
    });
  for (const [target, because] of [
    [512, 'lighter-than-foam'],
    [2048, 'heavier-than-base-mix'],
  ] as const)
    expect(() => at(target)).toThrow(
      expect.objectContaining({ quantity: 'target', value: target, because }),
    );
});

test('refuses foam densities and times of 0, and a drift beyond −1 to 0', () => {
  expectLimits(
    foamDrift,
    { first: 80, later: 76, time: 600 },
    {
      first: positive,
      later: positive,
      time: positive,
    },
  );
  expectLimits(
    drainedPerMinute,
    { drift: -0.05 },
    { drift: { takes: [-1, 0], refuses: [-1.1, 0.1] } },
  );
});
