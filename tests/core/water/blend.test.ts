import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blendOf, blendToTarget, blendWaters } from '../../../src/core/water/blend.ts';
import { speciate, speciateWater } from '../../../src/core/water/carbonate/speciate.ts';
import { mains, waters } from './carbonate/waters.ts';

const value = fc.double({ min: 0, max: 500, noNaN: true });

describe('a blend to a target', () => {
  test('has what was asked for and fills the batch, or says what is in reach', () => {
    fc.assert(
      fc.property(fc.array(value, { minLength: 1, maxLength: 5 }), value, (values, target) => {
        const blend = blendToTarget({ values, target, volume: 0.02 });
        if (!blend.reached) {
          expect(target < blend.least || target > blend.most).toBe(true);
          return;
        }
        const parts = blend.volumes.map((amount, i) => ({ amount, value: values[i]! }));
        expect(blendOf(parts)).toBeCloseTo(target, 6);
        expect(blend.volumes.reduce((a, b) => a + b)).toBeCloseTo(0.02, 12);
        expect(Math.min(...blend.fractions)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('uses as much as possible of the first water', () => {
    const blend = blendToTarget({ values: [311, 100, 12], target: 60, volume: 0.02 });
    expect(blend).toMatchObject({ reached: true });
    if (blend.reached) expect(blend.fractions[0]).toBeCloseTo(48 / 299, 12);
  });

  test('refuses an empty list of waters and a batch of 0', () => {
    expect(() => blendToTarget({ values: [], target: 60, volume: 0.02 })).toThrow(RangeError);
    expect(() => blendToTarget({ values: [1], target: 1, volume: 0 })).toThrow(RangeError);
    expect(() => blendOf([])).toThrow(RangeError);
    expect(() => blendOf([{ amount: -1, value: 3 }])).toThrow(RangeError);
  });
});

describe('blended waters', () => {
  test('stay electrically neutral and conserve every ion', () => {
    fc.assert(
      fc.property(waters, waters, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (a, b, f) => {
        const blend = blendWaters([
          { mass: f, water: a },
          { mass: 1 - f, water: b },
        ]);
        for (const name of ['calcium', 'carbon', 'sodium', 'chloride'] as const)
          expect(blend[name]).toBeCloseTo(f * a[name] + (1 - f) * b[name], 10);
        expect(Math.abs(blend.chargeImbalance)).toBeLessThan(1e-9);
      }),
    );
  });

  test('of equal waters equal that water', () => {
    fc.assert(
      fc.property(waters, (water) => {
        const blend = blendWaters([
          { mass: 3, water },
          { mass: 5, water },
        ]);
        expect(blend.pH).toBeCloseTo(water.pH, 7);
      }),
    );
  });

  test('need chloride given for all of them, or for none', () => {
    const said = mains();
    const unsaid = { ...said, chloride: undefined };
    const both = [
      { mass: 1, water: said },
      { mass: 1, water: unsaid },
    ];
    expect(() => blendWaters(both)).toThrow(
      expect.objectContaining({
        quantity: 'chloride',
        allowed: { min: 0 },
        because: 'chloride-said-for-only-some',
      }),
    );
    expect(blendWaters([{ mass: 1, water: unsaid }]).pH).toBeCloseTo(speciateWater(said).pH, 6);
  });

  test('do not have the mean of the pH values', () => {
    const acid = speciate({ temperature: 285.15 }, { pH: 5.5, carbon: 1e-5 });
    const blend = blendWaters([
      { mass: 1, water: mains() },
      { mass: 1, water: acid },
    ]);
    expect(Math.abs(blend.pH - (mains().pH + 5.5) / 2)).toBeGreaterThan(0.5);
  });
});
