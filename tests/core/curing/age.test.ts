import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type AgeLaw,
  ageFactor,
  fhpActivationEnergy,
} from '../../../src/core/curing/age-factor.ts';
import { ageAt, equivalentAge, timeToReachAge } from '../../../src/core/curing/equivalent-age.ts';
import {
  dailyHistory,
  extremesOf,
  steadyHistory,
  temperatureAt,
  temperatureHistory,
} from '../../../src/core/curing/history.ts';
import { nurseSaul } from '../../../src/core/curing/nurse-saul.ts';
import { DomainError } from '../../../src/core/domain-error.ts';

const DAY = 86400;
const HOUR = 3600;
const laws: readonly AgeLaw[] = [
  { law: 'arrhenius', activationEnergy: 42_500 },
  { law: 'fhp' },
  { law: 'model-code' },
];
const law = fc.constantFrom(...laws);
const readings = fc
  .array(
    fc.record({
      gap: fc.double({ min: 60, max: 2 * DAY, noNaN: true }),
      temperature: fc.double({ min: 268, max: 333, noNaN: true }),
    }),
    { minLength: 2, maxLength: 20 },
  )
  .map((list) => {
    const times = [0];
    for (const { gap } of list.slice(1)) times.push(times.at(-1)! + gap);
    return temperatureHistory({ times, temperatures: list.map((r) => r.temperature) });
  });

describe('adjusted age', () => {
  test('at a steady temperature the age is the time multiplied by the age factor', () => {
    for (const each of laws)
      for (const temperature of [275, 293.15, 320]) {
        const { age } = equivalentAge({
          history: steadyHistory({ temperature, duration: DAY }),
          law: each,
        });
        expect(age).toBeCloseTo(DAY * ageFactor(each, temperature), 6);
      }
  });

  test('reading the same line more often does not change the age', () => {
    fc.assert(
      fc.property(readings, law, (history, each) => {
        const times = history.times.flatMap((t, i) =>
          i === 0 ? [t] : [(t + history.times[i - 1]!) / 2, t],
        );
        const finer = temperatureHistory({
          times,
          temperatures: times.map((t) => temperatureAt(history, t)),
        });
        const coarse = equivalentAge({ history, law: each }).age;
        const fine = equivalentAge({ history: finer, law: each }).age;
        expect(Math.abs(fine / coarse - 1)).toBeLessThan(2e-8);
      }),
    );
  });

  test('agrees with a plain sum over a hundred thousand slices', () => {
    const history = temperatureHistory({ times: [0, DAY], temperatures: [270, 325] });
    for (const each of laws) {
      const n = 100_000;
      let sum = 0;
      for (let i = 0; i < n; i++) sum += ageFactor(each, 270 + (55 * (i + 0.5)) / n);
      expect(equivalentAge({ history, law: each }).age / ((sum * DAY) / n)).toBeCloseTo(1, 8);
    }
  });

  test('the time to reach an age is the time at which that age is reached', () => {
    fc.assert(
      fc.property(
        readings,
        law,
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (history, each, share) => {
          const { age: whole } = equivalentAge({ history, law: each });
          const time = timeToReachAge({ history, law: each, age: share * whole })!;
          const cut = temperatureHistory({
            times: [...history.times.filter((t) => t < time), time],
            temperatures: [...history.times.filter((t) => t < time), time].map((t) =>
              temperatureAt(history, t),
            ),
          });
          expect(equivalentAge({ history: cut, law: each }).age / (share * whole)).toBeCloseTo(
            1,
            6,
          );
        },
      ),
    );
  });

  test('an age beyond the history is not reached', () => {
    const history = steadyHistory({ temperature: 293.15, duration: DAY });
    const each: AgeLaw = { law: 'fhp' };
    expect(timeToReachAge({ history, law: each, age: 1.01 * DAY })).toBeUndefined();
    expect(timeToReachAge({ history, law: each, age: DAY })).toBeCloseTo(DAY, 3);
    expect(timeToReachAge({ history, law: each, age: 0 })).toBe(0);
  });

  test('the age by a moment between two readings does not depend on the readings', () => {
    const history = temperatureHistory({ times: [0, 96 * HOUR], temperatures: [298.15, 278.15] });
    const finer = temperatureHistory({
      times: [0, 48 * HOUR, 96 * HOUR],
      temperatures: [298.15, 288.15, 278.15],
    });
    const each: AgeLaw = { law: 'fhp' };
    const at = (of: typeof history, hours: number) =>
      ageAt({ history: of, law: each, time: hours * HOUR }) / DAY;
    expect(at(history, 48)).toBeCloseTo(2.001, 3);
    for (const hours of [0, 10, 48, 80, 96])
      expect(at(history, hours)).toBeCloseTo(at(finer, hours), 4);
    expect(at(history, -1)).toBe(0);
    expect(at(history, 200)).toBe(equivalentAge({ history, law: each }).age / DAY);
  });

  test('by the moment an age is reached, the age is that', () => {
    fc.assert(
      fc.property(
        readings,
        law,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (history, each, share) => {
          const age = share * equivalentAge({ history, law: each }).age;
          const time = timeToReachAge({ history, law: each, age })!;
          expect(ageAt({ history, law: each, time })).toBeCloseTo(age, 3);
        },
      ),
    );
  });

  test('notes frost and gaps in the readings', () => {
    const history = temperatureHistory({
      times: [0, 3600, 4 * 3600],
      temperatures: [280, 270, 275],
      longestGap: 2 * 3600,
    });
    expect(equivalentAge({ history, law: { law: 'fhp' } }).notes).toEqual([
      { code: 'outside-range', of: 'temperature' },
      { code: 'gap-bridged', of: 'history' },
    ]);
  });

  test('gives one note for too cold, too hot or both, and none within 0 to 80 °C', () => {
    const notes = (...temperatures: number[]) =>
      equivalentAge({
        history: temperatureHistory({ times: temperatures.map((_, i) => i * DAY), temperatures }),
        law: { law: 'arrhenius', activationEnergy: 42_500 },
      }).notes;
    const outside = [{ code: 'outside-range', of: 'temperature' }];
    expect(notes(290, 350, 300)).toEqual([]);
    expect(notes(290, 360, 300)).toEqual(outside);
    expect(notes(290, 270, 300)).toEqual(outside);
    expect(notes(270, 360, 300)).toEqual(outside);
  });

  test('the variable activation energy rises 1.47 kJ/mol a kelvin below 20 °C', () => {
    expect(fhpActivationEnergy({ temperature: 303.15 })).toBe(33_500);
    expect(fhpActivationEnergy({ temperature: 283.15 })).toBeCloseTo(48_200, 6);
  });
});

describe('Nurse–Saul', () => {
  test('a line through the datum counts only the part above it', () => {
    const history = temperatureHistory({ times: [0, 1000], temperatures: [253.15, 273.15] });
    expect(nurseSaul({ history, datum: 263.15 })).toBeCloseTo(0.5 * 500 * 10, 9);
    const falling = temperatureHistory({ times: [0, 1000], temperatures: [273.15, 253.15] });
    expect(nurseSaul({ history: falling, datum: 263.15 })).toBeCloseTo(2500, 9);
  });

  test('counts from −10 °C unless told another datum', () => {
    // A day at 20 °C is 30 K above it: 720 K·h.
    const day = steadyHistory({ temperature: 293.15, duration: DAY });
    expect(nurseSaul({ history: day }) / 3600).toBeCloseTo(720, 9);
    expect(nurseSaul({ history: steadyHistory({ temperature: 263.15, duration: DAY }) })).toBe(0);
  });

  test('never falls with time and never counts below the datum', () => {
    fc.assert(
      fc.property(readings, (history) => {
        expect(nurseSaul({ history })).toBeGreaterThanOrEqual(0);
        expect(nurseSaul({ history, datum: 340 })).toBe(0);
      }),
    );
  });
});

describe('histories', () => {
  test('a history made from daily extremes passes through them and stays between them', () => {
    const days = [
      { coldest: 275, warmest: 285 },
      { coldest: 279, warmest: 290 },
    ];
    const history = dailyHistory({ days });
    expect(temperatureAt(history, 5 * 3600)).toBeCloseTo(275, 9);
    expect(temperatureAt(history, 15 * 3600)).toBeCloseTo(285, 9);
    expect(temperatureAt(history, DAY + 5 * 3600)).toBeCloseTo(279, 9);
    expect(temperatureAt(history, DAY + 15 * 3600)).toBeCloseTo(290, 9);
    expect(history.times.at(-1)).toBe(2 * DAY);
    expect(extremesOf(history)).toEqual({ coldest: 275, warmest: 290 });
    expect(Math.min(...history.temperatures)).toBeGreaterThanOrEqual(275);
    expect(Math.max(...history.temperatures)).toBeLessThanOrEqual(290);
  });

  test('a later start gives the same curve without its beginning', () => {
    const days = [{ coldest: 275, warmest: 285 }];
    const whole = dailyHistory({ days, step: 300 });
    const late = dailyHistory({ days, start: 9 * 3600, step: 300 });
    expect(late.times[0]).toBe(0);
    expect(late.times.at(-1)).toBe(15 * 3600);
    expect(temperatureAt(late, 3600)).toBeCloseTo(temperatureAt(whole, 10 * 3600), 9);
  });

  test('the first and last readings hold outside the history', () => {
    const history = temperatureHistory({ times: [10, 20], temperatures: [280, 290] });
    expect(temperatureAt(history, 0)).toBe(280);
    expect(temperatureAt(history, 15)).toBe(285);
    expect(temperatureAt(history, 99)).toBe(290);
  });

  test('refuses an empty history and readings out of range', () => {
    expect(() => temperatureHistory({ times: [], temperatures: [] })).toThrow(DomainError);
    expect(() => temperatureHistory({ times: [0, 0], temperatures: [1, 1] })).toThrow(DomainError);
    expect(() => temperatureHistory({ times: [0, 1], temperatures: [290] })).toThrow(DomainError);
    expect(() => dailyHistory({ days: [{ coldest: 290, warmest: 280 }] })).toThrow(DomainError);
    expect(() => dailyHistory({ days: [{ coldest: 280, warmest: 290 }], start: DAY })).toThrow(
      DomainError,
    );
  });
});
