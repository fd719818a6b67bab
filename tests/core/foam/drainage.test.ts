import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { type DrainageReading, fitDrainage } from '../../../src/core/foam/drainage.ts';
import {
  type Bounded,
  drainedBounds,
  drainTimeBounds,
} from '../../../src/core/foam/drainage-bounds.ts';
import { drainedAt } from '../../../src/core/foam/drainage-curve.ts';
import { normal } from './seeded.ts';

interface Jar {
  readonly halfTime: number;
  readonly exponent: number;
  readonly first: number;
  readonly last: number;
  readonly count: number;
}

function readings(jar: Jar, error: number, seed: number): DrainageReading[] {
  const noise = normal(seed);
  return Array.from({ length: jar.count }, (_, i) => {
    const time = jar.first + ((jar.last - jar.first) * i) / (jar.count - 1);
    const noisy = drainedAt({ drainage: jar, time }) + error * noise();
    return { time, drained: Math.min(1 + 4 * error, Math.max(-4 * error, noisy)) };
  });
}

const holds = ({ low, high }: Bounded, truth: number) => low <= truth && truth <= high;

const TRIALS = 1000;

/** Fits jars read with seeded errors: how often a fit was offered, and each of its bounds false. */
function trials(jar: Jar, error: number) {
  let supported = 0;
  let sumN = 0;
  const wrong = { exponent: 0, constant: 0, halfTime: 0, quarterTime: 0 };
  for (let seed = 1; seed <= TRIALS; seed++) {
    const fit = fitDrainage({ readings: readings(jar, error, 7919 * seed), readingError: error });
    if (!fit.supported) continue;
    supported++;
    sumN += fit.exponent.value;
    if (!holds(fit.exponent, jar.exponent)) wrong.exponent++;
    if (!holds(fit.constant, jar.halfTime ** jar.exponent)) wrong.constant++;
    if (!holds(fit.halfTime, jar.halfTime)) wrong.halfTime++;
    if (!holds(fit.quarterTime, jar.halfTime * 3 ** (-1 / jar.exponent))) wrong.quarterTime++;
  }
  return {
    supported: supported / TRIALS,
    wrong: Math.max(...Object.values(wrong)) / TRIALS,
    meanN: sumN / supported,
  };
}

describe('fitting the drainage of a foam', () => {
  test('exact readings give back their n, c and times', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.6, max: 4, noNaN: true }),
        fc.double({ min: 120, max: 6000, noNaN: true }),
        (exponent, halfTime) => {
          const jar = { halfTime, exponent, first: halfTime / 6, last: 3 * halfTime, count: 9 };
          const fit = fitDrainage({ readings: readings(jar, 0, 1) });
          if (!fit.supported) throw new Error(fit.because);
          expect(fit.exponent.value / exponent).toBeCloseTo(1, 5);
          expect(Math.log(fit.constant.value)).toBeCloseTo(exponent * Math.log(halfTime), 4);
          expect(fit.halfTime.value / halfTime).toBeCloseTo(1, 5);
          expect(fit.quarterTime.value).toBeCloseTo(
            (fit.constant.value / 3) ** (1 / fit.exponent.value),
            3,
          );
          expect(fit.scatter).toBeLessThan(1e-6);
        },
      ),
    );
  });

  test.each<[string, Jar, number]>([
    ['a dozen readings', { halfTime: 600, exponent: 1, first: 10, last: 2400, count: 12 }, 0.01],
    [
      'eight to two half times',
      { halfTime: 600, exponent: 1.5, first: 60, last: 1200, count: 8 },
      0.02,
    ],
    ['a slow start', { halfTime: 600, exponent: 2.5, first: 60, last: 1200, count: 6 }, 0.01],
    ['a long tail', { halfTime: 600, exponent: 0.7, first: 10, last: 2400, count: 10 }, 0.02],
  ])('recovers n and c from noise, bounds that hold: %s', (_, jar, error) => {
    const { supported, wrong, meanN } = trials(jar, error);
    expect(supported).toBeGreaterThan(0.95);
    expect(Math.abs(meanN / jar.exponent - 1)).toBeLessThan(0.02);
    expect(wrong).toBeLessThan(0.05);
  });

  test.each<[string, Jar, number]>([
    ['a quarter drained', { halfTime: 1800, exponent: 1.5, first: 60, last: 900, count: 8 }, 0.02],
    ['an eighth drained', { halfTime: 3600, exponent: 1.2, first: 60, last: 900, count: 8 }, 0.01],
    ['four readings only', { halfTime: 900, exponent: 1.2, first: 10, last: 1200, count: 4 }, 0.02],
  ])('at the edge it mostly declines, and is seldom wrong: %s', (_, jar, error) => {
    const { supported, wrong } = trials(jar, error);
    expect(supported).toBeLessThan(0.75);
    expect(wrong).toBeLessThan(0.05);
  });

  test('bounds widen with the error of a reading and with the confidence', () => {
    const jar = { halfTime: 600, exponent: 1.3, first: 60, last: 1800, count: 8 };
    const width = (readingError: number, confidence: number) => {
      const fit = fitDrainage({ readings: readings(jar, 0, 1), readingError, confidence });
      return fit.supported ? fit.halfTime.high / fit.halfTime.low : Number.NaN;
    };
    expect(width(0.02, 0.95)).toBeGreaterThan(width(0.01, 0.95));
    expect(width(0.01, 0.99)).toBeGreaterThan(width(0.01, 0.95));
  });

  test('a time bound and a share bound are two sides of one', () => {
    const jar = { halfTime: 600, exponent: 1.3, first: 60, last: 1800, count: 8 };
    const fit = fitDrainage({ readings: readings(jar, 0.01, 3) });
    if (!fit.supported) throw new Error(fit.because);
    const { curve } = fit;
    for (const share of [0.1, 0.25, 0.5, 0.8]) {
      const time = drainTimeBounds({ curve, share });
      const drained = drainedBounds({ curve, time: time.value });
      expect(drained.value).toBeCloseTo(share, 9);
      expect(drained.low).toBeLessThan(share);
      // The slope of the curve ties the two half widths: dv = n v (1 − v) d ln t.
      const slope = curve.exponent * share * (1 - share);
      const odds = Math.log(drained.high / (1 - drained.high)) - Math.log(share / (1 - share));
      expect((odds * share * (1 - share)) / (slope * Math.log(time.high / time.value))).toBeCloseTo(
        1,
        6,
      );
    }
    expect(drainedBounds({ curve, time: 0 })).toEqual({ value: 0, low: 0, high: 0 });
  });

  test('the unit of time does not matter', () => {
    const jar = { halfTime: 10, exponent: 1.3, first: 1, last: 30, count: 8 };
    const minutes = fitDrainage({ readings: readings(jar, 0.01, 5) });
    const seconds = fitDrainage({
      readings: readings(jar, 0.01, 5).map((r) => ({ ...r, time: 60 * r.time })),
    });
    if (!minutes.supported || !seconds.supported) throw new Error('no fit');
    expect(seconds.halfTime.high).toBeCloseTo(60 * minutes.halfTime.high, 4);
    expect(seconds.exponent.low).toBeCloseTo(minutes.exponent.low, 6);
  });

  test('times read past the last reading say so', () => {
    const jar = { halfTime: 1000, exponent: 2, first: 50, last: 700, count: 10 };
    const fit = fitDrainage({ readings: readings(jar, 0, 1), readingError: 0.005 });
    if (!fit.supported) throw new Error(fit.because);
    expect(fit.notes).toEqual([{ code: 'beyond-readings', of: 'halfTime' }]);
  });

  test('a foam that drains in two stages is said to fit poorly', () => {
    const shares = [0.1, 0.3, 0.4, 0.42, 0.45, 0.6, 0.8, 0.9];
    const fit = fitDrainage({
      readings: shares.map((drained, i) => ({ time: 60 * 2 ** i, drained })),
      readingError: 0.005,
    });
    if (!fit.supported) throw new Error(fit.because);
    expect(fit.notes).toContainEqual({ code: 'poor-fit', of: 'readings' });
  });
});

describe('readings that cannot support a fit', () => {
  const because = (...pairs: [number, number][]) => {
    const fit = fitDrainage({ readings: pairs.map(([time, drained]) => ({ time, drained })) });
    return fit.supported ? 'supported' : fit.because;
  };

  test('too few', () => {
    expect(because()).toBe('too-few-readings');
    expect(because([0, 0], [60, 0.1], [120, 0.3], [240, 0.5])).toBe('too-few-readings');
    expect(because([60, 0.1], [60, 0.12], [240, 0.5], [240, 0.52])).toBe('too-few-readings');
  });

  test('liquid that returns', () => {
    expect(because([60, 0.1], [120, 0.3], [240, 0.2], [480, 0.6])).toBe('liquid-returns');
  });

  test('no rise: nothing drained, or all of it before the first reading', () => {
    expect(because([60, 0], [120, 0.01], [240, 0], [480, 0.02])).toBe('no-rise');
    expect(because([60, 0.98], [120, 0.98], [240, 0.99], [480, 1])).toBe('no-rise');
  });

  test('a jump between two readings fixes no exponent', () => {
    expect(because([60, 0], [120, 0], [240, 1], [480, 1])).toBe('no-single-curve');
  });

  test('a straight line is told as a line, with its bounds', () => {
    const fit = fitDrainage({
      readings: [60, 120, 180, 240, 300].map((time) => ({ time, drained: time * 5e-4 })),
    });
    if (fit.supported || fit.because !== 'no-curvature') throw new Error('expected a line');
    expect(fit.straight.rate).toBeCloseTo(5e-4, 10);
    expect(fit.straight.low).toBeLessThan(5e-4);
    expect(fit.straight.high).toBeGreaterThan(5e-4);
    expect(fit.upTo).toBe(300);
  });

  test('more liquid than the foam held is refused, not fitted', () => {
    expect(() => because([60, 0.1], [120, 1.2])).toThrow(DomainError);
    expect(() => because([-60, 0.1])).toThrow(DomainError);
  });
});
