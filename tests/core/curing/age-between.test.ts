import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ageBetween, growingBetween } from '../../../src/core/curing/age-between.ts';
import { between } from '../arbitrary.ts';
import { expectLimits } from '../refuses.ts';

const NONE = { time: 0, age: 0 };

describe('how old a part may be', () => {
  test('is the age at the slower and at the faster pace, where no age is known', () => {
    expect(ageBetween({ slow: 0.5, fast: 2, ...NONE, at: 10 })).toEqual({ low: 5, high: 20 });
  });

  test('is exact at the time of a known age, and bounded by both paces before and after it', () => {
    const of = { slow: 0.5, fast: 2, time: 10, age: 8 };
    expect(ageBetween({ ...of, at: 10 })).toEqual({ low: 8, high: 8 });
    expect(ageBetween({ ...of, at: 14 })).toEqual({ low: 10, high: 16 });
    // Eight hours before: 4 by the slower pace from casting, 6 less by the faster since; and 4 by the faster, 4 less by the slower.
    expect(ageBetween({ ...of, at: 2 })).toEqual({ low: 1, high: 4 });
    expect(ageBetween({ ...of, at: 8 })).toEqual({ low: 4, high: 7 });
  });

  test('refuses paces and ages out of range', () => {
    const of = { slow: 0.5, fast: 2, time: 10, age: 8, at: 3 };
    expectLimits(ageBetween, of, {
      slow: { takes: [0, 0.8], refuses: [-0.1] },
      fast: { takes: [0.8], refuses: [0.4] },
      time: { refuses: [-1] },
      age: { takes: [5, 20], refuses: [4.9, 20.1] },
      at: { takes: [0], refuses: [-1] },
    });
  });
});

/** Paces hour by hour, each between the slowest and the fastest. */
const paths = fc.record({
  slow: between(0.1, 1),
  wider: between(1, 4),
  shares: fc.array(between(0, 1), { minLength: 2, maxLength: 30 }),
  known: between(0, 1),
  from: between(0, 1),
  to: between(0, 1),
});

test('for any paces the true age and growth lie between the least and the most given', () => {
  fc.assert(
    fc.property(paths, ({ slow, wider, shares, known, from, to }) => {
      const fast = slow * wider;
      const whole = (share: number) => Math.round(share * shares.length);
      const age = (hours: number) =>
        shares.slice(0, hours).reduce((sum, share) => sum + slow + (fast - slow) * share, 0);
      const dust = 1e-9;
      const of = {
        slow,
        fast,
        time: whole(known),
        age: Math.min(Math.max(age(whole(known)), whole(known) * slow), whole(known) * fast),
      };
      const { low, high } = ageBetween({ ...of, at: whole(to) });
      expect(age(whole(to))).toBeGreaterThanOrEqual(low - dust);
      expect(age(whole(to))).toBeLessThanOrEqual(high + dust);
      const first = whole(from) + 1;
      const last = whole(to) + 1;
      if (first > shares.length || last > shares.length) return;
      // The curves rise with 1/√from − 1/√age.
      const rise = (a: number, b: number) => 1 / Math.sqrt(a) - 1 / Math.sqrt(b);
      const { least, most } = growingBetween({ ...of, from: first, to: last });
      const real = rise(age(first), age(last));
      expect(real).toBeGreaterThanOrEqual(rise(least.from!, least.age) - dust);
      expect(real).toBeLessThanOrEqual(rise(most.from!, most.age) + dust);
    }),
  );
});
