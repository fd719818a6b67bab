import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foamingSolution } from '../../../src/core/foam/solution.ts';

const wanted = fc.record({
  foamVolume: fc.double({ min: 0.001, max: 1, noNaN: true }),
  foamDensity: fc.double({ min: 20, max: 200, noNaN: true }),
  partsWater: fc.double({ min: 1, max: 100, noNaN: true }),
  glycerolShare: fc.double({ min: 0, max: 0.5, noNaN: true }),
  lanceLoss: fc.double({ min: 0, max: 1, noNaN: true }),
});

describe('foaming solution', () => {
  test('the parts make the whole, in the proportions asked', () => {
    fc.assert(
      fc.property(wanted, (w) => {
        const s = foamingSolution(w);
        expect(s.concentrateMass + s.glycerolMass + s.waterMass).toBeCloseTo(s.solutionMass, 9);
        expect(s.concentrateVolume + s.glycerolVolume + s.waterVolume).toBeCloseTo(
          s.solutionVolume,
          12,
        );
        expect(s.waterVolume / s.concentrateVolume).toBeCloseTo(w.partsWater, 6);
        expect(s.glycerolMass / s.solutionMass).toBeCloseTo(w.glycerolShare, 9);
      }),
    );
  });

  test('what the lance keeps is on top', () => {
    const foam = { foamVolume: 0.06, foamDensity: 80, partsWater: 40 };
    expect(foamingSolution(foam).solutionMass).toBeCloseTo(4.8, 9);
    expect(foamingSolution({ ...foam, lanceLoss: 0.1 }).solutionMass).toBeCloseTo(5.28, 9);
  });

  test('a measured density of the solution wins over the sum of the parts', () => {
    const foam = { foamVolume: 0.1, foamDensity: 50, partsWater: 40 };
    expect(foamingSolution({ ...foam, solutionDensity: 1000 }).solutionVolume).toBeCloseTo(
      5e-3,
      12,
    );
  });

  test('refuses half a solution of glycerol, no water, and foam as dense as water', () => {
    const foam = { foamVolume: 0.1, foamDensity: 50, partsWater: 40 };
    expect(() => foamingSolution({ ...foam, glycerolShare: 0.6 })).toThrow('glycerolShare');
    expect(() => foamingSolution({ ...foam, partsWater: 0 })).toThrow('partsWater');
    expect(() => foamingSolution({ ...foam, foamDensity: 1000 })).toThrow('foamDensity');
  });
});
