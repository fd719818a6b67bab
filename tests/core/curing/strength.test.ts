import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitStrength } from '../../../src/core/curing/strength-fit.ts';
import {
  ageForLeastShare,
  ageForShare,
  grownBand,
  growthCoefficient,
  leastShare,
  strengthShare,
} from '../../../src/core/curing/strength-growth.ts';
import { DomainError } from '../../../src/core/domain-error.ts';
import { expectLimits } from '../refuses.ts';

const DAY = 86400;

describe('growth', () => {
  test('the age for a share is the age at which the growth curve gives that share', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.15, max: 0.5, noNaN: true }),
        fc.double({ min: 0.05, max: 1.15, noNaN: true }),
        (coefficient, share) => {
          const age = ageForShare({ share, coefficient })!;
          expect(strengthShare({ age, coefficient })).toBeCloseTo(share, 9);
        },
      ),
    );
  });

  test('it levels out at e^s and never passes it', () => {
    expect(ageForShare({ share: 1.0001 * Math.exp(0.25), coefficient: 0.25 })).toBeUndefined();
    expect(ageForShare({ share: Math.exp(0.25) - 0.001, coefficient: 0.25 })).toBeGreaterThan(
      1000 * DAY,
    );
    expect(strengthShare({ age: 0, coefficient: 0.25 })).toBe(0);
  });

  test('of two curves the lower counts: the slower cement’s before 28 days, the quicker’s after', () => {
    const coefficients = [0.25, 1] as const;
    for (const [days, coefficient] of [
      [3, 1],
      [60, 0.25],
    ] as const) {
      const age = days * DAY;
      const share = leastShare({ age, coefficients });
      expect(share).toBe(strengthShare({ age, coefficient }));
      expect(ageForLeastShare({ share, coefficients })! / age).toBeCloseTo(1, 9);
    }
    // The steep one goes on to e; the flat one never gets to 2.
    expect(ageForShare({ share: 2, coefficient: 1 })).toBeDefined();
    expect(ageForLeastShare({ share: 2, coefficients })).toBeUndefined();
  });

  test('relative to another age than 28 days the share is the quotient of two shares', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 400, noNaN: true }),
        fc.double({ min: 0.3, max: 400, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (age, from, coefficient) => {
          const of = (days: number) => strengthShare({ age: days * DAY, coefficient });
          const share = strengthShare({ age: age * DAY, from: from * DAY, coefficient });
          expect((share * of(from)) / of(age)).toBeCloseTo(1, 9);
        },
      ),
    );
    expect(() => strengthShare({ age: DAY, from: 0, coefficient: 0.2 })).toThrow(DomainError);
  });

  test('the band of an unknown cement contains that of each cement it may be, and of any in between', () => {
    const positive = (max: number) => fc.double({ min: 0.02, max, noNaN: true });
    fc.assert(
      fc.property(
        positive(400),
        positive(400),
        fc.tuple(positive(1), positive(1), fc.double({ min: 0, max: 1, noNaN: true })),
        (age, from, [one, other, part]) => {
          const at = { age: age * DAY, from: from * DAY };
          const band = (...coefficients: [number, ...number[]]) =>
            grownBand({ known: { low: 1, high: 1 }, least: at, most: at, coefficients });
          const unknown = band(one, other);
          const within = one + (other - one) * part;
          for (const member of [band(one), band(other), band(within)]) {
            expect(unknown.low).toBeLessThanOrEqual(member.low * (1 + 1e-12));
            expect(unknown.high).toBeGreaterThanOrEqual(member.high * (1 - 1e-12));
          }
        },
      ),
    );
  });

  test('above a mean strength of 60 MPa every cement has the coefficient of the quick one', () => {
    expect(growthCoefficient({ cement: '32.5N', meanStrength: 60e6 })).toBe(0.38);
    expect(growthCoefficient({ cement: '32.5N', meanStrength: 60.001e6 })).toBe(0.2);
    expect(growthCoefficient({ cement: '32.5N' })).toBe(0.38);
  });

  test('a grown band keeps its ends in order, and a reversed one is refused', () => {
    const known = { low: 0.5e6, high: 1.5e6 };
    const at = { age: 3 * DAY };
    const of = { least: at, most: at, coefficients: [0.25] as const };
    const { low, high } = grownBand({ ...of, known });
    expect(high / low).toBeCloseTo(3, 12);
    expect(low).toBeCloseTo(0.59824 * 0.5e6, 0);
    expect(() => grownBand({ ...of, known: { low: 2, high: 1 } })).toThrow(DomainError);
  });
});

describe('own results', () => {
  test('results taken from a growth curve give its constants back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 0.6, noNaN: true }),
        fc.double({ min: 1e5, max: 2e7, noNaN: true }),
        (coefficient, strength28) => {
          const results = [3, 7, 28].map((days) => ({
            age: days * DAY,
            strength: strength28 * strengthShare({ age: days * DAY, coefficient }),
          }));
          const fit = fitStrength({ results, coefficient: 0.25 });
          expect(fit.strength28 / strength28).toBeCloseTo(1, 9);
          expect(fit.coefficient).toBeCloseTo(coefficient, 9);
          expect(fit.spread).toBeLessThan(1e-6);
          expect(fit.notes).toEqual([]);
        },
      ),
    );
  });

  test('results of one age keep the cement’s coefficient and go through their mean', () => {
    const fit = fitStrength({
      results: [
        { age: 28 * DAY, strength: 1e6 },
        { age: 28 * DAY, strength: 1.44e6 },
      ],
      coefficient: 0.25,
    });
    expect(fit.strength28).toBeCloseTo(1.2e6, 3);
    expect(fit.coefficient).toBe(0.25);
    expect(fit.notes).toEqual([{ code: 'one-age', of: 'results' }]);
    expect(fit.spread).toBeCloseTo(Math.sqrt(2) * Math.log(1.2), 9);
  });

  test('results that fall with age are noted, not fitted', () => {
    const fit = fitStrength({
      results: [
        { age: 7 * DAY, strength: 2e6 },
        { age: 28 * DAY, strength: 1.5e6 },
      ],
      coefficient: 0.25,
    });
    expect(fit.coefficient).toBe(0.25);
    expect(fit.notes).toEqual([{ code: 'no-growth', of: 'results' }]);
  });

  test('results equal at all ages give no growth', () => {
    const results = [7, 28].map((days) => ({ age: days * DAY, strength: 2e6 }));
    const { coefficient, notes } = fitStrength({ results, coefficient: 0.25 });
    expect(coefficient).toBe(0.25);
    expect(notes).toEqual([{ code: 'no-growth', of: 'results' }]);
  });

  test('the spread is divided by the degrees of freedom', () => {
    const results = [1e6, 1e6, 1.44e6, 1.44e6].map((strength) => ({ age: 28 * DAY, strength }));
    const { spread } = fitStrength({ results, coefficient: 0.25 });
    expect(spread).toBeCloseTo(Math.log(1.2) * Math.sqrt(4 / 3), 9);
  });

  test('refuses a coefficient out of range, whether it is needed or not', () => {
    const results = [
      { age: 7 * DAY, strength: 1.6e6 },
      { age: 28 * DAY, strength: 2e6 },
    ];
    expectLimits(
      ({ coefficient }: { coefficient: number }) => fitStrength({ results, coefficient }),
      { coefficient: 0.25 },
      { coefficient: { takes: [0, 2], refuses: [-0.01, 2.01] } },
    );
  });

  test('refuses an empty list, and ages and strengths of 0 or less', () => {
    expect(() => fitStrength({ results: [], coefficient: 0.2 })).toThrow(DomainError);
    expect(() => fitStrength({ results: [{ age: DAY, strength: 0 }], coefficient: 0.2 })).toThrow(
      DomainError,
    );
  });
});
