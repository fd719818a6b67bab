import { describe, expect, test } from 'vitest';
import {
  dryConductivityBand,
  tabledConductivity,
  valoreUsConductivity,
} from '../../../src/core/finished/conductivity.ts';
import {
  ASHRAE_CONDUCTIVITY,
  BCA_CONDUCTIVITY,
} from '../../../src/core/finished/conductivity-data.ts';
import {
  flexuralFromCompressive,
  splittingComparators,
} from '../../../src/core/finished/flexural.ts';
import {
  flyAshModulus,
  pauwModulus,
  sandModulus,
  tadaModulus,
} from '../../../src/core/finished/modulus.ts';
import { moistConductivity } from '../../../src/core/finished/moisture.ts';
import { strengthBand } from '../../../src/core/finished/strength-band.ts';
import { hoff1972, kearsleyWainwright2002 } from '../../../src/core/finished/strength-forms.ts';
import {
  layerResistance,
  thicknessForResistance,
  transmittance,
} from '../../../src/core/finished/thermal-resistance.ts';
import { expectLimits } from '../refuses.ts';

const positive = { refuses: [0, -1] };

const notNegative = { takes: [0], refuses: [-1e-6] };

const share = { takes: [0, 1], refuses: [-0.01, 1.01] };

describe('heat', () => {
  test('refuses densities and conductivities of 0 and a negative moisture', () => {
    expectLimits(
      moistConductivity,
      { dry: 0.1, moisture: 0.02 },
      {
        dry: positive,
        moisture: notNegative,
      },
    );
    const density = { dryDensity: 500 };
    for (const work of [valoreUsConductivity, dryConductivityBand])
      expectLimits<typeof density>(work, density, { dryDensity: positive });
    expectLimits(
      ({ dryDensity }: typeof density) => tabledConductivity(BCA_CONDUCTIVITY, dryDensity),
      density,
      { dryDensity: positive },
    );
    expect(moistConductivity({ dry: 0.1, moisture: 0.06 }).notes).toEqual([]);
    expect(moistConductivity({ dry: 0.1, moisture: 0.061 }).notes).toHaveLength(1);
  });

  test('the ends of a table belong to it', () => {
    for (const table of [BCA_CONDUCTIVITY, ASHRAE_CONDUCTIVITY])
      for (const { density, low, high } of table.points) {
        const at = tabledConductivity(table, density)!;
        expect(at.low).toBeCloseTo(low, 12);
        expect(at.high).toBeCloseTo(high, 12);
      }
  });

  test('refuses conductivities of 0 and negative thicknesses, surface resistances and wishes', () => {
    expectLimits(
      layerResistance,
      { thickness: 0.1, conductivity: 0.1 },
      {
        thickness: notNegative,
        conductivity: positive,
      },
    );
    expectLimits(
      transmittance,
      { layers: [{ thickness: 0.1, conductivity: 0.1 }], surfaces: 0.17 },
      {
        surfaces: notNegative,
      },
    );
    expectLimits(
      thicknessForResistance,
      { resistance: 1, conductivity: 0.1, density: 500 },
      {
        resistance: notNegative,
        conductivity: positive,
        density: positive,
      },
    );
  });
});

describe('stiffness and strength', () => {
  test('refuse densities and strengths of 0 or less', () => {
    expectLimits(
      pauwModulus,
      { density: 1600, compressive: 8e6 },
      {
        density: positive,
        compressive: positive,
      },
    );
    for (const work of [sandModulus, flyAshModulus])
      expectLimits<{ compressive: number }>(work, { compressive: 2e6 }, { compressive: positive });
    // 5.31 w = 853 at w = 160.64.
    expectLimits(
      tadaModulus,
      { density: 500 },
      {
        density: { takes: [160.65], refuses: [853 / 5.31, 160.6] },
      },
    );
    expectLimits(
      ({ compressive }: { compressive: number }) => splittingComparators(compressive),
      { compressive: 2e6 },
      { compressive: positive },
    );
  });

  test('the square-root relation notes a density outside 1440–2480 kg/m³', () => {
    const notes = (density: number) => pauwModulus({ density, compressive: 8e6 }).notes;
    expect([1440, 2480].map(notes)).toEqual([[], []]);
    for (const density of [1439, 2481])
      expect(notes(density)).toEqual([{ code: 'outside-range', of: 'density' }]);
  });

  test('refuse a band whose ends are reversed', () => {
    const compressive = { low: 1e6, high: 2e6 };
    expectLimits(flexuralFromCompressive, compressive, {
      low: { takes: [2e6], refuses: [0, -1], as: 'compressive' },
      high: { takes: [1e6], refuses: [0.9e6], as: 'compressive' },
    });
    expectLimits(
      strengthBand,
      { wetDensity: 700, ovenDryDensity: 600 },
      {
        wetDensity: { takes: [600], refuses: [0, -1] },
        ovenDryDensity: { takes: [700], refuses: [0, -1, 701] },
      },
    );
  });

  test('strength formulas refuse variables out of their range', () => {
    const mix = { wetDensity: 800, waterCement: 0.5, intrinsic: 115.3e6, exponent: 2.7 };
    expectLimits(hoff1972, mix, {
      wetDensity: positive,
      waterCement: { takes: [0], refuses: [-0.1, 101] },
      intrinsic: { takes: [0, 1e9], refuses: [-1, 1.1e9] },
      exponent: { takes: [0, 10], refuses: [-1, 11] },
    });
    expectLimits(
      kearsleyWainwright2002,
      { age: 28 * 86400, porosity: 0.6 },
      {
        age: { takes: [86400, 36_525 * 86400], refuses: [86399, 36_526 * 86400] },
        porosity: share,
      },
    );
  });
});
