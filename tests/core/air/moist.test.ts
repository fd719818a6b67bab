import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  humidityRatio,
  humidityRatioFromWetBulb,
  moistAirDensity,
  moistEnthalpy,
  standardPressure,
  vapourPressure,
  wetBulb,
} from '../../../src/core/air/moist.ts';
import { dewPoint, saturationPressure } from '../../../src/core/air/saturation.ts';
import { DomainError } from '../../../src/core/domain-error.ts';
import { expectLimits } from '../refuses.ts';

type Oracle = Readonly<
  Record<
    | 'GetSatVapPres'
    | 'GetHumRatioFromRelHum'
    | 'GetTDewPointFromRelHum'
    | 'GetTWetBulbFromRelHum'
    | 'GetMoistAirDensity'
    | 'GetMoistAirEnthalpy'
    | 'GetStandardAtmPressure'
    | 'GetHumRatioFromTWetBulb',
    (...figures: readonly number[]) => number
  >
> & { readonly SI: number; SetUnitSystem(system: number): void };

// The package ships no types.
const require = createRequire(import.meta.url);
const oracle: Oracle = require('psychrolib');
oracle.SetUnitSystem(oracle.SI);

const ICE_POINT = 273.15;
const temperatures = [-40, -20, -5, -0.5, 0.5, 5, 15, 20, 25, 30, 40, 60, 80];
const humidities = [0.05, 0.3, 0.5, 0.8, 1];
const pressures = [80_000, 95_461, 101_325];
const airs = temperatures.flatMap((t) =>
  humidities.flatMap((h) => pressures.map((p) => [t, h, p] as const)),
);

function relative(ours: number, theirs: number): number {
  return Math.abs(ours - theirs) / Math.abs(theirs);
}

describe('against an independent program', () => {
  test.each(temperatures)('saturation pressure at %d °C', (t) => {
    const ours = saturationPressure({ temperature: t + ICE_POINT });
    expect(relative(ours, oracle.GetSatVapPres(t))).toBeLessThan(1e-9);
  });

  test.each(airs)('air at %d °C, humidity %d, %d Pa', (t, relativeHumidity, pressure) => {
    const temperature = t + ICE_POINT;
    const air = { temperature, relativeHumidity, pressure };
    const e = vapourPressure(air);
    const w = humidityRatio({ vapourPressure: e, pressure });
    expect(relative(w, oracle.GetHumRatioFromRelHum(t, relativeHumidity, pressure))).toBeLessThan(
      1e-9,
    );
    expect(
      relative(
        moistAirDensity({ temperature, humidityRatio: w, pressure }),
        oracle.GetMoistAirDensity(t, w, pressure),
      ),
    ).toBeLessThan(1e-5);
    expect(
      Math.abs(moistEnthalpy({ temperature, humidityRatio: w }) - oracle.GetMoistAirEnthalpy(t, w)),
    ).toBeLessThan(0.01);
    // Its Newton and bisection stop at 0.001 K.
    const dew = dewPoint({ vapourPressure: e }) - ICE_POINT;
    expect(Math.abs(dew - oracle.GetTDewPointFromRelHum(t, relativeHumidity))).toBeLessThan(0.002);
    const wet = wetBulb(air) - ICE_POINT;
    expect(
      Math.abs(wet - oracle.GetTWetBulbFromRelHum(t, relativeHumidity, pressure)),
    ).toBeLessThan(0.002);
  });

  test.each([
    [120, 0.001],
    [150, 0.01],
    [190, 0.0001],
  ])('wet bulb of air at %d °C, humidity %d', (t, relativeHumidity) => {
    const wet = wetBulb({ temperature: t + ICE_POINT, relativeHumidity, pressure: 101_325 });
    const theirs = oracle.GetTWetBulbFromRelHum(t, relativeHumidity, 101_325);
    expect(Math.abs(wet - ICE_POINT - theirs)).toBeLessThan(0.002);
  });

  test.each([
    [30, 25, 95_461],
    [-1, -5, 101_325],
    [20, 13, 80_000],
  ])('humidity ratio of %d °C dry, %d °C wet, %d Pa', (t, wet, pressure) => {
    const ours = humidityRatioFromWetBulb({
      temperature: t + ICE_POINT,
      wetBulb: wet + ICE_POINT,
      pressure,
    });
    // The program will not give less than 1e-7.
    expect(Math.abs(ours - oracle.GetHumRatioFromTWetBulb(t, wet, pressure))).toBeLessThan(1.1e-7);
  });

  test.each([-500, 0, 500, 1800, 4000, 10_000])('standard pressure at %d m', (altitude) => {
    expect(
      relative(standardPressure({ altitude }), oracle.GetStandardAtmPressure(altitude)),
    ).toBeLessThan(1e-9);
  });
});

describe('moist air', () => {
  const temperature = fc.double({ min: 230, max: 340, noNaN: true });
  const relativeHumidity = fc.double({ min: 0.02, max: 1, noNaN: true });

  test('the dew point of air gives back its vapour pressure', () => {
    fc.assert(
      fc.property(temperature, relativeHumidity, (t, r) => {
        const e = vapourPressure({ temperature: t, relativeHumidity: r });
        // Both fits meet at 0 °C with a step of 0.02 %.
        expect(
          relative(saturationPressure({ temperature: dewPoint({ vapourPressure: e }) }), e),
        ).toBeLessThan(3e-4);
      }),
    );
  });

  test('dew point ≤ wet bulb ≤ temperature above freezing', () => {
    fc.assert(
      fc.property(fc.double({ min: 280, max: 340, noNaN: true }), relativeHumidity, (t, r) => {
        const air = { temperature: t, relativeHumidity: r };
        const dew = dewPoint({ vapourPressure: vapourPressure(air) });
        const wet = wetBulb(air);
        fc.pre(wet > ICE_POINT && dew > ICE_POINT);
        expect(dew).toBeLessThanOrEqual(wet + 0.01);
        expect(wet).toBeLessThanOrEqual(t + 1e-6);
      }),
    );
  });

  test('the enthalpy is defined from −100 to 200 °C', () => {
    expectLimits(
      moistEnthalpy,
      { temperature: 293.15, humidityRatio: 0.01 },
      {
        temperature: { takes: [173.15, 473.15], refuses: [173.1, 473.2] },
        humidityRatio: { takes: [0], refuses: [-1e-6] },
      },
    );
  });

  test('a wick at exactly 0 °C counts as wet, not frozen', () => {
    const at = { temperature: 5 + ICE_POINT, wetBulb: ICE_POINT };
    // Ws = 0.621945 · 611.2/(101 325 − 611.2); then (2501 Ws − 1.006 · 5)/(2501 + 1.86 · 5). Over ice it were 0.0020.
    expect(humidityRatioFromWetBulb(at)).toBeCloseTo(0.001757, 6);
  });

  test('a wet bulb colder than that of dry air is refused, with the lowest one possible', () => {
    const hot = { temperature: 40 + ICE_POINT };
    const coldest = wetBulb({ ...hot, relativeHumidity: 0 });
    expect(() => humidityRatioFromWetBulb({ ...hot, wetBulb: 5 + ICE_POINT })).toThrow(
      expect.objectContaining({
        quantity: 'wetBulb',
        because: 'drier-than-dry-air',
        kind: 'temperature',
        allowed: { min: expect.closeTo(coldest, 6), max: hot.temperature },
      }),
    );
    expect(() => humidityRatioFromWetBulb({ ...hot, wetBulb: coldest - 1e-6 })).toThrow(
      DomainError,
    );
    expect(humidityRatioFromWetBulb({ ...hot, wetBulb: coldest })).toBeCloseTo(0, 10);
  });

  test('the wet bulb gives back the humidity it was found from, dry air too', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 250, max: 340, noNaN: true }),
        fc.oneof(fc.constant(0), relativeHumidity),
        (t, r) => {
          const air = { temperature: t, relativeHumidity: r };
          const wanted = humidityRatio({
            vapourPressure: vapourPressure(air),
            pressure: 101_325,
          });
          const wet = wetBulb(air);
          // Over water and over ice the relations leave a step at 0 °C.
          fc.pre(Math.abs(wet - ICE_POINT) > 1e-6);
          expect(humidityRatioFromWetBulb({ temperature: t, wetBulb: wet })).toBeCloseTo(wanted, 9);
        },
      ),
    );
  });

  test('refuses temperatures, humidities and pressures out of range', () => {
    expect(() => vapourPressure({ temperature: 293, relativeHumidity: 1.01 })).toThrow(DomainError);
    expect(() => humidityRatio({ vapourPressure: 101_325, pressure: 101_325 })).toThrow(
      DomainError,
    );
    expect(() => saturationPressure({ temperature: 150 })).toThrow(DomainError);
    expect(() => humidityRatioFromWetBulb({ temperature: 293, wetBulb: 294 })).toThrow(DomainError);
    expect(() => dewPoint({ vapourPressure: 0 })).toThrow(DomainError);
    expect(() => standardPressure({ altitude: 12_000 })).toThrow(DomainError);
  });
});
