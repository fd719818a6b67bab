import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { gaslessDensity, plannedFoam } from '../../../src/core/foam/planned-foam.ts';
import { blendAfterStanding } from '../../../src/core/foam/standing-foam.ts';
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

describe('the foam a batch is planned with', () => {
  test('blended fresh, it gives the planned density and mass', () => {
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

  test('without its gas the blend weighs what it weighs with no gas left', () => {
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

  test('a blend outside its parts is refused', () => {
    const parts = { foamDensity: 80, baseDensity: 1951, mass: 20 };
    expect(() => plannedFoam({ ...parts, wetDensity: 80 })).toThrow(DomainError);
    expect(() => plannedFoam({ ...parts, wetDensity: 1951 })).toThrow(DomainError);
    expectLimits(
      plannedFoam,
      { ...parts, wetDensity: 600 },
      {
        mass: { refuses: [0, -1] },
        foamDensity: { takes: [1e-9, 599], refuses: [0, -1] },
        baseDensity: { takes: [601], refuses: [] },
      },
    );
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
