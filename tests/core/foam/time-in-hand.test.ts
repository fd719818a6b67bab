import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { timeToDrain } from '../../../src/core/foam/drainage-curve.ts';
import {
  blendAfterStanding,
  type Dose,
  type FoamInHand,
  standingFoam,
} from '../../../src/core/foam/standing-foam.ts';
import { timeInHand } from '../../../src/core/foam/time-in-hand.ts';
import { between } from '../arbitrary.ts';

const dose = fc.constantFrom<Dose>('whole', 'volume', 'mass');
/** The demo's slab batch in round figures: 4.9 L of base mix, 12 L of foam at 80 kg/m³. */
const slab: FoamInHand = {
  foamDensity: 80,
  foamVolume: 0.012,
  solutionDensity: 1002,
  baseMass: 9.2,
  baseDensity: 1880,
  dose: 'whole',
};
const drainage = { halfTime: 900, exponent: 1.3 };

describe('a foam that stands', () => {
  test('foam and drained liquid together have the mass and volume of the fresh foam', () => {
    fc.assert(
      fc.property(between(20, 300), between(0, 1), (foamDensity, share) => {
        const { drained, volume, density } = standingFoam({
          foamDensity,
          solutionDensity: 1002,
          share,
        });
        expect(density * volume + drained).toBeCloseTo(foamDensity, 9);
        expect(volume + drained / 1002).toBeCloseTo(1, 12);
        expect(density).toBeLessThanOrEqual(foamDensity);
      }),
    );
  });

  test('mass is conserved between bucket and mix', () => {
    fc.assert(
      fc.property(between(0, 1), (share) => {
        const { liquidStays, liquidLeft } = blendAfterStanding({ ...slab, share });
        const mass = slab.baseMass + slab.foamDensity * slab.foamVolume - liquidLeft;
        const volume = slab.baseMass / slab.baseDensity + slab.foamVolume - liquidLeft / 1002;
        expect(liquidStays).toBeCloseTo(mass / volume, 8);
      }),
    );
  });

  test('stirred back in, drained liquid changes nothing', () => {
    fc.assert(
      fc.property(dose, between(0, 0.99), (kind, share) => {
        const fresh = blendAfterStanding({ ...slab, dose: kind, share: 0 });
        const stood = blendAfterStanding({ ...slab, dose: kind, share });
        expect(stood.liquidGoesIn).toBe(fresh.liquidGoesIn);
        expect(fresh.liquidStays).toBeCloseTo(fresh.liquidGoesIn, 9);
        expect(fresh.liquidLeft).toBe(0);
      }),
    );
  });

  test('drained liquid left behind changes the batch least if dosed whole, more by volume, most by mass', () => {
    fc.assert(
      fc.property(between(0.02, 0.9), (share) => {
        const at = (kind: Dose) => blendAfterStanding({ ...slab, dose: kind, share }).liquidStays;
        const planned = blendAfterStanding({ ...slab, share: 0 }).liquidStays;
        expect(at('whole')).toBeLessThan(planned);
        expect(at('volume')).toBeLessThan(at('whole'));
        expect(at('mass')).toBeLessThan(at('volume'));
      }),
    );
  });

  test('gas lost in mixing raises the density, at most to that without gas', () => {
    const at = (gasLeft: number) =>
      blendAfterStanding({ ...slab, share: 0.2, gasLeft }).liquidGoesIn;
    expect(at(0.9)).toBeGreaterThan(at(1));
    const foam = slab.foamDensity * slab.foamVolume;
    const gasless = (slab.baseMass + foam) / (slab.baseMass / slab.baseDensity + foam / 1002);
    expect(at(0)).toBeCloseTo(gasless, 8);
  });
});

describe('time in hand', () => {
  test('at the latest moment the density is at the tolerance, before it within, after it beyond', () => {
    fc.assert(
      fc.property(dose, between(2, 20), between(0.98, 1), (kind, tolerance, gasLeft) => {
        const hand = { ...slab, dose: kind, gasLeft, drainage, tolerance };
        const { latest, planned } = timeInHand({ ...hand, wait: 0 });
        if (latest === undefined || latest === Number.POSITIVE_INFINITY) return;
        const off = (wait: number) => Math.abs(timeInHand({ ...hand, wait }).liquidStays - planned);
        expect(off(latest)).toBeCloseTo(tolerance, 5);
        expect(off(latest * 0.9)).toBeLessThan(tolerance);
        expect(off(latest * 1.1)).toBeGreaterThan(tolerance);
      }),
    );
  });

  test('foam dosed by mass can wait less than foam dosed whole', () => {
    const at = (kind: Dose) =>
      timeInHand({ ...slab, dose: kind, drainage, wait: 0, tolerance: 10 }).latest ?? Number.NaN;
    expect(at('mass')).toBeLessThan(at('volume'));
    expect(at('volume')).toBeLessThan(at('whole'));
    expect(at('mass')).toBeGreaterThan(0);
  });

  test('the share drained is that of the drainage curve', () => {
    const wait = timeToDrain({ drainage, share: 0.3 });
    const { lost, foam } = timeInHand({ ...slab, drainage, wait, tolerance: 10 });
    expect(lost).toBeCloseTo(0.3, 10);
    expect(foam.drained).toBeCloseTo(24, 8);
  });

  test('a wide tolerance is never exceeded, and a mix that destroys foam never meets it', () => {
    const hand = { ...slab, drainage, wait: 60 };
    expect(timeInHand({ ...hand, tolerance: 500 }).latest).toBe(Number.POSITIVE_INFINITY);
    expect(timeInHand({ ...hand, tolerance: 10, gasLeft: 0.8 }).latest).toBeUndefined();
  });

  test('a tolerance reached only as the last of the liquid drains has a time too', () => {
    const hand = { ...slab, drainage, wait: 0 };
    const all = blendAfterStanding({ ...slab, share: 0 }).liquidGoesIn;
    const tolerance = Math.abs(blendAfterStanding({ ...slab, share: 0.9995 }).liquidStays - all);
    const { latest } = timeInHand({ ...hand, tolerance });
    expect(latest! / timeToDrain({ drainage, share: 0.9995 })).toBeCloseTo(1, 3);
  });

  test('planned gas loss does not count as loss; unplanned loss may leave no time', () => {
    const hand = { ...slab, dose: 'volume' as const, drainage, wait: 0, tolerance: 10 };
    const at = (survival: number, gasLeft = survival) => timeInHand({ ...hand, gasLeft, survival });
    expect(at(0.7).planned).toBeCloseTo(at(0.7).liquidStays, 9);
    expect(at(0.7).latest).toBeGreaterThan(0);
    expect(at(1, 0.7).latest).toBeUndefined();
  });

  test('refuses a foam as dense as its solution, a drained foam by mass, a negative wait and a tolerance of 0', () => {
    expect(() => standingFoam({ foamDensity: 1002, solutionDensity: 1002, share: 0 })).toThrow(
      DomainError,
    );
    expect(() => blendAfterStanding({ ...slab, dose: 'mass', share: 1 })).toThrow(DomainError);
    expect(() => timeInHand({ ...slab, drainage, wait: -1, tolerance: 10 })).toThrow(DomainError);
    expect(() => timeInHand({ ...slab, drainage, wait: 1, tolerance: 0 })).toThrow(DomainError);
  });
});
