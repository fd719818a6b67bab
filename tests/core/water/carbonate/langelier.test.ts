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
import type { Speciation } from '../../../../src/core/water/carbonate/speciation.ts';
import { langelierByFactors, langelierField } from '../../../../src/core/water/langelier-field.ts';
import { mains, solutes } from './waters.ts';

const CARBONATE = 'mg/L CaCO3';

/** The index of a water at another pH with its alkalinity; nothing where hydroxide outweighs that. */
const indexAt = (water: Speciation, pH: number) => {
  try {
    return saturationIndex(speciate(water, { pH, alkalinity: water.alkalinity }), 'calcite');
  } catch (refusal) {
    if ((refusal as DomainError).because === 'alkalinity-below-hydroxide') return -Infinity;
    throw refusal;
  }
};
/** Whether there is such a water: its hydroxide does not outweigh its alkalinity. */
const exists = (salts: Parameters<typeof speciate>[0], pH: number, alkalinity: number): boolean => {
  try {
    return speciate(salts, { pH, alkalinity }) !== undefined;
  } catch (refusal) {
    if ((refusal as DomainError).because === 'alkalinity-below-hydroxide') return false;
    throw refusal;
  }
};
/** Every pH from 4 to 11 by hundredths: the slow way to see whether any is saturated. */
const hundredths = Array.from({ length: 701 }, (_, i) => 4 + i / 100);

test('a water has a saturation pH wherever some pH is saturated, and is exactly saturated there', () => {
  fc.assert(
    fc.property(
      solutes,
      fc.double({ min: -4.7, max: -2.1, noNaN: true }).map((log) => 10 ** log),
      fc.double({ min: 5, max: 8, noNaN: true }),
      (salts, alkalinity, pH) => {
        fc.pre(exists(salts, pH, alkalinity));
        const water = speciate(salts, { pH, alkalinity });
        const saturation = saturationPH(water);
        if (saturation === undefined)
          expect(Math.max(...hundredths.map((at) => indexAt(water, at)))).toBeLessThan(0);
        else {
          expect(Math.abs(indexAt(water, saturation))).toBeLessThan(1e-6);
          // The lower of two.
          expect(indexAt(water, saturation - 0.01)).toBeLessThan(0);
        }
      },
    ),
    { numRuns: 25 },
  );
});

test('a maximum of saturation between two steps of the search is found', () => {
  const salts = { temperature: 293.15, calcium: 2.87e-4, sodium: 1e-4, chloride: 1e-4 };
  const thin = { alkalinity: 1.44e-4, carbon: 1.44e-4 };
  const water = speciate(salts, thin);
  const saturated = hundredths.filter((pH) => indexAt(water, pH) >= 0);
  expect(saturated.length).toBeGreaterThan(5);
  const found = saturationPH(water)!;
  expect(found).toBeGreaterThan(saturated[0]! - 0.01);
  expect(found).toBeLessThanOrEqual(saturated[0]!);
  expect(indexAt(water, found)).toBeCloseTo(0, 6);
  // From beyond the summit, and where hydroxide already outweighs what is asked, it is the same pH.
  for (const pH of [9.9, 10]) {
    const limed = speciate(salts, { pH, alkalinity: thin.alkalinity });
    expect(saturationPH(limed)).toBeCloseTo(found, 6);
  }
  // A little less calcium, and no pH is.
  const softer = speciate({ ...salts, calcium: 2.7e-4 }, thin);
  expect(hundredths.filter((pH) => indexAt(softer, pH) >= 0)).toEqual([]);
  expect(saturationPH(softer)).toBeUndefined();
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

test('a water too concentrated at its saturation pH is refused as too concentrated', () => {
  const brine = speciate({ temperature: 298.15, calcium: 1e-9 }, { pH: 8, alkalinity: 1 });
  expect(() => saturationPH(brine)).toThrow('too-concentrated');
});

test('where hydroxide exceeds the alkalinity first there is no saturation pH', () => {
  const thin = speciate({ temperature: 298.15, calcium: 1e-6 }, { pH: 7, alkalinity: 1e-5 });
  expect(saturationPH(thin)).toBeUndefined();
});

test('the factor table refuses calcium and alkalinity in the same unit, as calcium carbonate', () => {
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

test('the field formula agrees with the full model within 0.3 for a mains water', () => {
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

test('a report is converted to molalities by the mass of water in the sample', () => {
  const report = { temperature: 293.15, calcium: 0.080156, sodium: 0.02299, nitrate: 0.031 };
  const solutes = solutesFromReport(report);
  expect(solutes.calcium).toBeCloseTo(2e-3 / 0.9982071, 8);
  expect(solutes.otherAnions).toBeCloseTo(0.5e-3 / 0.998, 6);
  expect(solutes.chloride).toBeUndefined();
  expect(waterPerVolume({ temperature: 298.15, density: 1023, dissolved: 35 })).toBe(988);
  expect(() => waterPerVolume({ temperature: 298.15, density: 1023, dissolved: 1023 })).toThrow();
});
