import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ACTION_RATE,
  CAUTION_RATE,
  type Drying,
  evaporation,
  evaporationMenzel,
  evaporationState,
  evaporationUno,
  evaporationUnoPrintedSi,
  LITTLE_BLEED_SHARE,
  US_ACTION_RATE,
  waterLost,
} from '../../../src/core/curing/evaporation.ts';
import { evaporationMeasures } from '../../../src/core/curing/evaporation-measures.ts';
import { DomainError } from '../../../src/core/domain-error.ts';

const fair: Drying = {
  concreteTemperature: 298.15,
  airTemperature: 293.15,
  relativeHumidity: 0.5,
  windSpeed: 4,
};
const weather = fc.record({
  concreteTemperature: fc.double({ min: 278, max: 310, noNaN: true }),
  airTemperature: fc.double({ min: 278, max: 310, noNaN: true }),
  relativeHumidity: fc.double({ min: 0, max: 1, noNaN: true }),
  windSpeed: fc.double({ min: 0, max: 11, noNaN: true }),
});

describe('evaporation from fresh concrete', () => {
  test('the exact conversion is 5.275·[(Tc + 17.778)^2.5 − r(Ta + 17.778)^2.5](V + 4.0234)·1e-6', () => {
    fc.assert(
      fc.property(weather, (of) => {
        const tc = of.concreteTemperature - 273.15 + 160 / 9;
        const ta = of.airTemperature - 273.15 + 160 / 9;
        const v = of.windSpeed * 3.6 + 2.5 * 1.609344;
        const constant = 1.8 ** 2.5 * (0.4 / 1.609344) * (0.45359237 / 0.3048 ** 2);
        expect(constant).toBeCloseTo(5.275, 3);
        const si = constant * (tc ** 2.5 - of.relativeHumidity * ta ** 2.5) * v * 1e-6;
        expect(evaporationUno(of) * 3600).toBeCloseTo(si, 9);
      }),
    );
  });

  test('the printed SI form lies 4–5 % low in ordinary drying weather', () => {
    for (const t of [285, 293, 303])
      for (const windSpeed of [1, 4, 8]) {
        const of = { ...fair, concreteTemperature: t, airTemperature: t, windSpeed };
        const low = 1 - evaporationUnoPrintedSi(of) / evaporationUno(of);
        expect(low).toBeGreaterThan(0.03);
        expect(low).toBeLessThan(0.06);
      }
  });

  test('Uno and Menzel keep within 40 % of each other where both say it dries well', () => {
    fc.assert(
      fc.property(weather, (of) => {
        const uno = evaporationUno(of) * 3600;
        fc.pre(uno > 0.3 && of.relativeHumidity < 0.8);
        const menzel = evaporationMenzel(of) * 3600;
        expect(Math.abs(uno - menzel) / uno).toBeLessThan(0.4);
      }),
    );
  });

  test('more wind dries more; more humidity dries less', () => {
    fc.assert(
      fc.property(weather, (of) => {
        const rate = evaporationUno(of);
        const windier = evaporationUno({ ...of, windSpeed: of.windSpeed + 1 });
        if (rate > 0) expect(windier).toBeGreaterThan(rate);
        const damper = { ...of, relativeHumidity: Math.min(1, of.relativeHumidity + 0.1) };
        expect(evaporationUno(damper)).toBeLessThanOrEqual(rate);
      }),
    );
  });

  test('condensation is noted, and evaporation then 0', () => {
    const result = evaporation({
      concreteTemperature: 288.15,
      airTemperature: 298.15,
      relativeHumidity: 0.9,
      windSpeed: 2,
    });
    expect(result).toMatchObject({ rate: 0, low: 0, high: 0, menzel: 0, state: 'calm' });
    expect(result.notes).toContainEqual({ code: 'condensation', of: 'rate' });
  });

  test('a rate at a limit belongs to the higher state', () => {
    expect(evaporationState(ACTION_RATE)).toBe('act');
    expect(evaporationState(US_ACTION_RATE)).toBe('caution');
    expect(evaporationState(ACTION_RATE / 2)).toBe('caution');
    expect(evaporationState(ACTION_RATE / 2 - 1e-12)).toBe('calm');
    // What bleeds little is held to half of them.
    expect(evaporationState(ACTION_RATE / 2, LITTLE_BLEED_SHARE)).toBe('act');
    expect(evaporationState(CAUTION_RATE / 2, LITTLE_BLEED_SHARE)).toBe('caution');
    expect(evaporationState(CAUTION_RATE / 2 - 1e-12, LITTLE_BLEED_SHARE)).toBe('calm');
  });

  test('a value outside the chart is noted by its name', () => {
    const { notes } = evaporation({ ...fair, windSpeed: 15, airTemperature: 276 });
    expect(notes.map((note) => note.of)).toEqual(['airTemperature', 'windSpeed']);
    expect(evaporation(fair).notes).toEqual([]);
  });

  test('a slab loses rate × area × time', () => {
    expect(waterLost({ rate: 0.8 / 3600, area: 0.45 * 0.3, duration: 3600 })).toBeCloseTo(0.108, 9);
  });

  test('refuses temperatures, humidities, winds and areas out of range', () => {
    expect(() => evaporationUno({ ...fair, relativeHumidity: 1.2 })).toThrow(DomainError);
    expect(() => evaporationUno({ ...fair, windSpeed: -1 })).toThrow(DomainError);
    expect(() => evaporationMenzel({ ...fair, airTemperature: 250 })).toThrow(DomainError);
    expect(() => waterLost({ rate: 1, area: 0, duration: 1 })).toThrow(DomainError);
  });
});

describe('what measures do', () => {
  test('each saves its share, and shade is offered only in the sun', () => {
    const measures = evaporationMeasures({ ...fair, sunlit: true });
    expect(measures.map((m) => m.measure)).toEqual([
      'nothing',
      'shade',
      'windbreak',
      'cooler-mix',
      'sheet',
    ]);
    const [nothing, shade, windbreak, cooler, sheet] = measures;
    expect(shade!.rate).toBeCloseTo(nothing!.rate / 2, 12);
    expect(windbreak!.rate).toBeCloseTo(evaporationUno({ ...fair, windSpeed: 1.6 }), 12);
    expect(cooler!.rate).toBeLessThan(nothing!.rate);
    expect(sheet!.saved).toBeCloseTo(0.95, 12);
    // The labels go by the same limits as the verdict.
    const labels = evaporationMeasures({ ...fair, sunlit: true, limitShare: LITTLE_BLEED_SHARE });
    for (const { rate, state } of labels)
      expect(state).toBe(evaporationState(rate, LITTLE_BLEED_SHARE));
    const indoors = evaporationMeasures({ ...fair, sunlit: false });
    expect(indoors.map((m) => m.measure)).not.toContain('shade');
  });

  test('never makes it worse, and saves nothing when nothing evaporates', () => {
    fc.assert(
      fc.property(weather, fc.boolean(), (of, sunlit) => {
        const measures = evaporationMeasures({ ...of, sunlit });
        for (const { rate, saved } of measures) {
          expect(rate).toBeLessThanOrEqual(measures[0]!.rate);
          expect(saved).toBeGreaterThanOrEqual(0);
          expect(saved).toBeLessThanOrEqual(1);
        }
      }),
    );
  });
});
