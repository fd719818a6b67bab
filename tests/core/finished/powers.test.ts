import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { gelSpaceRatio } from '../../../src/core/finished/gel-space.ts';
import {
  type CuringWater,
  greatestDegree,
  greatestHydration,
  POWERS_2001,
  POWERS_BENTZ,
  powersVolumes,
} from '../../../src/core/finished/powers.ts';
import { between } from '../arbitrary.ts';

const any = fc.record({
  waterCement: between(0.3, 1),
  air: between(0, 0.8),
  inert: between(0, 0.19),
  reaction: fc.constantFrom(POWERS_2001, POWERS_BENTZ),
  curing: fc.constantFrom<CuringWater>('sealed', 'saturated'),
  waterDensity: between(990, 1000),
});

const parts = [
  'unhydrated',
  'gelSolids',
  'gelWater',
  'capillaryWater',
  'emptied',
  'air',
  'inert',
] as const;

describe('Powers’ volumes', () => {
  test('sum to 1 and none is negative, at every possible degree of hydration', () => {
    fc.assert(
      fc.property(any, between(0, 1), (of, share) => {
        const degree = share * greatestDegree(of);
        const volumes = powersVolumes({ ...of, degree });
        expect(parts.reduce((sum, part) => sum + volumes[part], 0)).toBeCloseTo(1, 10);
        for (const part of parts) expect(volumes[part]).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('gel grows and water falls with the degree of hydration; air is unchanged', () => {
    fc.assert(
      fc.property(any, between(0, 0.4), between(0.01, 0.2), (of, degree, more) => {
        const [young, old] = [degree, degree + more].map((a) =>
          powersVolumes({ ...of, degree: a }),
        );
        expect(old!.gelSolids).toBeGreaterThan(young!.gelSolids);
        expect(old!.capillaryWater).toBeLessThan(young!.capillaryWater);
        expect(old!.unhydrated).toBeLessThan(young!.unhydrated);
        expect(old!.air).toBe(young!.air);
      }),
    );
  });

  test('at degree 0 they are those of cement and water', () => {
    const fresh = powersVolumes({
      waterCement: 0.5,
      degree: 0,
      air: 0.6,
      inert: 0,
      reaction: POWERS_2001,
      curing: 'sealed',
      waterDensity: 1000,
    });
    expect(fresh.capillaryWater / fresh.unhydrated).toBeCloseTo(0.5 * 3.15, 10);
    expect(fresh.unhydrated + fresh.capillaryWater).toBeCloseTo(0.4, 10);
    expect(fresh.gelSolids + fresh.gelWater + fresh.emptied).toBe(0);
  });

  test('in water-cured paste water fills the pores of chemical shrinkage', () => {
    const of = {
      waterCement: 0.5,
      degree: 0.8,
      air: 0,
      inert: 0,
      reaction: POWERS_2001,
      waterDensity: 1000,
    };
    const sealed = powersVolumes({ ...of, curing: 'sealed' });
    const saturated = powersVolumes({ ...of, curing: 'saturated' });
    expect(saturated.emptied).toBe(0);
    expect(saturated.capillaryWater).toBeCloseTo(sealed.capillaryWater + sealed.emptied, 12);
  });

  test('constants without gel water give none, and a degree beyond the possible one is refused', () => {
    const of = { waterCement: 0.3, degree: 0.5, air: 0, inert: 0, waterDensity: 1000 } as const;
    expect(powersVolumes({ ...of, reaction: POWERS_BENTZ, curing: 'sealed' }).gelWater).toBe(0);
    const sealed = { ...of, degree: 0.9, reaction: POWERS_2001, curing: 'sealed' } as const;
    expect(() => powersVolumes(sealed)).toThrow(/out-of-water/);
    expect(() => powersVolumes({ ...sealed, curing: 'saturated', degree: 1 })).toThrow(
      /out-of-space/,
    );
    expect(() => powersVolumes({ ...of, air: 1, reaction: POWERS_2001, curing: 'sealed' })).toThrow(
      DomainError,
    );
  });

  test('the limiting degree from volumes agrees with that from masses within the rounding of the constants', () => {
    for (const curing of ['sealed', 'saturated'] as const)
      for (const reaction of [POWERS_2001, POWERS_BENTZ]) {
        const paste = { waterCement: 0.33, reaction, curing, waterDensity: 1000 };
        const [own, masses] = [greatestDegree(paste), greatestHydration(paste)];
        expect(Math.abs(own / masses - 1)).toBeLessThan(0.04);
        const whole = { ...paste, air: 0, inert: 0 };
        expect(powersVolumes({ ...whole, degree: own }).capillaryWater).toBeCloseTo(0, 12);
        expect(() => powersVolumes({ ...whole, degree: own * 1.001 })).toThrow(/out-of-/);
      }
  });
});

describe('gel–space ratio', () => {
  test('falls with water and air, rises with reaction', () => {
    fc.assert(
      fc.property(
        between(0.4, 1),
        between(0.1, 0.8),
        between(0, 4),
        between(0.01, 0.2),
        (waterCement, degree, airPerCement, more) => {
          const x = gelSpaceRatio({ waterCement, degree, airPerCement });
          expect(
            gelSpaceRatio({ waterCement: waterCement + more, degree, airPerCement }),
          ).toBeLessThan(x);
          expect(
            gelSpaceRatio({ waterCement, degree, airPerCement: airPerCement + more }),
          ).toBeLessThan(x);
          expect(
            gelSpaceRatio({ waterCement, degree: degree + more, airPerCement }),
          ).toBeGreaterThan(x);
        },
      ),
    );
  });

  test('is at most 1 exactly where w/c is at least 0.36 times the degree', () => {
    expect(gelSpaceRatio({ waterCement: 0.36, degree: 1, airPerCement: 0 })).toBeCloseTo(1, 12);
    expect(() => gelSpaceRatio({ waterCement: 0.35, degree: 1, airPerCement: 0 })).toThrow(
      /out-of-space/,
    );
  });
});
