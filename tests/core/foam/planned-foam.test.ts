import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { SOLUTION_DENSITY } from '../../../src/core/foam/density.ts';
import { gaslessDensity, plannedFoam } from '../../../src/core/foam/planned-foam.ts';
import { blendAfterStanding } from '../../../src/core/foam/standing-foam.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { expectLimits } from '../refuses.ts';

const blends = fc
  .tuple(
    fc.double({ min: 20, max: 300, noNaN: true }),
    fc.double({ min: 0.02, max: 0.98, noNaN: true }),
    fc.double({ min: 1200, max: 2400, noNaN: true }),
  )
  .map(([foamDensity, share, baseDensity]) => ({
    foamDensity,
    baseDensity,
    wetDensity: share * foamDensity + (1 - share) * baseDensity,
    share,
  }));
/** What a plan may take to live, and be left with a blend between its parts. */
const lives = fc.double({ min: 0.05, max: 1, noNaN: true });

describe('the foam a batch is planned with', () => {
  test('blended without loss gives the planned density and mass', () => {
    fc.assert(
      fc.property(blends, fc.double({ min: 1, max: 500, noNaN: true }), (blend, mass) => {
        const { foamVolume, baseMass } = plannedFoam({ mass, ...blend });
        expect(baseMass + foamVolume * blend.foamDensity).toBeCloseTo(mass, 6);
        const hand = { ...blend, foamVolume, baseMass, solutionDensity: 1002, share: 0 };
        const { liquidStays } = blendAfterStanding({ ...hand, dose: 'whole' });
        expect(liquidStays / blend.wetDensity).toBeCloseTo(1, 9);
      }),
    );
  });

  test('the density without gas agrees with that of the blend after all gas is lost', () => {
    fc.assert(
      fc.property(blends, (blend) => {
        const solutionDensity = 1002;
        const { foamVolume, baseMass } = plannedFoam({ mass: 20, ...blend });
        const hand = { ...blend, foamVolume, baseMass, solutionDensity, share: 0, gasLeft: 0 };
        const { liquidGoesIn } = blendAfterStanding({ ...hand, dose: 'whole' });
        expect(gaslessDensity({ ...blend, solutionDensity }) / liquidGoesIn).toBeCloseTo(1, 9);
      }),
    );
  });

  test('agrees with the foam that proportion plans for the gas that is lost', () => {
    for (const survival of [1, 0.7, 0.25]) {
      const mix = proportion({
        volume: 0.035,
        target: { wetDensity: 600 },
        waterCement: 0.4,
        foamDensity: 80,
        survival,
      });
      const { mass, wetDensity, baseDensity } = mix;
      const blend = { wetDensity, baseDensity, foamDensity: 80, survival };
      const { foamVolume, baseMass } = plannedFoam({ mass, ...blend });
      expect(foamVolume / mix.foamVolume).toBeCloseTo(1, 9);
      expect(baseMass / mix.baseMass).toBeCloseTo(1, 9);
      const gasless = mass / (mix.baseMass / baseDensity + mix.foamMass / 1000);
      expect(gaslessDensity(blend) / gasless).toBeCloseTo(1, 9);
    }
  });

  test('gives the planned density where the planned share of gas is lost', () => {
    fc.assert(
      fc.property(blends, lives, (blend, survival) => {
        fc.pre(blend.wetDensity > (1.01 * blend.foamDensity) / survival);
        const parts = plannedFoam({ mass: 20, ...blend, survival });
        const hand = { ...blend, ...parts, solutionDensity: SOLUTION_DENSITY, share: 0 };
        const { liquidStays } = blendAfterStanding({ ...hand, gasLeft: survival, dose: 'whole' });
        expect(liquidStays / blend.wetDensity).toBeCloseTo(1, 9);
      }),
    );
  });

  test('refuses a density not between foam and base mix', () => {
    const parts = { foamDensity: 80, baseDensity: 1951, mass: 20 };
    expect(() => plannedFoam({ ...parts, wetDensity: 80 })).toThrow(DomainError);
    expect(() => plannedFoam({ ...parts, wetDensity: 1951 })).toThrow(DomainError);
    expectLimits(
      plannedFoam,
      { ...parts, wetDensity: 600, survival: 1 },
      {
        mass: { refuses: [0, -1] },
        foamDensity: { takes: [1e-9, 599], refuses: [0, -1] },
        baseDensity: { takes: [601], refuses: [] },
        survival: { takes: [0.1, 1], refuses: [0, -0.1, 1.01] },
      },
    );
    // What is left of a foam when half its gas is gone is denser than it.
    expect(() => plannedFoam({ ...parts, wetDensity: 148, survival: 0.5 })).toThrow(DomainError);
    expect(plannedFoam({ ...parts, wetDensity: 149, survival: 0.5 }).baseMass).toBeGreaterThan(0);
    expectLimits(
      gaslessDensity,
      { foamDensity: 80, baseDensity: 1951, wetDensity: 600, solutionDensity: 1000 },
      { foamDensity: { refuses: [0, -1] }, solutionDensity: { takes: [80.01], refuses: [] } },
    );
    // A foam as heavy as its solution holds no gas.
    expect(() =>
      gaslessDensity({
        foamDensity: 80,
        baseDensity: 1951,
        wetDensity: 600,
        solutionDensity: 80,
      }),
    ).toThrow('foamDensity');
  });
});
