import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { strengthAfterBars } from '../../../src/core/demould/strength-after-bars.ts';
import { stripWindow } from '../../../src/core/demould/strip-window.ts';
import { DomainError } from '../../../src/core/domain-error.ts';
import { between } from '../arbitrary.ts';

const DAY = 86_400;
const tested = { low: 1e5, high: 1.1e5 };
const steady = { slow: 1, fast: 1, time: 0, age: 0 };
const base = { tested, testedAt: DAY, ageing: steady, coefficients: [0.38, 0.2] } as const;

/** Time and pace of a part, its age known at a time or not. */
const ageings = fc
  .record({ slow: between(0.1, 1), wide: between(1, 4), time: between(0, 5), share: between(0, 1) })
  .map(({ slow, wide, time, share }) => {
    const fast = slow * wide;
    const age = time * DAY * (slow + (fast - slow) * share);
    return {
      slow,
      fast,
      time: time * DAY,
      age: Math.min(Math.max(age, time * DAY * slow), time * DAY * fast),
    };
  });

describe('after bars were broken', () => {
  test('the part is as strong as they were, then', () => {
    const { low, high } = strengthAfterBars({ ...base, elapsed: DAY });
    expect(low).toBeCloseTo(tested.low, 6);
    expect(high).toBeCloseTo(tested.high, 6);
  });

  test('at four times the age the exponent halves, before and after, by hand', () => {
    // Of 28 days: √28 at one day, √7 at four.
    const grown = (s: number) => Math.exp(s * (Math.sqrt(28) - Math.sqrt(7)));
    const after = strengthAfterBars({ ...base, elapsed: 4 * DAY });
    expect(after.low).toBeCloseTo(tested.low * grown(0.2), 3);
    expect(after.high).toBeCloseTo(tested.high * grown(0.38), 3);
    const before = strengthAfterBars({ ...base, testedAt: 4 * DAY, elapsed: DAY });
    expect(before.low).toBeCloseTo(tested.low / grown(0.38), 3);
    expect(before.high).toBeCloseTo(tested.high / grown(0.2), 3);
  });

  test('where the age of the bars at the test is uncertain, the oldest possible counts at the low end', () => {
    // A day at 6 °C counts as 7.9 h; 29.5 h of age after 55.2 h, bars broken at 24.
    const slow = 7.9 / 24;
    const now = 2.3 * DAY;
    const ageing = { slow, fast: 1.05, time: now, age: 1.229 * DAY };
    const oldest = 1.229 - 1.3 * slow;
    const { low } = strengthAfterBars({ ...base, ageing, coefficients: [0.2], elapsed: now });
    const root = (days: number) => Math.sqrt(28 / days);
    expect(low).toBeCloseTo(tested.low * Math.exp(0.2 * (root(oldest) - root(1.229))), 3);
  });

  test('refuses a test at casting or of a part that does not age', () => {
    const at = (over: object) => () => strengthAfterBars({ ...base, elapsed: DAY, ...over });
    expect(at({ testedAt: 0 })).toThrow(DomainError);
    expect(at({ testedAt: -1 })).toThrow(DomainError);
    expect(at({ ageing: { ...steady, slow: 0 } })).toThrow(DomainError);
  });

  test('neither end of the band falls with age, and low is never above high', () => {
    fc.assert(
      fc.property(ageings, between(0.5, 5), between(0, 8), between(0, 3), (ageing, at, t, more) => {
        const of = { ...base, ageing, testedAt: at * DAY };
        const then = strengthAfterBars({ ...of, elapsed: t * DAY });
        const later = strengthAfterBars({ ...of, elapsed: (t + more) * DAY });
        for (const end of ['low', 'high'] as const)
          expect(later[end]).toBeGreaterThanOrEqual(then[end] * (1 - 1e-9));
        expect(then.low).toBeLessThanOrEqual(then.high);
      }),
    );
  });

  test('the band of an unknown cement contains that of each cement it may be', () => {
    fc.assert(
      fc.property(ageings, between(0.5, 5), between(0, 8), between(0, 1), (ageing, at, t, part) => {
        const of = { ...base, ageing, testedAt: at * DAY, elapsed: t * DAY };
        const unknown = strengthAfterBars(of);
        for (const s of [0.38, 0.25, 0.2, 0.2 + 0.18 * part]) {
          const known = strengthAfterBars({ ...of, coefficients: [s] });
          expect(unknown.low).toBeLessThanOrEqual(known.low * (1 + 1e-9));
          expect(unknown.high).toBeGreaterThanOrEqual(known.high * (1 - 1e-9));
        }
      }),
    );
  });

  test('a wider range of age rates never narrows the band', () => {
    fc.assert(
      fc.property(
        ageings,
        between(0.5, 5),
        between(0, 8),
        between(0.2, 1),
        between(1, 3),
        (ageing, at, t, colder, warmer) => {
          const of = { ...base, testedAt: at * DAY, elapsed: t * DAY };
          const wide = { ...ageing, slow: ageing.slow * colder, fast: ageing.fast * warmer };
          const narrow = strengthAfterBars({ ...of, ageing });
          const found = strengthAfterBars({ ...of, ageing: wide });
          expect(found.low).toBeLessThanOrEqual(narrow.low * (1 + 1e-9));
          expect(found.high).toBeGreaterThanOrEqual(narrow.high * (1 - 1e-9));
        },
      ),
    );
  });

  test('with bars too weak the window begins after the test, with strong ones it ends before', () => {
    fc.assert(
      fc.property(between(1.05, 1.6), (short) => {
        const window = (strength: number) =>
          stripWindow({
            stress: { low: 1e5, high: 1e5 },
            strength: (elapsed) =>
              strengthAfterBars({
                ...base,
                tested: { low: strength, high: strength },
                testedAt: 2 * DAY,
                elapsed,
              }),
            age: (t) => ({ low: t, high: t }),
            within: 28 * DAY,
          });
        const later = window(2e5 / short);
        expect(later.earliest!).toBeGreaterThan(2 * DAY);
        if (later.latest !== undefined) expect(later.latest).toBeGreaterThan(later.earliest!);
        expect(window(2e5 * short).latest!).toBeLessThan(2 * DAY);
      }),
    );
  });
});
