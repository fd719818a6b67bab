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

  test('what is lost in the lance is added on top', () => {
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

  test('refuses more than half of glycerol, no water, and foam as dense as water', () => {
    const foam = { foamVolume: 0.1, foamDensity: 50, partsWater: 40 };
    expect(() => foamingSolution({ ...foam, glycerolShare: 0.6 })).toThrow('glycerolShare');
    expect(() => foamingSolution({ ...foam, partsWater: 0 })).toThrow('partsWater');
    expect(() => foamingSolution({ ...foam, foamDensity: 1000 })).toThrow('foamDensity');
  });
});

describe('foaming solution, stated and lost in other ways', () => {
  const foam = { foamVolume: 0.06, foamDensity: 80 };

  test('1 in 41 is 1 : 40, and 2.5 % is 1 : 39', () => {
    const parts = foamingSolution({ ...foam, partsWater: 40 });
    const oneIn = foamingSolution({ ...foam, dilution: { convention: 'one-in', stated: 41 } });
    expect(oneIn.concentrateMass).toBeCloseTo(parts.concentrateMass, 12);
    const percent = foamingSolution({
      ...foam,
      dilution: { convention: 'percent-volume', stated: 0.025 },
    });
    expect(percent.waterVolume / percent.concentrateVolume).toBeCloseTo(39, 9);
    const byMass = foamingSolution({
      ...foam,
      dilution: { convention: 'percent-mass', stated: 0.025 },
    });
    expect(byMass.concentrateMass / byMass.solutionMass).toBeCloseTo(0.025, 12);
  });

  test('a primed hose takes its own volume of the same solution', () => {
    fc.assert(
      fc.property(wanted, fc.double({ min: 0, max: 0.01, noNaN: true }), (w, priming) => {
        const plain = foamingSolution(w);
        const primed = foamingSolution({ ...w, priming });
        expect(primed.solutionVolume - plain.solutionVolume).toBeCloseTo(priming, 9);
        expect(primed.concentrateMass / primed.solutionMass).toBeCloseTo(
          plain.concentrateMass / plain.solutionMass,
          9,
        );
      }),
    );
  });

  test('make-up concentrate leaves as much soap per litre of water as soft water would', () => {
    fc.assert(
      fc.property(
        wanted,
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (w, lost, content) => {
          const soft = foamingSolution(w);
          const hard = foamingSolution({ ...w, soap: { lost, content } });
          const left = content * hard.concentrateMass - lost * hard.waterVolume;
          expect(left / hard.waterVolume).toBeCloseTo(
            (content * soft.concentrateMass) / soft.waterVolume,
            7,
          );
          expect(hard.soapMakeUp * content).toBeCloseTo(lost * hard.waterVolume, 9);
          expect(hard.concentrateMass + hard.glycerolMass + hard.waterMass).toBeCloseTo(
            soft.solutionMass,
            9,
          );
        },
      ),
    );
  });

  test('refuses make-up from a concentrate without soap, and a negative hose volume', () => {
    const soap = { lost: 1, content: 0 };
    expect(() => foamingSolution({ ...foam, partsWater: 40, soap })).toThrow('content');
    expect(() => foamingSolution({ ...foam, partsWater: 40, priming: -1 })).toThrow('priming');
  });
});
