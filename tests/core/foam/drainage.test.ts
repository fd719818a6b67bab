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
import { expectLimits } from '../refuses.ts';
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

  test.each([0.05, 0.1, 0.19])(
    'bounds hold what all shares have wrong together: %s',
    (together) => {
      const jar = { halfTime: 1320, exponent: 1.5, first: 120, last: 1800, count: 10 };
      const wrong = (told: number) => {
        const off = normal(104_729);
        let [asked, missed] = [0, 0];
        for (let seed = 1; seed <= TRIALS; seed++) {
          const factor = 1 + together * off();
          const read = readings(jar, 0.01, 7919 * seed).map(({ time, drained }) => ({
            time,
            drained: drained * factor,
          }));
          if (read.some(({ drained }) => drained > 1)) continue;
          const fit = fitDrainage({ readings: read, together: told });
          if (!fit.supported) continue;
          asked++;
          if (!holds(fit.quarterTime, jar.halfTime * 3 ** (-1 / jar.exponent))) missed++;
        }
        expect(asked).toBeGreaterThan(0.95 * TRIALS);
        return missed / asked;
      };
      expect(wrong(together)).toBeLessThan(0.08);
      expect(wrong(0)).toBeGreaterThan(0.15);
    },
  );

  test.each([30, 55, 59.9])(
    'what all shares have wrong together widens the bounds of a steep curve too: n = %d',
    (exponent) => {
      const halfTime = 2642;
      const readings = [2400, 2500, 2550, 2600, 2642, 2700, 2750, 2800, 2900].map((time) => ({
        time,
        drained: drainedAt({ drainage: { halfTime, exponent }, time }),
      }));
      const wide = (together: number) => {
        const fit = fitDrainage({ readings, together });
        if (!fit.supported) throw new Error(fit.because);
        return Math.log(fit.halfTime.high / fit.halfTime.low);
      };
      expect(wide(0.02)).toBeGreaterThan(1.5 * wide(0));
    },
  );

  test('bounds widen with the error of a reading and with the confidence', () => {
    const jar = { halfTime: 600, exponent: 1.3, first: 60, last: 1800, count: 8 };
    const width = (readingError: number, confidence: number) => {
      const fit = fitDrainage({ readings: readings(jar, 0, 1), readingError, confidence });
      return fit.supported ? fit.halfTime.high / fit.halfTime.low : Number.NaN;
    };
    expect(width(0.02, 0.95)).toBeGreaterThan(width(0.01, 0.95));
    expect(width(0.01, 0.99)).toBeGreaterThan(width(0.01, 0.95));
  });

  test('bounds of a time and bounds of a share are consistent', () => {
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

  test('the order in which readings were noted does not matter', () => {
    const jar = { halfTime: 600, exponent: 1.3, first: 60, last: 1800, count: 8 };
    const noted = readings(jar, 0.01, 3);
    const inOrder = fitDrainage({ readings: noted });
    expect(fitDrainage({ readings: noted.toReversed() })).toEqual(inOrder);
    const [odd, even] = [1, 0].map((rest) => noted.filter((_, i) => i % 2 === rest));
    expect(fitDrainage({ readings: [...odd!, ...even!] })).toEqual(inOrder);
  });

  test('notes times beyond the last reading', () => {
    const jar = { halfTime: 1000, exponent: 2, first: 50, last: 700, count: 10 };
    const fit = fitDrainage({ readings: readings(jar, 0, 1), readingError: 0.005 });
    if (!fit.supported) throw new Error(fit.because);
    expect(fit.notes).toEqual([{ code: 'beyond-readings', of: 'halfTime' }]);
  });

  test('times before the first reading follow the curve, without a note', () => {
    const jar = { halfTime: 600, exponent: 2, first: 500, last: 1500, count: 10 };
    const fit = fitDrainage({ readings: readings(jar, 0, 1), readingError: 0.005 });
    if (!fit.supported) throw new Error(fit.because);
    // A quarter drains in 600/√3 = 346 s.
    expect(fit.quarterTime.value).toBeCloseTo(600 / Math.sqrt(3), 6);
    expect(fit.notes).toEqual([]);
  });

  test('notes that a foam that drains in two stages fits poorly', () => {
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

  test('refuses readings at fewer than three different times after the start', () => {
    expect(because()).toBe('too-few-readings');
    expect(because([0, 0], [60, 0.1], [120, 0.3], [240, 0.5])).toBe('too-few-readings');
    expect(because([60, 0.1], [60, 0.12], [240, 0.5], [240, 0.52])).toBe('too-few-readings');
  });

  test('accepts three different times, and falls or missing rises within four errors', () => {
    expect(because([60, 0.1], [60, 0.12], [240, 0.5], [480, 0.7])).not.toBe('too-few-readings');
    // An error of 1/64, so that four of them are 1/16 to the last bit.
    const judged = (...shares: number[]) => {
      const fit = fitDrainage({
        readings: shares.map((drained, i) => ({ time: 60 * 2 ** i, drained })),
        readingError: 1 / 64,
      });
      return fit.supported ? 'supported' : fit.because;
    };
    expect(judged(0.125, 0.25, 0.1875, 0.5)).not.toBe('liquid-returns');
    expect(judged(0.125, 0.25, 0.18, 0.5)).toBe('liquid-returns');
    expect(judged(0.125, 0.125, 0.125, 0.1875)).toBe('no-rise');
    expect(judged(0.125, 0.125, 0.125, 0.19)).not.toBe('no-rise');
  });

  test('refuses a share that falls', () => {
    expect(because([60, 0.1], [120, 0.3], [240, 0.2], [480, 0.6])).toBe('liquid-returns');
  });

  test('refuses readings without a rise', () => {
    expect(because([60, 0], [120, 0.01], [240, 0], [480, 0.02])).toBe('no-rise');
    expect(because([60, 0.98], [120, 0.98], [240, 0.99], [480, 1])).toBe('no-rise');
  });

  test('refuses a jump between two readings, which fixes no exponent', () => {
    expect(because([60, 0], [120, 0], [240, 1], [480, 1])).toBe('no-single-curve');
  });

  test('refuses a straight line that misses a reading by more than three errors', () => {
    // Rates of 35/9000 miss a jump from 0 to 1 by 0.35.
    const readings = [0, 0, 1, 1].map((drained, i) => ({ time: 60 * (i + 1), drained }));
    const told = (readingError: number) => {
      const fit = fitDrainage({ readings, readingError });
      return fit.supported ? undefined : fit.because;
    };
    expect(told(0.11)).toBe('no-single-curve');
    expect(told(0.13)).toBe('no-curvature');
  });

  test('readings on a straight line give a line with its bounds', () => {
    const fit = fitDrainage({
      readings: [60, 120, 180, 240, 300].map((time) => ({ time, drained: time * 5e-4 })),
    });
    if (fit.supported || fit.because !== 'no-curvature') throw new Error('expected a line');
    expect(fit.straight.rate).toBeCloseTo(5e-4, 10);
    expect(fit.straight.low).toBeLessThan(5e-4);
    expect(fit.straight.high).toBeGreaterThan(5e-4);
    expect(fit.upTo).toBe(300);
  });

  test('the bounds of a line are those worked out by hand', () => {
    const line = (shares: readonly number[], confidence = 0.95) => {
      const fit = fitDrainage({
        readings: shares.map((drained, i) => ({ time: 60 * (i + 1), drained })),
        confidence,
      });
      if (fit.supported || fit.because !== 'no-curvature') throw new Error('expected a line');
      return fit.straight;
    };
    // Five readings on a line: t = 3.1824, Σ t² = 3600 · 55, error 0.01.
    const exact = line([0.03, 0.06, 0.09, 0.12, 0.15]);
    expect(exact.low).toBeCloseTo(5e-4 - (3.1824 * 0.01) / Math.sqrt(198_000), 8);
    expect(exact.high).toBeCloseTo(5e-4 + (3.1824 * 0.01) / Math.sqrt(198_000), 8);
    // Six readings in turn 0.045 above and below t/1000: Σ t d = −8.1, Σ t² = 3600 · 91, t = 2.7764.
    const scattered = line([0.105, 0.075, 0.225, 0.195, 0.345, 0.315]);
    expect(scattered.rate).toBeCloseTo(1e-3 - 8.1 / 327_600, 10);
    const missed = Math.sqrt((6 * 0.045 ** 2 - 8.1 ** 2 / 327_600) / 5);
    expect(scattered.high - scattered.rate).toBeCloseTo((2.7764 * missed) / Math.sqrt(327_600), 8);
    // What all shares have wrong together moves the line by as much of itself: z · 5 % of it, as squares (z = 1.9623 of a thousand degrees).
    const doubted = fitDrainage({
      readings: [0.03, 0.06, 0.09, 0.12, 0.15].map((drained, i) => ({
        time: 60 * (i + 1),
        drained,
      })),
      together: 0.05,
    });
    if (doubted.supported || doubted.because !== 'no-curvature') throw new Error('expected a line');
    const reach = Math.hypot((3.1824 * 0.01) / Math.sqrt(198_000), 1.9623 * 0.05 * 5e-4);
    expect(doubted.straight.high).toBeCloseTo(5e-4 + reach, 8);
    // However unsure, liquid does not flow back: t = 9.925 would reach below nothing.
    expect(line([0.015, 0.03, 0.045, 0.06], 0.99).low).toBe(0);
  });

  test('a curvature smaller than the error of a reading gives a line', () => {
    // The beginning of a curve with n = 1: a line misses it by less than 0.004.
    const early = [60, 120, 180, 240, 300].map((t): [number, number] => [t, t / (3000 + t)]);
    expect(because(...early)).toBe('no-curvature');
  });

  test('refuses shares that rise too little to fix the exponent or the quarter time', () => {
    // Long past a quarter: that time could be a minute as well as a millisecond.
    expect(because([60, 0.5], [120, 0.52], [240, 0.55], [480, 0.6])).toBe('curve-not-fixed');
    // A factor of ten is the most that is told.
    expect(because([120, 0.53], [156, 0.57], [203, 0.6], [264, 0.64])).toBe('curve-not-fixed');
    expect(because([200, 0.64], [260, 0.68], [338, 0.73], [439, 0.77])).toBe('supported');
    // About a quarter all along: its time is known, but not whether the foam drains at all.
    expect(because([600, 0.225], [800, 0.25], [1000, 0.25], [1200, 0.268])).toBe('curve-not-fixed');
  });

  test('accepts shares up to five errors outside 0 to 1, and errors up to 0.2', () => {
    const jar = { halfTime: 600, exponent: 1.3, first: 60, last: 1800, count: 8 };
    expectLimits(
      ({
        drained,
        time,
        ...errors
      }: Record<'drained' | 'time' | 'readingError' | 'together', number>) =>
        fitDrainage({ readings: [...readings(jar, 0, 1), { time, drained }], ...errors }),
      { drained: 0.5, time: 600, readingError: 0.02, together: 0.01 },
      {
        drained: { takes: [-0.1, 1.1], refuses: [-0.101, 1.101] },
        time: { takes: [0], refuses: [-1] },
        readingError: { takes: [1e-4, 0.2], refuses: [0, -0.01, 0.201] },
        together: { takes: [0], refuses: [-0.001, Number.NaN] },
      },
    );
  });

  test('refuses more liquid than the foam held', () => {
    expect(() => because([60, 0.1], [120, 1.2])).toThrow(DomainError);
    expect(() => because([-60, 0.1])).toThrow(DomainError);
  });
});
