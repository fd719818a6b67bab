import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import {
  dryConductivityBand,
  tabledConductivity,
  valoreUsConductivity,
} from '../../../src/core/finished/conductivity.ts';
import { BCA_CONDUCTIVITY } from '../../../src/core/finished/conductivity-data.ts';
import { moistConductivity, mostMoisture } from '../../../src/core/finished/moisture.ts';
import { WONG_2026 } from '../../../src/core/finished/strength-relations/measured.ts';
import {
  layerResistance,
  thicknessForResistance,
  transmittance,
} from '../../../src/core/finished/thermal-resistance.ts';
import { valoreConductivity } from '../../../src/core/finished/valore.ts';
import { between } from '../arbitrary.ts';

const layer = fc.record({ thickness: between(0, 1), conductivity: between(0.03, 2) });

describe('thermal resistance', () => {
  test('of layers is their sum, in any order', () => {
    fc.assert(
      fc.property(
        fc.array(layer, { minLength: 1, maxLength: 6 }),
        between(0.05, 0.3),
        (layers, surfaces) => {
          const whole = transmittance({ layers, surfaces });
          const sum = layers.reduce((r, l) => r + layerResistance(l), surfaces);
          expect(whole.resistance).toBeCloseTo(sum, 9);
          expect(transmittance({ layers: layers.toReversed(), surfaces }).resistance).toBeCloseTo(
            sum,
            9,
          );
          expect(whole.transmittance * whole.resistance).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  test('one layer cut in two resists the same', () => {
    fc.assert(
      fc.property(layer, between(0, 1), ({ thickness, conductivity }, cut) => {
        const parts = [cut * thickness, (1 - cut) * thickness].map((t) =>
          layerResistance({ thickness: t, conductivity }),
        );
        expect(parts[0]! + parts[1]!).toBeCloseTo(layerResistance({ thickness, conductivity }), 10);
      }),
    );
  });

  test('the thickness for an R has that R, and weighs thickness times density', () => {
    fc.assert(
      fc.property(
        between(0, 8),
        between(0.05, 1),
        between(300, 1600),
        (resistance, conductivity, density) => {
          const { thickness, massPerArea } = thicknessForResistance({
            resistance,
            conductivity,
            density,
          });
          expect(layerResistance({ thickness, conductivity })).toBeCloseTo(resistance, 10);
          expect(massPerArea).toBeCloseTo(thickness * density, 10);
        },
      ),
    );
  });

  test('refuses an empty wall and a layer with a conductivity of 0', () => {
    expect(() => transmittance({ layers: [], surfaces: 0 })).toThrow(DomainError);
    expect(() => layerResistance({ thickness: 1, conductivity: 0 })).toThrow(DomainError);
  });
});

describe('conductivity', () => {
  test('rises with density and moisture, and both forms agree', () => {
    fc.assert(
      fc.property(
        between(320, 1900),
        between(0, 20),
        between(0, 0.06),
        (dryDensity, more, moisture) => {
          const { conductivity } = valoreConductivity({ dryDensity });
          expect(
            valoreConductivity({ dryDensity: dryDensity + more }).conductivity,
          ).toBeGreaterThanOrEqual(conductivity);
          expect(
            Math.abs(valoreUsConductivity({ dryDensity }).conductivity / conductivity - 1),
          ).toBeLessThan(0.004);
          expect(
            moistConductivity({ dry: conductivity, moisture }).conductivity,
          ).toBeGreaterThanOrEqual(conductivity);
        },
      ),
    );
  });

  test('rises with moisture to six times dry and no further', () => {
    const of = (moisture: number) => moistConductivity({ dry: 0.1, moisture }).conductivity;
    expect(of(0.4)).toBeCloseTo(0.1 * Math.exp(1.6), 12);
    expect(of(0.45)).toBeCloseTo(0.6, 12);
    expect(of(5)).toBeCloseTo(0.6, 12);
  });

  test('the moisture is at most what the pores hold, and 0 without pores', () => {
    // A cubic metre of 650 kg/m³ is a quarter solid.
    expect(mostMoisture({ dryDensity: 650 })).toBeCloseTo(750 / 650, 12);
    expect(mostMoisture({ dryDensity: 2600 })).toBe(0);
    expect(mostMoisture({ dryDensity: 3000 })).toBe(0);
    expect(() => mostMoisture({ dryDensity: 0 })).toThrow(DomainError);
  });

  test('notes a density outside its range', () => {
    expect(valoreConductivity({ dryDensity: 200 }).notes).toEqual([
      { code: 'outside-range', of: 'dryDensity' },
    ]);
    expect(valoreConductivity({ dryDensity: 600 }).notes).toEqual([]);
    expect(moistConductivity({ dry: 0.1, moisture: 0.3 }).notes).toHaveLength(1);
    expect(tabledConductivity(BCA_CONDUCTIVITY, 300)).toBeUndefined();
    expect(tabledConductivity(BCA_CONDUCTIVITY, 1700)).toBeUndefined();
    expect(() => valoreConductivity({ dryDensity: 0 })).toThrow(DomainError);
  });

  test('a table is interpolated linearly between its rows', () => {
    const { low, high } = tabledConductivity(BCA_CONDUCTIVITY, 900)!;
    expect(low).toBeCloseTo(0.2, 12);
    expect(high).toBeCloseTo(0.265, 12);
  });

  test('the band contains the relation and both tables, and lies below the measured slag points', () => {
    const { low, high } = dryConductivityBand({ dryDensity: 500 });
    expect(low).toBeCloseTo(0.105, 10);
    expect(high).toBeGreaterThan(valoreConductivity({ dryDensity: 500 }).conductivity);
    const above = WONG_2026.filter(
      ({ density, conductivity }) =>
        conductivity > dryConductivityBand({ dryDensity: density }).high,
    );
    expect(above.length).toBe(WONG_2026.length);
  });
});
