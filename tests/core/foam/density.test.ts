import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { AIR_DENSITY, foamDensity, SOLUTION_DENSITY } from '../../../src/core/foam/density.ts';
import { vesselVolume } from '../../../src/core/foam/vessel.ts';
import { between } from '../arbitrary.ts';

describe('the volume of a vessel', () => {
  test('19.96 kg of water at 20 °C is 20.0 L', () => {
    const bucket = vesselVolume({ empty: 0.8, filled: 20.764, temperature: 293.15 });
    expect(bucket.water).toBeCloseTo(19.964, 9);
    expect(bucket.volume).toBeCloseTo(0.02, 6);
    expect(bucket.buoyancy).toBeCloseTo(0.0012, 4);
  });

  test('refuses a full vessel lighter than the empty one, and ice', () => {
    expect(() => vesselVolume({ empty: 1, filled: 1, temperature: 293.15 })).toThrow('filled');
    expect(() => vesselVolume({ empty: 1, filled: 2, temperature: 260 })).toThrow('temperature');
  });
});

describe('foam density', () => {
  const vessel = 0.02;

  test('a simulated weighing in air of a foam of known density gives that density back', () => {
    fc.assert(
      fc.property(between(0.01, 0.95), between(0.9, 1.3), between(950, 1100), (gas, air, sol) => {
        const liquid = (1 - gas) * vessel;
        const inside = liquid * sol + gas * vessel * air;
        const net = inside - air * vessel;
        const foam = foamDensity({
          tare: 0.8,
          full: 0.8 + net,
          vessel,
          solutionDensity: sol,
          airDensity: air,
        });
        expect(foam.gasFraction).toBeCloseTo(gas, 9);
        expect(foam.liquidMass).toBeCloseTo(liquid * sol, 9);
        expect(foam.expansion).toBeCloseTo(1 / (1 - gas), 6);
      }),
    );
  });

  test('the density as weighed is that of its liquid within 0.13 %', () => {
    const foam = foamDensity({ tare: 0.8, full: 2.4, vessel });
    expect(foam.apparent).toBeCloseTo(80, 9);
    const liquid = foam.liquidMass / vessel;
    expect(liquid / foam.apparent - 1).toBeCloseTo(AIR_DENSITY / (SOLUTION_DENSITY - 1.2), 9);
    expect(liquid / foam.apparent - 1).toBeLessThan(0.0013);
  });

  test('notes a density outside the band of the standards', () => {
    const noted = (density: number) =>
      foamDensity({ tare: 0, full: density * vessel, vessel }).notes.length > 0;
    expect([31, 33, 63, 65].map(noted)).toEqual([true, false, false, true]);
  });

  test('refuses an empty vessel and a foam without gas', () => {
    // The refusal tells what the full vessel must weigh more than.
    expect(() => foamDensity({ tare: 1, full: 1, vessel })).toThrow(
      expect.objectContaining({
        quantity: 'full',
        value: 1,
        allowed: { min: 1, max: 1e9, aboveMin: true },
      }),
    );
    expect(() => foamDensity({ tare: 1, full: 1 + 5e-10, vessel })).toThrow('full');
    expect(() => foamDensity({ tare: 1, full: 1 + 999 * vessel, vessel })).toThrow('no-gas');
  });
});
