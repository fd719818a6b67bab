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
  test('foam and drained liquid weigh and measure what the fresh foam did', () => {
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

  test('nothing is lost between bucket and mix', () => {
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

  test('left behind, it makes the batch lighter: least whole, more by volume, most by mass', () => {
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

  test('gas lost in mixing makes it heavier, up to the mix without any', () => {
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

  test('foam weighed out can wait less than foam tipped in whole', () => {
    const at = (kind: Dose) =>
      timeInHand({ ...slab, dose: kind, drainage, wait: 0, tolerance: 10 }).latest ?? Number.NaN;
    expect(at('mass')).toBeLessThan(at('volume'));
    expect(at('volume')).toBeLessThan(at('whole'));
    expect(at('mass')).toBeGreaterThan(0);
  });

  test('the share lost is the curve’s', () => {
    const wait = timeToDrain({ drainage, share: 0.3 });
    const { lost, foam } = timeInHand({ ...slab, drainage, wait, tolerance: 10 });
    expect(lost).toBeCloseTo(0.3, 10);
    expect(foam.drained).toBeCloseTo(24, 8);
  });

  test('a wide tolerance is never left; a mix that eats the foam never meets it', () => {
    const hand = { ...slab, drainage, wait: 60 };
    expect(timeInHand({ ...hand, tolerance: 500 }).latest).toBe(Number.POSITIVE_INFINITY);
    expect(timeInHand({ ...hand, tolerance: 10, gasLeft: 0.8 }).latest).toBeUndefined();
  });

  test('what the last thousandth of the liquid decides has a moment too', () => {
    const hand = { ...slab, drainage, wait: 0 };
    const all = blendAfterStanding({ ...slab, share: 0 }).liquidGoesIn;
    const tolerance = Math.abs(blendAfterStanding({ ...slab, share: 0.9995 }).liquidStays - all);
    const { latest } = timeInHand({ ...hand, tolerance });
    expect(latest! / timeToDrain({ drainage, share: 0.9995 })).toBeCloseTo(1, 3);
  });

  test('gas that the plan lets die is no loss, and leaves less time than a foam that all lives', () => {
    const hand = { ...slab, dose: 'volume' as const, drainage, wait: 0, tolerance: 10 };
    const at = (survival: number, gasLeft = survival) => timeInHand({ ...hand, gasLeft, survival });
    expect(at(0.7).planned).toBeCloseTo(at(0.7).liquidStays, 9);
    expect(at(0.7).latest).toBeGreaterThan(0);
    expect(at(1, 0.7).latest).toBeUndefined();
  });

  test('what cannot be is refused', () => {
    expect(() => standingFoam({ foamDensity: 1002, solutionDensity: 1002, share: 0 })).toThrow(
      DomainError,
    );
    expect(() => blendAfterStanding({ ...slab, dose: 'mass', share: 1 })).toThrow(DomainError);
    expect(() => timeInHand({ ...slab, drainage, wait: -1, tolerance: 10 })).toThrow(DomainError);
    expect(() => timeInHand({ ...slab, drainage, wait: 1, tolerance: 0 })).toThrow(DomainError);
  });
});
