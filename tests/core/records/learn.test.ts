import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drainedPerMinute, foamDrift } from '../../../src/core/records/foam-drift.ts';
import { landingOdds } from '../../../src/core/records/landing-odds.ts';
import { learn, type Prior } from '../../../src/core/records/learn.ts';
import { PRIORS, withinPossible } from '../../../src/core/records/priors.ts';
import { median, pullIn, robustDeviation } from '../../../src/core/records/robust.ts';
import { repeated } from '../../../src/core/uncertainty/repeated.ts';
import { studentT, studentTBelow } from '../../../src/core/uncertainty/student-t.ts';

const prior = PRIORS.survival;
const values = fc.array(fc.double({ min: 0.6, max: 1.1, noNaN: true }), {
  minLength: 1,
  maxLength: 30,
});

describe('learning from batches', () => {
  test('without batches the estimate is the prior mean', () => {
    const l = learn({ values: [], prior });
    expect(l.estimate).toBe(0.95);
    expect(l.count).toBe(0);
  });

  test('the estimate lies between the prior mean and the batches', () => {
    fc.assert(
      fc.property(values, (x) => {
        const { estimate, own, next } = learn({ values: x, prior });
        expect(estimate).toBeGreaterThanOrEqual(Math.min(0.95, ...x) - 1e-12);
        expect(estimate).toBeLessThanOrEqual(Math.max(0.95, ...x) + 1e-12);
        expect(next.low).toBeLessThan(own.low);
        expect(next.high).toBeGreaterThan(own.high);
      }),
    );
  });

  test('does not depend on the order of the batches', () => {
    fc.assert(
      fc.property(values, (x) => {
        const a = learn({ values: x, prior });
        const b = learn({ values: x.toReversed(), prior });
        expect(b.estimate).toBeCloseTo(a.estimate, 12);
        expect(b.plusMinus).toBeCloseTo(a.plusMinus, 12);
      }),
    );
  });

  test('more of the same batches narrow the interval and outweigh the prior', () => {
    const x = [0.84, 0.86, 0.85, 0.83, 0.87];
    const few = learn({ values: x, prior });
    const many = learn({ values: Array.from({ length: 20 }, () => x).flat(), prior });
    expect(many.own.high - many.own.low).toBeLessThan(few.own.high - few.own.low);
    expect(many.plusMinus).toBeLessThan(few.plusMinus);
    expect(Math.abs(many.estimate - 0.85)).toBeLessThan(Math.abs(few.estimate - 0.85));
  });

  test('a prior of almost no weight gives the t interval of the readings', () => {
    const x = [0.9, 0.93, 0.91, 0.94, 0.92, 0.9, 0.95];
    const faint: Prior = { mean: 0.5, spread: 1e-6, weight: 1e-9, freedom: 3 };
    const { estimate, own, t } = learn({ values: x, prior: faint });
    const plain = repeated({ values: x, kind: 'ratio' });
    expect(estimate).toBeCloseTo(plain.mean, 8);
    // Three more degrees of freedom with no scatter in them: s² is spread over n + 3 instead of n − 1.
    const s = plain.deviation! * Math.sqrt((x.length - 1) / (x.length + 3));
    expect(t.freedom).toBe(10);
    expect((own.high - own.low) / 2).toBeCloseTo(
      (studentT({ freedom: 10, confidence: 0.95 }) * s) / Math.sqrt(7),
      6,
    );
  });

  test('an outlier is pulled in, so that its distance does not matter', () => {
    const good = [0.92, 0.94, 0.93, 0.95, 0.93, 0.94];
    const spoiled = learn({ values: [...good, 0.1], prior });
    const worse = learn({ values: [...good, -5], prior });
    expect(spoiled.moved).toEqual([6]);
    expect(worse.estimate).toBeCloseTo(spoiled.estimate, 12);
    expect(spoiled.estimate).toBeGreaterThan(0.91);
  });

  test('intervals are cut to possible values: survival at 1, settling at 0', () => {
    const free = learn({ values: [0.87], prior });
    expect(free.next.high).toBeGreaterThan(1);
    const l = withinPossible('survival', free);
    expect(l.next).toEqual({ low: free.next.low, high: 1 });
    expect(l.ends).toEqual({ low: false, high: true });
    expect(l.t).toEqual(free.t);
    const sunk = withinPossible('settling', learn({ values: [0.01], prior: PRIORS.settling }));
    expect(sunk.next.low).toBe(0);
    fc.assert(
      fc.property(values, (x) => {
        const { estimate, own, next } = withinPossible('survival', learn({ values: x, prior }));
        for (const share of [estimate, own.low, own.high, next.low, next.high]) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1);
        }
      }),
    );
    const age = learn({ values: [90_000], prior: PRIORS.stripAge });
    expect(withinPossible('stripAge', age)).toMatchObject(age);
  });

  test('ages are learned on a logarithmic scale', () => {
    const l = learn({ values: [48, 60, 40].map((h) => h * 3600), prior: PRIORS.stripAge });
    expect(l.next.low).toBeGreaterThan(0);
    expect(l.estimate ** 2 / l.own.low).toBeCloseTo(l.own.high, 4);
    expect(() => learn({ values: [0], prior: PRIORS.stripAge })).toThrow('values');
  });

  test('the interval for the next batch covers 95 % of its predictive distribution', () => {
    const { next, t } = learn({ values: [0.9, 0.93, 0.88], prior });
    const below = (x: number) => studentTBelow({ t: (x - t.mean) / t.scale, freedom: t.freedom });
    expect(below(next.high) - below(next.low)).toBeCloseTo(0.95, 9);
  });
});

describe('robust figures', () => {
  test('the median and robust deviation withstand nearly half of outliers', () => {
    expect(median([1, 2, 3, 1e9, 1e9 + 1].slice(0, 5))).toBe(3);
    expect(robustDeviation([5, 5, 5, 5, 900])).toBe(0);
  });
  test('ordinary readings are not moved, nor any of only three', () => {
    expect(pullIn([1, 2, 3, 4, 5], 0).moved).toEqual([]);
    expect(pullIn([1, 2, 900], 0).moved).toEqual([]);
  });
  test('after equal readings a slightly different one is not an outlier', () => {
    expect(pullIn([0.9, 0.9, 0.9, 0.9, 0.92], 0.0125).moved).toEqual([]);
  });
});

describe('the odds of landing', () => {
  const plan = { target: 600, baseDensity: 1951, foamDensity: 80 };
  const next = { mean: 0.9, scale: 0.03, freedom: 9 };

  test('are best when the foam is planned for the survival expected', () => {
    const at = (aim: number) => landingOdds({ plan, aim, next, tolerance: 0.05 });
    expect(at(0.9)).toBeGreaterThan(at(1));
    expect(at(0.9)).toBeGreaterThan(at(0.8));
  });

  test('grow with the tolerance and shrink with the scatter', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.3, noNaN: true }),
        fc.double({ min: 0.005, max: 0.2, noNaN: true }),
        (tolerance, scale) => {
          const at = (tol: number, s: number) =>
            landingOdds({ plan, aim: 0.9, next: { ...next, scale: s }, tolerance: tol });
          expect(at(tolerance * 1.5, scale)).toBeGreaterThanOrEqual(at(tolerance, scale));
          expect(at(tolerance, scale * 1.5)).toBeLessThanOrEqual(at(tolerance, scale) + 1e-12);
          expect(at(tolerance, scale)).toBeGreaterThanOrEqual(0);
          expect(at(tolerance, scale)).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  test('agree with counting simulated batches', () => {
    const { target, baseDensity, foamDensity } = plan;
    const [liquid, gas] = [0.08, 0.92];
    const foam = (1 - target / baseDensity) / (target * (liquid + gas) - foamDensity);
    let inside = 0;
    const steps = 4000;
    for (let i = 0; i < steps; i++) {
      const p = (i + 0.5) / steps;
      const t =
        Math.sign(p - 0.5) *
        studentT({ freedom: 9, confidence: Math.max(1e-12, Math.abs(2 * p - 1)) });
      const survival = 0.9 + 0.03 * t;
      const density =
        (1 + foamDensity * foam) / (1 / baseDensity + foam * (liquid + survival * gas));
      if (Math.abs(density / target - 1) <= 0.05) inside++;
    }
    expect(landingOdds({ plan, aim: 1, next, tolerance: 0.05 })).toBeCloseTo(inside / steps, 2);
  });

  test('refuse a target out of reach', () => {
    expect(() =>
      landingOdds({ plan: { ...plan, target: 2000 }, aim: 1, next, tolerance: 0.05 }),
    ).toThrow('heavier-than-base-mix');
    expect(() =>
      landingOdds({ plan: { ...plan, target: 85 }, aim: 0.9, next, tolerance: 0.05 }),
    ).toThrow('lighter-than-foam');
  });
});

test('the drift is the change of foam density in ten minutes, from two weighings at any interval', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 30, max: 150, noNaN: true }),
      // A foam that loses four fifths of itself within a minute leaves a drift of −1 in binary.
      fc.double({ min: 0.6, max: 1.4, noNaN: true }),
      fc.double({ min: 120, max: 3600, noNaN: true }),
      (first, share, time) => {
        const drift = foamDrift({ first, later: share * first, time });
        expect(first * (1 + drift) ** (time / 600)).toBeCloseTo(share * first, 6);
      },
    ),
  );
  expect(foamDrift({ first: 80, later: 76, time: 600 })).toBeCloseTo(-0.05, 12);
  // 0.9 in five minutes, and of that again in the next: 0.81.
  expect(foamDrift({ first: 80, later: 72, time: 300 })).toBeCloseTo(-0.19, 12);
});

test('the share drained per minute gives the drift over ten minutes', () => {
  const share = drainedPerMinute({ drift: -0.05 });
  expect((1 - share) ** 10).toBeCloseTo(0.95, 12);
  expect(drainedPerMinute({ drift: 0 })).toBe(0);
  expect(drainedPerMinute({ drift: -1 })).toBe(1);
});
