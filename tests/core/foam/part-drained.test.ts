import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { partDrained } from '../../../src/core/foam/part-drained.ts';
import { standingFoam } from '../../../src/core/foam/standing-foam.ts';

const solutionDensity = 1002;

describe('a vessel with liquid below the foam', () => {
  test('foam, share and density as made are those of the drained foam that was simulated', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (foamDensity, share) => {
          const stood = standingFoam({ foamDensity, solutionDensity, share });
          const vessel = 0.02;
          const drained = (stood.drained * vessel * (1 - 1e-12)) / solutionDensity;
          const seen = partDrained({ net: foamDensity * vessel, vessel, drained, solutionDensity });
          expect(seen.foam).toBeCloseTo(stood.density, 6);
          expect(seen.asMade).toBeCloseTo(foamDensity, 9);
          expect(seen.share).toBeCloseTo(share, 9);
          expect(seen.foamVolume / vessel).toBeCloseTo(stood.volume, 9);
        },
      ),
    );
  });

  test('refuses more liquid than the foam held or the vessel holds', () => {
    const vessel = { net: 1.6, vessel: 0.02, solutionDensity };
    expect(() => partDrained({ ...vessel, drained: 0.0017 })).toThrow(DomainError);
    expect(() => partDrained({ ...vessel, drained: 0.02 })).toThrow(DomainError);
  });
});
