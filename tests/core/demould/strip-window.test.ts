import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { grownBand, strengthShare } from '../../../src/core/curing/strength-growth.ts';
import { EARLIEST_ADJUSTED_AGE, stripWindow } from '../../../src/core/demould/strip-window.ts';
import { DomainError } from '../../../src/core/domain-error.ts';
import { between } from '../arbitrary.ts';

const DAY = 86400;
const coefficients = [0.38, 0.2] as const;
/** Strengths and ages by the slowest and the quickest cement, paces of 0.7 and 1 unless told. */
const grown = (known: { low: number; high: number }, pace = { slow: 0.7, fast: 1 }) => {
  const age = (t: number) => ({ low: t * pace.slow, high: t * pace.fast });
  return {
    age,
    strength: (t: number) =>
      grownBand({ known, least: { age: age(t).low }, most: { age: age(t).high }, coefficients }),
  };
};
const base = { within: 28 * DAY };

describe('the strip window', () => {
  test('at each end the stress is the allowed share of the strength there', () => {
    const stress = { low: 60e3, high: 90e3 };
    const strength28 = { low: 300e3, high: 500e3 };
    const { earliest, latest, needed } = stripWindow({ ...base, ...grown(strength28), stress });
    expect(needed).toEqual({ low: 120e3, high: 180e3 });
    const share = strengthShare({ age: 0.7 * latest!, coefficient: 0.38 });
    expect(share * strength28.low).toBeCloseTo(needed.high, -2);
    expect(earliest!).toBeLessThan(latest!);
  });

  test('the earlier end is never after the later, and more stress never makes either earlier', () => {
    fc.assert(
      fc.property(
        between(1e3, 1e5),
        between(1, 2),
        between(1.5e5, 6e5),
        between(1, 2),
        (s, w, f, v) => {
          const stress = { low: s, high: s * w };
          const strength28 = { low: f, high: f * v };
          const now = stripWindow({ ...base, ...grown(strength28), stress });
          if (now.latest !== undefined) expect(now.earliest!).toBeLessThanOrEqual(now.latest);
          const heavier = { low: stress.low * 1.2, high: stress.high * 1.2 };
          const then = stripWindow({ ...base, ...grown(strength28), stress: heavier });
          if (then.latest !== undefined) expect(then.latest).toBeGreaterThanOrEqual(now.latest!);
          if (then.earliest !== undefined)
            expect(then.earliest).toBeGreaterThanOrEqual(now.earliest!);
        },
      ),
    );
  });

  test('where the stress is small the least age governs, and is noted', () => {
    const { earliest, notes } = stripWindow({
      ...base,
      stress: { low: 10, high: 20 },
      ...grown({ low: 3e5, high: 4e5 }),
    });
    expect(Math.abs(earliest! - EARLIEST_ADJUSTED_AGE)).toBeLessThan(2);
    expect(notes).toContainEqual({ code: 'set-not-strength', of: 'earliest' });
  });

  test('the least age for an estimate is not shortened by warmth, but lengthened by cold', () => {
    const trifle = (slow: number, fast: number) =>
      stripWindow({
        ...base,
        ...grown({ low: 3e5, high: 4e5 }, { slow, fast }),
        stress: { low: 10, high: 20 },
      });
    const hot = trifle(6, 12);
    for (const end of [hot.earliest!, hot.latest!])
      expect(Math.abs(end - EARLIEST_ADJUSTED_AGE)).toBeLessThan(2);
    const cold = trifle(0.25, 0.5);
    expect(Math.abs(cold.earliest! - 2 * EARLIEST_ADJUSTED_AGE)).toBeLessThan(2);
  });

  test('a part too weak for its handling has no end to the window', () => {
    const { earliest, latest, notes } = stripWindow({
      ...base,
      stress: { low: 4e5, high: 5e5 },
      ...grown({ low: 3e5, high: 4e5 }),
    });
    expect(earliest).toBeUndefined();
    expect(latest).toBeUndefined();
    expect(notes).toEqual([]);
  });

  test('past 28 days the quick cement sets the later end', () => {
    const strength28 = { low: 255e3, high: 543e3 };
    const stress = { low: 132e3, high: 132e3 };
    const window = (...by: [number, ...number[]]) => {
      const age = (t: number) => ({ low: t, high: t });
      const strength = (t: number) =>
        grownBand({ known: strength28, least: { age: t }, most: { age: t }, coefficients: by });
      return stripWindow({ within: 60 * DAY, stress, age, strength });
    };
    expect(window(0.38).latest!).toBeLessThan(60 * DAY);
    expect(window(0.2).latest).toBeDefined();
    expect(window(0.38, 0.2).latest!).toBe(window(0.2).latest!);
  });

  test('refuses a reversed band and a share above 1', () => {
    const good = { ...base, ...grown({ low: 3, high: 4 }), stress: { low: 1, high: 2 } };
    expect(() => stripWindow({ ...good, stress: { low: 2, high: 1 } })).toThrow(DomainError);
    expect(() => stripWindow({ ...good, share: 1.1 })).toThrow(DomainError);
    expect(() => stripWindow({ ...good, within: 0 })).toThrow(DomainError);
  });
});
