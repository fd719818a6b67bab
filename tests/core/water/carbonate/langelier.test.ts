import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { DomainError } from '../../../../src/core/domain-error.ts';
import { fromUnit, toUnit } from '../../../../src/core/quantity/convert.ts';
import {
  solutesFromReport,
  waterPerVolume,
} from '../../../../src/core/water/carbonate/from-report.ts';
import {
  precipitationPotential,
  saturationPH,
} from '../../../../src/core/water/carbonate/langelier.ts';
import { saturationIndex } from '../../../../src/core/water/carbonate/saturation.ts';
import { speciate } from '../../../../src/core/water/carbonate/speciate.ts';
import { langelierByFactors, langelierField } from '../../../../src/core/water/langelier-field.ts';
import { mains, solutes } from './waters.ts';

const CARBONATE = 'mg/L CaCO3';

test('at its saturation pH a water is just saturated', () => {
  fc.assert(
    fc.property(solutes, fc.double({ min: 1e-4, max: 8e-3, noNaN: true }), (salts, alkalinity) => {
      const water = speciate(salts, { pH: 7.5, alkalinity });
      const saturation = saturationPH(water);
      fc.pre(saturation !== undefined);
      const there = speciate(water, { pH: saturation!, alkalinity: water.alkalinity });
      expect(Math.abs(saturationIndex(there, 'calcite'))).toBeLessThan(1e-6);
    }),
    { numRuns: 25 },
  );
});

test('the index, the saturation index and the potential agree in sign', () => {
  for (const pH of [6.5, 7, 7.2, 7.4, 7.8, 8.3]) {
    const water = mains(pH);
    const index = pH - saturationPH(water)!;
    expect(Math.sign(index)).toBe(Math.sign(saturationIndex(water, 'calcite')));
    expect(Math.sign(index)).toBe(Math.sign(precipitationPotential(water)));
    expect(index).toBeCloseTo(saturationIndex(water, 'calcite'), 1);
  }
});

test('a water without calcium, or without alkalinity, has no saturation pH', () => {
  expect(
    saturationPH(speciate({ temperature: 288.15 }, { pH: 8, alkalinity: 1e-3 })),
  ).toBeUndefined();
  const acid = speciate({ temperature: 288.15, calcium: 1e-3 }, { pH: 4, carbon: 1e-4 });
  expect(saturationPH(acid)).toBeUndefined();
});

test('a water that turns to brine on the way to its saturation pH is refused as one', () => {
  const brine = speciate({ temperature: 298.15, calcium: 1e-9 }, { pH: 8, alkalinity: 1 });
  expect(() => saturationPH(brine)).toThrow('too-concentrated');
});

test('where hydroxide outweighs the alkalinity first there is no saturation pH', () => {
  const thin = speciate({ temperature: 298.15, calcium: 1e-6 }, { pH: 7, alkalinity: 1e-5 });
  expect(saturationPH(thin)).toBeUndefined();
});

test('a factor table refuses calcium and alkalinity alike, in what both are written in', () => {
  const water = { pH: 7.4, temperature: 298.15, calcium: 2, alkalinity: 4 };
  expect(() => langelierByFactors(water)).not.toThrow();
  const refusal = (change: Partial<typeof water>) => {
    try {
      return langelierByFactors({ ...water, ...change });
    } catch (error) {
      const { kind, value, allowed } = error as DomainError;
      return {
        kind,
        mg: [value, allowed.min, allowed.max].map((x) => toUnit(x!, kind, CARBONATE)),
      };
    }
  };
  const expected = { kind: 'hardness', mg: [2000, 5, 1000].map((x) => expect.closeTo(x, 6)) };
  const molar = fromUnit(2000, 'hardness', CARBONATE);
  expect(refusal({ calcium: molar })).toEqual(expected);
  expect(refusal({ alkalinity: 2 * molar })).toEqual(expected);
});

test('the field formula is within three tenths of the full reckoning on a mains water', () => {
  const water = mains();
  const field = langelierField({
    pH: 7.4,
    temperature: 285.15,
    dissolved: 0.4,
    calcium: 2.37,
    alkalinity: 4.2,
  });
  expect(Math.abs(field.saturationPH - saturationPH(water)!)).toBeLessThan(0.3);
});

test('a report becomes molalities by the water in the sample', () => {
  const report = { temperature: 293.15, calcium: 0.080156, sodium: 0.02299, nitrate: 0.031 };
  const solutes = solutesFromReport(report);
  expect(solutes.calcium).toBeCloseTo(2e-3 / 0.9982071, 8);
  expect(solutes.otherAnions).toBeCloseTo(0.5e-3 / 0.998, 6);
  expect(solutes.chloride).toBeUndefined();
  expect(waterPerVolume({ temperature: 298.15, density: 1023, dissolved: 35 })).toBe(988);
  expect(() => waterPerVolume({ temperature: 298.15, density: 1023, dissolved: 1023 })).toThrow();
});
