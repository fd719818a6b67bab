import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stripAfterBars } from '../../../src/core/demould/strip-after-bars.ts';
import { DomainError } from '../../../src/core/domain-error.ts';

const DAY = 86400;
const grow = (s: number) => (age: number) => Math.exp(s * (1 - Math.sqrt((28 * DAY) / age)));
const clock = (elapsed: number) => elapsed;
const base = {
  gain: { slow: grow(0.38), fast: grow(0.2) },
  adjustedAge: { slow: clock, fast: clock },
  testedAt: 2 * DAY,
  within: 28 * DAY,
};
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the strip window after bars were broken', () => {
  test('bars just strong enough put both ends at the test', () => {
    const stress = { low: 1e5, high: 1e5 };
    const tested = { low: 2e5, high: 2e5 };
    const { earliest, latest } = stripAfterBars({ ...base, stress, tested });
    expect(Math.abs(earliest! - base.testedAt)).toBeLessThan(2);
    expect(Math.abs(latest! - base.testedAt)).toBeLessThan(2);
  });

  test('bars too weak push the window past the test, bars to spare bring it before', () => {
    fc.assert(
      fc.property(double(1.05, 1.6), (short) => {
        const stress = { low: 1e5, high: 1e5 };
        const weak = { low: 2e5 / short, high: 2e5 / short };
        const strong = { low: 2e5 * short, high: 2e5 * short };
        const later = stripAfterBars({ ...base, stress, tested: weak });
        expect(later.earliest!).toBeGreaterThan(base.testedAt);
        if (later.latest !== undefined) expect(later.latest).toBeGreaterThan(later.earliest!);
        const sooner = stripAfterBars({ ...base, stress, tested: strong });
        expect(sooner.latest!).toBeLessThan(base.testedAt);
      }),
    );
  });

  test('has no end when one curve never reaches it, and says so once', () => {
    const { latest, notes } = stripAfterBars({
      ...base,
      stress: { low: 1e5, high: 1e6 },
      tested: { low: 1e5, high: 3e5 },
    });
    expect(latest).toBeUndefined();
    expect(notes.filter(({ code }) => code === 'not-reached')).toEqual([
      { code: 'not-reached', of: 'latest' },
    ]);
  });

  test('refuses a test at the moment of casting', () => {
    const asked = { ...base, stress: { low: 1, high: 1 }, tested: { low: 1, high: 1 } };
    expect(() => stripAfterBars({ ...asked, testedAt: 0 })).toThrow(DomainError);
  });
});
