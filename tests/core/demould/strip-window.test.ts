import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EARLIEST_ADJUSTED_AGE, stripWindow } from '../../../src/core/demould/strip-window.ts';
import { DomainError } from '../../../src/core/domain-error.ts';

const DAY = 86400;
const grow = (s: number) => (age: number) => Math.exp(s * (1 - Math.sqrt((28 * DAY) / age)));
const gain = { slow: grow(0.38), fast: grow(0.2) };
const clock = (elapsed: number) => elapsed;
const adjustedAge = { slow: (t: number) => 0.7 * t, fast: clock };
const base = { gain, adjustedAge, within: 28 * DAY };
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the strip window', () => {
  test('at each end the stress is the allowed share of the strength there', () => {
    const stress = { low: 60e3, high: 90e3 };
    const strength28 = { low: 300e3, high: 500e3 };
    const { earliest, latest, needed } = stripWindow({ ...base, stress, strength28 });
    expect(needed).toEqual({ low: 120e3, high: 180e3 });
    expect(gain.slow(0.7 * latest!) * strength28.low).toBeCloseTo(needed.high, -2);
    expect(earliest!).toBeLessThan(latest!);
  });

  test('the earlier end never comes after the later; more stress never brings either forward', () => {
    fc.assert(
      fc.property(
        double(1e3, 1e5),
        double(1, 2),
        double(1.5e5, 6e5),
        double(1, 2),
        (s, w, f, v) => {
          const stress = { low: s, high: s * w };
          const strength28 = { low: f, high: f * v };
          const now = stripWindow({ ...base, stress, strength28 });
          if (now.latest !== undefined) expect(now.earliest!).toBeLessThanOrEqual(now.latest);
          const heavier = { low: stress.low * 1.2, high: stress.high * 1.2 };
          const then = stripWindow({ ...base, stress: heavier, strength28 });
          if (then.latest !== undefined) expect(then.latest).toBeGreaterThanOrEqual(now.latest!);
          if (then.earliest !== undefined)
            expect(then.earliest).toBeGreaterThanOrEqual(now.earliest!);
        },
      ),
    );
  });

  test('set rules when the stress is a trifle, and it is said', () => {
    const { earliest, notes } = stripWindow({
      ...base,
      stress: { low: 10, high: 20 },
      strength28: { low: 3e5, high: 4e5 },
    });
    expect(Math.abs(earliest! - EARLIEST_ADJUSTED_AGE)).toBeLessThan(2);
    expect(notes).toContainEqual({ code: 'set-not-strength', of: 'earliest' });
    expect(notes).toContainEqual({ code: 'growth-not-validated', of: 'gain' });
  });

  test('warmth does not shorten the hours before which nothing is estimated, cold lengthens them', () => {
    const trifle = { stress: { low: 10, high: 20 }, strength28: { low: 3e5, high: 4e5 } };
    const at = (pace: number) => (t: number) => t * pace;
    const hot = stripWindow({ ...base, ...trifle, adjustedAge: { slow: at(6), fast: at(12) } });
    for (const end of [hot.earliest!, hot.latest!])
      expect(Math.abs(end - EARLIEST_ADJUSTED_AGE)).toBeLessThan(2);
    const cold = stripWindow({
      ...base,
      ...trifle,
      adjustedAge: { slow: at(0.25), fast: at(0.5) },
    });
    expect(Math.abs(cold.earliest! - 2 * EARLIEST_ADJUSTED_AGE)).toBeLessThan(2);
  });

  test('a part too weak for its handling has no end to the window', () => {
    const { earliest, latest, notes } = stripWindow({
      ...base,
      stress: { low: 4e5, high: 5e5 },
      strength28: { low: 3e5, high: 4e5 },
    });
    expect(earliest).toBeUndefined();
    expect(latest).toBeUndefined();
    expect(notes).toContainEqual({ code: 'not-reached', of: 'latest' });
  });

  test('refuses a band upside down and a share above one', () => {
    const good = { ...base, stress: { low: 1, high: 2 }, strength28: { low: 3, high: 4 } };
    expect(() => stripWindow({ ...good, stress: { low: 2, high: 1 } })).toThrow(DomainError);
    expect(() => stripWindow({ ...good, share: 1.1 })).toThrow(DomainError);
    expect(() => stripWindow({ ...good, within: 0 })).toThrow(DomainError);
  });
});
