import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ifAllowed } from '../../../src/core/domain-error.ts';
import { plannedWith } from '../../../src/core/mix/planned-with.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { feasible } from './arbitrary.ts';

/** By hand: v = 1/2900 + 0.4/1000 = 0.744828 L/kg; 1.4 kg of base mix in it; the rest of 1 m³ at 600 is foam of 80. */
const plan = {
  ...{ cement: 387.94, water: 155.176, sand: 0, baseDensity: 1879.63 },
  ...{ foamVolume: 0.711052, foamDensity: 80, wetDensity: 600 },
};

describe('what a batch was proportioned with', () => {
  test('is found from its amounts', () => {
    const found = plannedWith(plan);
    expect(found.cementDensity).toBeCloseTo(2900, 0);
    expect(found.survival).toBeCloseTo(1, 4);
    // As much again is made where half of its gas dies: 0.46 of 0.92 is lost, so 0.54 of a volume is left.
    const { foamVolume, ...rest } = plan;
    const made = foamVolume / 0.54;
    const mass = rest.cement + rest.water + 80 * made;
    expect(plannedWith({ ...rest, foamVolume: made, wetDensity: mass }).survival).toBeCloseTo(
      0.5,
      4,
    );
  });

  test('agrees with what it was proportioned with, for one load too', () => {
    const share = fc.double({ min: 0.5, max: 1, noNaN: true });
    fc.assert(
      fc.property(feasible, share, fc.integer({ min: 1, max: 9 }), (input, survival, loads) => {
        const { sandDensity: _, waterDensity: __, ...of } = input;
        const mix = ifAllowed(() => proportion({ ...of, survival }));
        if (!mix) return;
        const { cement, water, sand, foamVolume, baseDensity, wetDensity } = mix;
        fc.pre(foamVolume > 1e-3 * mix.volume);
        const { foamDensity } = of;
        const each = (amount: number) => amount / loads;
        const found = plannedWith({
          ...{ cement: each(cement), water: each(water), sand: each(sand), foamDensity },
          ...{ foamVolume: each(foamVolume), baseDensity, wetDensity },
        });
        expect(found.cementDensity / of.cementDensity!).toBeCloseTo(1, 9);
        expect(found.survival).toBeCloseTo(survival, 6);
      }),
    );
  });

  test('of a batch without foam has a survival of 1', () => {
    expect(plannedWith({ ...plan, foamVolume: 0, foamDensity: 0 }).survival).toBe(1);
  });

  test.each([
    [{ cement: 0 }, 'cement'],
    [{ baseDensity: 0 }, 'baseDensity'],
    [{ wetDensity: -1 }, 'wetDensity'],
    // Lighter than its water alone.
    [{ baseDensity: 4000 }, 'cementDensity'],
    [{ foamDensity: 1000 }, 'foamDensity'],
    [{ foamDensity: -1 }, 'foamDensity'],
  ])('%o is refused', (wrong, quantity) => {
    expect(() => plannedWith({ ...plan, ...wrong })).toThrow(quantity);
  });
});
