import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equilibrateWithCalcite } from '../../../../src/core/water/carbonate/equilibrate.ts';
import { saturationIndex } from '../../../../src/core/water/carbonate/saturation.ts';
import { mains, waters } from './waters.ts';

const si = (water: Parameters<typeof saturationIndex>[0]) => saturationIndex(water, 'calcite');
const beside = fc.constantFrom(
  {},
  { calcite: Infinity },
  { carbonDioxidePressure: 40 },
  { calcite: Infinity, carbonDioxidePressure: 40 },
  { calcite: Infinity, carbonDioxidePressure: 3000 },
);

describe('a water beside calcite', () => {
  test('does not change further once at equilibrium', () => {
    fc.assert(
      fc.property(waters, beside, (water, solid) => {
        const once = equilibrateWithCalcite(water, solid);
        const twice = equilibrateWithCalcite(once, solid);
        expect(Math.abs(twice.pH - once.pH)).toBeLessThan(1e-6);
        expect(Math.abs(twice.precipitated)).toBeLessThan(1e-8 * (once.calcium + 1e-5));
      }),
    );
  });

  test('comes out the same whatever water it is solved from', () => {
    fc.assert(
      fc.property(waters, waters, beside, (water, other, solid) => {
        const near = equilibrateWithCalcite(other, solid);
        const cold = equilibrateWithCalcite(water, solid);
        const warm = equilibrateWithCalcite(water, { ...solid, near });
        expect(Math.abs(warm.pH - cold.pH)).toBeLessThan(1e-8);
        expect(Math.abs(warm.precipitated - cold.precipitated)).toBeLessThan(
          1e-9 * (cold.calcium + 1e-5),
        );
      }),
    );
  });

  test('exchanges calcium, carbon and alkalinity in the ratio 1 : 1 : 2', () => {
    fc.assert(
      fc.property(waters, (water) => {
        const rest = equilibrateWithCalcite(water, { calcite: Infinity });
        const size = 1e-8 * (water.calcium + water.carbon + Math.abs(rest.precipitated));
        expect(Math.abs(rest.calcium + rest.precipitated - water.calcium)).toBeLessThan(size);
        expect(Math.abs(rest.carbon + rest.precipitated - water.carbon)).toBeLessThan(size);
        expect(Math.abs(rest.alkalinity + 2 * rest.precipitated - water.alkalinity)).toBeLessThan(
          2 * size,
        );
      }),
    );
  });

  test('ends saturated beside excess calcite, and never supersaturated without', () => {
    fc.assert(
      fc.property(waters, (water) => {
        expect(Math.abs(si(equilibrateWithCalcite(water, { calcite: Infinity })))).toBeLessThan(
          1e-9,
        );
        expect(si(equilibrateWithCalcite(water))).toBeLessThan(1e-9);
      }),
    );
  });

  test('precipitates only from supersaturation', () => {
    fc.assert(
      fc.property(waters, (water) => {
        const rest = equilibrateWithCalcite(water);
        if (si(water) < 0) expect(rest.precipitated).toBe(0);
        else expect(rest.precipitated).toBeGreaterThanOrEqual(-1e-12);
        expect(rest.precipitated).toBeLessThanOrEqual(
          Math.min(water.calcium, water.carbon) + 1e-15,
        );
      }),
    );
  });

  test('dissolves no more calcite than there is', () => {
    const soft = { temperature: 288.15, alkalinity: 0, carbon: 1e-3 };
    const full = equilibrateWithCalcite(soft, { calcite: Infinity });
    const little = equilibrateWithCalcite(soft, { calcite: 1e-5 });
    expect(little.precipitated).toBe(-1e-5);
    expect(si(little)).toBeLessThan(0);
    expect(equilibrateWithCalcite(soft, { calcite: 1 }).precipitated).toBe(full.precipitated);
  });

  test('loses CO₂ to air, and then precipitates calcite', () => {
    const before = mains();
    const after = equilibrateWithCalcite(before, { carbonDioxidePressure: 40.3 });
    expect(after.pH).toBeGreaterThan(before.pH);
    expect(after.precipitated).toBeGreaterThan(1e-3);
    expect(after.magnesium).toBeCloseTo(before.magnesium, 12);
  });

  test('refuses a negative amount of solid', () => {
    expect(() => equilibrateWithCalcite(mains(), { calcite: -1 })).toThrow(RangeError);
  });
});
