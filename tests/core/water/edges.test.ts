import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { blendToTarget } from '../../../src/core/water/blend.ts';
import { equilibrateWithCalcite } from '../../../src/core/water/carbonate/equilibrate.ts';
import { NotConverged } from '../../../src/core/water/carbonate/not-converged.ts';
import { root } from '../../../src/core/water/carbonate/root.ts';
import { saturationIndex } from '../../../src/core/water/carbonate/saturation.ts';
import { speciate } from '../../../src/core/water/carbonate/speciate.ts';
import { hardnessFromIons } from '../../../src/core/water/hardness.ts';
import { rainFor } from '../../../src/core/water/rain-catch.ts';
import { heldBack } from '../../../src/core/water/soften/ion-exchange.ts';
import { sodaForHardness, softenWithSoda } from '../../../src/core/water/soften/washing-soda.ts';
import { waterViscosity } from '../../../src/core/water/viscosity.ts';
import { expectLimits } from '../refuses.ts';
import { mains } from './carbonate/waters.ts';

describe('a search for a root', () => {
  const f = (x: number) => x ** 2 - 4;
  test('accepts an end of the interval that is a root', () => {
    expect(root(f, { low: 2, high: 5 }, { x: 1e-9, f: 0 })).toBe(2);
    expect(root(f, { low: 0, high: 2 }, { x: 1e-9, f: 0 })).toBe(2);
  });
  test('throws NotConverged where there is none', () => {
    expect(() => root(f, { low: 3, high: 5 }, { x: 1e-9, f: 1e-9 })).toThrow(NotConverged);
    const leap = (x: number) => (x < 1 / 3 ? -1 : 1);
    expect(() => root(leap, { low: 0, high: 1 }, { x: 0, f: 0 })).toThrow(NotConverged);
  });
});

describe('carbonate', () => {
  test('aragonite and vaterite are more soluble, by their constants at 25 °C', () => {
    const water = speciate({ temperature: 298.15, calcium: 2e-3 }, { pH: 8, alkalinity: 4e-3 });
    const index = (mineral: Parameters<typeof saturationIndex>[1]) =>
      saturationIndex(water, mineral);
    // log K −8.480, −8.336 and −7.913: Plummer & Busenberg 1982, abstract, to three places each.
    const apart = (other: 'aragonite' | 'vaterite') => index('calcite') - index(other);
    expect(Math.abs(apart('aragonite') - (8.48 - 8.336))).toBeLessThan(0.001);
    expect(Math.abs(apart('vaterite') - (8.48 - 7.913))).toBeLessThan(0.001);
  });

  test('a water whose alkalinity is all hydroxide holds no carbonate', () => {
    const lime = { temperature: 293.15, calcium: 1e-3 };
    const { alkalinity } = speciate(lime, { pH: 11, carbon: 0 });
    expect(speciate(lime, { pH: 11, alkalinity }).carbon).toBeLessThan(1e-12);
  });

  test('lime water under CO₂ precipitates calcite, though it had no carbon', () => {
    const limeWater = { temperature: 293.15, calcium: 5e-3, alkalinity: 10e-3, carbon: 0 };
    const open = equilibrateWithCalcite(limeWater, { carbonDioxidePressure: 40 });
    expect(open.precipitated).toBeGreaterThan(4e-3);
    expect(saturationIndex(open, 'calcite')).toBeCloseTo(0, 6);
    const closed = equilibrateWithCalcite(limeWater);
    expect(closed.precipitated).toBeCloseTo(0, 12);
  });

  test('where calcite runs out, the water dissolves all of it and stays undersaturated', () => {
    const soft = speciate({ temperature: 293.15, calcium: 0 }, { pH: 6, alkalinity: 1e-4 });
    const fed = equilibrateWithCalcite(soft, { calcite: 1e-5 });
    expect(fed.precipitated).toBe(-1e-5);
    expect(fed.calcium).toBeCloseTo(1e-5, 15);
    expect(saturationIndex(fed, 'calcite')).toBeLessThan(0);
  });
});

describe('washing soda', () => {
  test('ions left out count as 0', () => {
    const bare = { temperature: 285.15, carbon: 3e-3, alkalinity: 3e-3 };
    const spelled = { ...bare, calcium: 0, magnesium: 0, sodium: 0 };
    const soda = 1e-3;
    expect(softenWithSoda({ water: bare, soda })).toEqual(softenWithSoda({ water: spelled, soda }));
    expect(softenWithSoda({ water: bare, soda }).settled).toEqual({ min: 0, max: 0 });
    expect(sodaForHardness({ water: bare, target: 0 })).toMatchObject({ reached: true, soda: 0 });
  });

  test('the dose found gives the hardness asked for; less than the magnesium is unreachable', () => {
    const water = mains();
    const found = sodaForHardness({ water, target: 1.5e-3 });
    expect(found.reached && found.softened.hardness).toBeCloseTo(1.5e-3, 9);
    expect(sodaForHardness({ water, target: 0.5e-3 })).toMatchObject({ reached: false });
  });

  test('refuses a dose below 0 or beyond its maximum', () => {
    expectLimits(
      ({ soda }) => softenWithSoda({ water: mains(), soda }),
      { soda: 1e-3 },
      { soda: { takes: [0], refuses: [-1e-9, 5.1] } },
    );
  });
});

test('a water that already has the target value is used alone', () => {
  const blend = blendToTarget({ values: [2, 5, 1], target: 2, volume: 0.03 });
  expect(blend).toMatchObject({ reached: true, fractions: [1, 0, 0], volumes: [0.03, 0, 0] });
});

test('a butt of volume 0 needs no rain, not even the first flush', () => {
  expect(rainFor({ volume: 0, roof: 12, firstFlush: 0.001 })).toBe(0);
});

test('an empty series of samples gives 0 held back, volumes out of order are refused', () => {
  expect(heldBack({ volumes: [], effluent: [], feed: 7 })).toBe(0);
  expect(() => heldBack({ volumes: [2, 1], effluent: [0, 0], feed: 7 })).toThrow(DomainError);
});

test('refuses ions and temperatures out of range, and notes viscosities outside the formula', () => {
  expectLimits(
    hardnessFromIons,
    { calcium: 0.1, magnesium: 0.02 },
    { calcium: { takes: [0], refuses: [-1e-6] }, magnesium: { takes: [0], refuses: [-1e-6] } },
  );
  expectLimits(
    waterViscosity,
    { temperature: 293.15 },
    { temperature: { takes: [253.15, 473.15], refuses: [253, 473.3] } },
  );
  expect(waterViscosity({ temperature: 273.15 }).notes).toEqual([]);
  expect(waterViscosity({ temperature: 273 }).notes).toHaveLength(1);
  expect(waterViscosity({ temperature: 423.3 }).notes).toHaveLength(1);
});
