import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { AgeLaw } from '../../../src/core/curing/age-factor.ts';
import { fallsTo, firstAtOrBelow, timeAtOrBelow } from '../../../src/core/curing/cold-spells.ts';
import { dinCuring, type GainClass } from '../../../src/core/curing/curing-rules.ts';
import {
  DRY_ENOUGH_MOISTURE,
  diffusionDryingTime,
  moistureLeft,
  screedDryingTime,
} from '../../../src/core/curing/drying.ts';
import { frostGuard } from '../../../src/core/curing/frost.ts';
import {
  steadyHistory,
  temperatureAt,
  temperatureHistory,
} from '../../../src/core/curing/history.ts';
import { FREEZES_AT } from '../../../src/core/curing/limits.ts';
import { coldestMean, curingPlan } from '../../../src/core/curing/plan.ts';
import { DomainError } from '../../../src/core/domain-error.ts';

const DAY = 86400;
const law: AgeLaw = { law: 'arrhenius', activationEnergy: 33_500 };

describe('frost guard', () => {
  const cooling = temperatureHistory({
    times: [0, 2 * DAY, 4 * DAY, 30 * DAY],
    temperatures: [293.15, 283.15, 263.15, 263.15],
  });

  test('finds the first freeze and the time spent below', () => {
    expect(firstAtOrBelow(cooling, 273.15)).toBe(3 * DAY);
    expect(timeAtOrBelow(cooling, 273.15)).toBeCloseTo(27 * DAY, 3);
    expect(timeAtOrBelow(cooling, 273.15, 3.5 * DAY)).toBeCloseTo(0.5 * DAY, 3);
    expect(firstAtOrBelow(cooling, 250)).toBeUndefined();
    expect(timeAtOrBelow(cooling, 250)).toBe(0);
  });

  test('a stretch exactly at the level counts in full', () => {
    const level = temperatureHistory({ times: [0, 60, 90], temperatures: [273.15, 273.15, 280] });
    expect(timeAtOrBelow(level, 273.15)).toBe(60);
    const rising = temperatureHistory({ times: [0, 60, 90], temperatures: [270, 273.15, 280] });
    expect(timeAtOrBelow(rising, 273.15)).toBe(60);
  });

  test('each fall to the level counts once, the first moment too, and none after the end', () => {
    const nights = (temperatures: readonly number[], until = Infinity) =>
      fallsTo({ times: [0, 1, 2, 3, 4, 5], temperatures, gaps: [] }, 273.15, until).length;
    expect(nights([280, 273.15, 270, 274, 272, 280])).toBe(2);
    expect(nights([270, 271, 274, 274, 272, 272])).toBe(2);
    expect(nights([280, 270, 280, 270, 280, 270], 2.7)).toBe(2);
    expect(nights([280, 270, 280, 270, 280, 270], 2.6)).toBe(1);
    expect(nights([280, 280, 280, 280, 280, 273.2])).toBe(0);
  });

  test('the cure lasts to seven tenths of the strength, whatever stands the frost', () => {
    const of = { history: cooling, law, coefficients: [0.2] } as const;
    const { cured, oneFreeze } = frostGuard({ ...of, strength28: 30e6 });
    expect(cured.strength).toBeCloseTo(21e6, 3);
    expect(cured.frozenFirst).toBe(true);
    expect(oneFreeze.frozenFirst).toBe(false);
    // 28 d ÷ (1 − ln 0.7 ÷ 0.2)² = 3.6 d, at any strength.
    expect(cured.age! / DAY).toBeCloseTo(3.615, 2);
    expect(frostGuard({ ...of, strength28: 3e6 }).cured.age).toBeCloseTo(cured.age!, 3);
  });

  test('strength reached at the moment of the first freeze counts as in time', () => {
    const history = temperatureHistory({
      times: [0, 16 * 3600, 2 * DAY],
      temperatures: [323.15, FREEZES_AT, 263.15],
    });
    const of = { law, strength28: 30e6, coefficients: [0.2] } as const;
    const { firstFreeze, oneFreeze } = frostGuard({ ...of, history });
    expect([firstFreeze, oneFreeze.time]).toEqual([16 * 3600, 16 * 3600]);
    expect(oneFreeze.frozenFirst).toBe(false);
    const sooner = { ...history, times: [0, 16 * 3600 - 1, 2 * DAY] };
    expect(frostGuard({ ...of, history: sooner }).oneFreeze.frozenFirst).toBe(true);
  });

  test('tells whether the strength is reached before the first freeze', () => {
    const strong = frostGuard({ history: cooling, law, strength28: 30e6, coefficients: [0.2] });
    expect(strong.oneFreeze.frozenFirst).toBe(false);
    // Warmed by nothing, 20 °C and falling: an age of 16 h, and no sooner, takes a little longer by the clock.
    expect(strong.oneFreeze.age).toBe(16 * 3600);
    expect(strong.oneFreeze.time).toBeGreaterThan(16 * 3600);
    expect(strong.oneFreeze.time).toBeLessThan(DAY);
    expect(strong.repeated.frozenFirst).toBe(true);
    const weak = frostGuard({ history: cooling, law, strength28: 3.6e6, coefficients: [0.25] });
    expect(weak.oneFreeze.frozenFirst).toBe(true);
    expect(weak.oneFreeze.age).toBeGreaterThan(20 * DAY);
  });

  test('warmth brings no strength before 16 hours by the clock, and frost after `until` is not counted', () => {
    const hot = steadyHistory({ temperature: 308.15, duration: 7 * DAY });
    const { oneFreeze } = frostGuard({ history: hot, law, strength28: 30e6, coefficients: [0.2] });
    expect(oneFreeze.time).toBe(16 * 3600);
    const frozenFor = (until?: number) =>
      frostGuard({
        history: cooling,
        law,
        strength28: 30e6,
        coefficients: [0.2],
        ...(until && { until }),
      }).frozenFor;
    expect(frozenFor(5 * DAY)).toBeCloseTo(2 * DAY, 0);
    expect(frozenFor()).toBeCloseTo(27 * DAY, 0);
  });

  test('light foamed concrete may never reach the strength', () => {
    const guard = frostGuard({ history: cooling, law, strength28: 1e6, coefficients: [0.25] });
    expect(guard.oneFreeze.age).toBeUndefined();
    expect(guard.oneFreeze.time).toBeUndefined();
    expect(guard.repeated.age).toBeUndefined();
  });

  test('without frost there is no first freeze', () => {
    const warm = steadyHistory({ temperature: 288.15, duration: 7 * DAY });
    const guard = frostGuard({ history: warm, law, strength28: 1e6, coefficients: [0.25] });
    expect(guard.firstFreeze).toBeUndefined();
    expect(guard.oneFreeze.frozenFirst).toBe(false);
  });
});

describe('curing plan', () => {
  const plan = (celsius: number, days = 40) =>
    curingPlan({
      history: steadyHistory({ temperature: celsius + 273.15, duration: days * DAY }),
      gain: 'slow',
      law: { law: 'arrhenius', activationEnergy: 33_500 },
      coefficient: 0.25,
    });
  const ends = (entries: ReturnType<typeof plan>, rule: string) =>
    entries.find((entry) => entry.rule === rule)!;

  test('a cure ends when the time above the level it names has added up, and not before', () => {
    const kelvin = fc.double({ min: 273.15, max: 293.15, noNaN: true });
    fc.assert(
      fc.property(fc.array(kelvin, { minLength: 12, maxLength: 40 }), (temperatures) => {
        const history = temperatureHistory({
          times: temperatures.map((_, i) => (i * DAY) / 2),
          temperatures,
        });
        const last = ((temperatures.length - 1) * DAY) / 2;
        const level = 283.15;
        const entry = ends(
          curingPlan({ history, gain: 'slow', law, coefficient: 0.25 }),
          'aci-high-early',
        );
        // A millionth of a degree below still counts: on a curve nearly level there, by seconds.
        const under = level - 1e-6;
        const below = timeAtOrBelow(history, under, entry.ends ?? Number.POSITIVE_INFINITY);
        // After the last reading its temperature holds: warm for good, or never again.
        if (entry.ends === undefined) {
          expect(temperatures.at(-1)).toBeLessThanOrEqual(under);
          expect(last - below).toBeLessThan(3 * DAY);
        } else expect(entry.ends - below).toBeCloseTo(3 * DAY, 3);
      }),
    );
  });

  test('time exactly at a rule’s temperature counts, time just below it does not', () => {
    expect(ends(plan(10), 'aci-normal').ends).toBe(7 * DAY);
    expect(ends(plan(10), 'aci-high-early').ends).toBe(3 * DAY);
    expect(ends(plan(9.99), 'aci-normal')).toMatchObject({ notes: [{ code: 'too-cold' }] });
    // The 5–10 °C row, for a slow gain.
    expect(ends(plan(5), 'din-1045-3').ends).toBe(10 * DAY);
    expect(ends(plan(4.99), 'din-1045-3')).toMatchObject({ notes: [{ code: 'too-cold' }] });
  });

  test('at a steady 20 °C each rule gives its own days', () => {
    const at20 = plan(20);
    expect(ends(at20, 'din-1045-3').ends).toBe(4 * DAY);
    expect(ends(at20, 'nhbc-plain').ends).toBe(4 * DAY);
    expect(ends(at20, 'nhbc-reinforced').ends).toBe(7 * DAY);
    expect(ends(at20, 'aci-normal').ends).toBe(7 * DAY);
    expect(ends(at20, 'aci-high-early').ends).toBe(3 * DAY);
    expect(ends(at20, 'en-class-1').ends).toBe(DAY / 2);
    expect(ends(at20, 'en-class-3').ends! / DAY).toBeCloseTo(28 / (1 + Math.log(2) / 0.25) ** 2, 6);
  });

  test('a steady cold below every limit never counts', () => {
    const cold = plan(3);
    expect(ends(cold, 'din-1045-3').ends).toBeUndefined();
    expect(ends(cold, 'din-1045-3').notes).toEqual([{ code: 'too-cold', of: 'history' }]);
    expect(ends(cold, 'aci-normal').ends).toBeUndefined();
    expect(ends(cold, 'nhbc-plain').ends).toBe(4 * DAY);
  });

  test('class 1 has its 12 hours at 5 °C or above all along, and if it sets within 5 hours', () => {
    const told = [{ code: 'if-it-sets-in-time' }];
    expect(ends(plan(5), 'en-class-1')).toMatchObject({ ends: DAY / 2, notes: told });
    for (const celsius of [4.99, 1])
      expect(ends(plan(celsius), 'en-class-1')).toMatchObject({
        ends: undefined,
        notes: [{ code: 'too-cold', of: 'history' }],
      });
    const coldAfter = (hours: number) =>
      ends(
        curingPlan({
          history: temperatureHistory({
            times: [0, hours * 3600, hours * 3600 + 60, DAY],
            temperatures: [293.15, 293.15, 274.15, 293.15],
          }),
          gain: 'slow',
          law,
          coefficient: 0.25,
        }),
        'en-class-1',
      ).ends;
    expect(coldAfter(11)).toBeUndefined();
    // Half a minute of it is cold.
    const dip = temperatureHistory({
      times: [0, 3600, 3615, 3630, DAY],
      temperatures: [278.15, 278.15, 277.15, 278.15, 278.15],
    });
    const dipped = curingPlan({ history: dip, gain: 'slow', law, coefficient: 0.25 });
    expect(ends(dipped, 'en-class-1').ends).toBeUndefined();
    expect(coldAfter(12)).toBe(DAY / 2);
    const history = steadyHistory({ temperature: 293.15, duration: 40 * DAY });
    const setAt = (hours: number) =>
      ends(
        curingPlan({ history, gain: 'slow', law, coefficient: 0.25, set: hours * 3600 }),
        'en-class-1',
      );
    expect(setAt(5)).toMatchObject({ ends: DAY / 2, notes: told });
    expect(setAt(5.01)).toEqual({
      rule: 'en-class-1',
      ends: undefined,
      notes: [{ code: 'sets-too-late' }],
    });
  });

  test('time below 5 °C is added to DIN’s', () => {
    const history = temperatureHistory({
      times: [0, DAY - 1, DAY, 2 * DAY - 1, 2 * DAY, 40 * DAY],
      temperatures: [293.15, 293.15, 276.15, 276.15, 293.15, 293.15],
    });
    const [din] = curingPlan({ history, gain: 'slow', law, coefficient: 0.25 });
    // Mean over four days is still above 15 °C, so four days, and the cold day on top.
    expect(din!.ends! / DAY).toBeCloseTo(5, 3);
    expect(din!.notes).toContainEqual({ code: 'extended-for-cold', of: 'history' });
  });

  test('the cold time that is added counts in the mean that finds DIN’s band', () => {
    const history = temperatureHistory({
      times: [0, DAY, DAY + 1, 2 * DAY, 2 * DAY + 1, 40 * DAY],
      temperatures: [277.15, 277.15, 301.15, 301.15, 278.65, 278.65],
    });
    const [din] = curingPlan({ history, gain: 'medium', law, coefficient: 0.25 });
    expect(din!.mean! - 273.15).toBeCloseTo(8.5, 2);
    // Two days and the cold one have a mean of 12.5 °C, which asks for four; those one of 9.7 °C, which asks for six.
    expect(din!.ends! / DAY).toBeCloseTo(7, 3);
  });

  test('points added on the straight lines of a history change no end', () => {
    const degrees = [15, 6, 13, 2.5, 15, 1, 15, 1, 22, 1, 23, 5.5, 22, 1, 15, 1, 21, 1, 15, 1, 16];
    const history = temperatureHistory({
      times: degrees.map((_, i) => (i * DAY) / 2),
      temperatures: degrees.map((degree) => degree + 273.15),
    });
    const finer = Array.from({ length: 6 * (degrees.length - 1) + 1 }, (_, i) => (i * DAY) / 12);
    const [few, many] = [
      history,
      temperatureHistory({
        times: finer,
        temperatures: finer.map((time) => temperatureAt(history, time)),
      }),
    ].map((read) => curingPlan({ history: read, gain: 'slow', law, coefficient: 0.25 }));
    few!.forEach(({ rule, ends, mean }, i) => {
      expect(ends, rule).toBeCloseTo(many![i]!.ends!, -2);
      if (mean !== undefined) expect(mean).toBeCloseTo(many![i]!.mean!, 2);
    });
  });

  test('the mean is least where the temperature rises through it, between readings too', () => {
    // 10 s at 20 down to 0, 10 s up to 40: A = 100 + 2 τ², and (100 + 2 τ²)/(10 + τ) is least at 4 τ.
    const history = temperatureHistory({ times: [0, 10, 20], temperatures: [293, 273, 313] });
    const turn = Math.sqrt(150) - 10;
    expect(coldestMean(history, 10, 20)).toBeCloseTo(273 + 4 * turn, 9);
    // Not before the moment from which it counts, nor after the last.
    expect(coldestMean(history, 15, 20)).toBeCloseTo(273 + (100 + 2 * 25) / 15, 9);
    expect(coldestMean(history, 10, 11)).toBeCloseTo(273 + 102 / 11, 9);
  });

  test('no colder day shortens DIN’s cure, and its band is that of the mean it names', () => {
    const kelvin = fc.double({ min: 270.15, max: 298.15, noNaN: true });
    const cure = (temperatures: readonly number[], gain: GainClass) => {
      const times = temperatures.map((_, i) => i * DAY);
      const history = temperatureHistory({ times, temperatures });
      return curingPlan({ history, gain, law, coefficient: 0.25 })[0]!;
    };
    fc.assert(
      fc.property(
        fc.array(kelvin, { minLength: 8, maxLength: 30 }),
        fc.constantFrom<GainClass>('rapid', 'medium', 'slow', 'very-slow'),
        fc.nat(),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (temperatures, gain, at, drop) => {
          const { ends, mean } = cure(temperatures, gain);
          if (ends === undefined) return;
          expect(dinCuring({ surfaceTemperature: mean!, gain })).toBeLessThanOrEqual(ends);
          const day = at % temperatures.length;
          const colder = temperatures.with(day, temperatures[day]! - drop);
          expect(cure(colder, gain).ends ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(
            ends - 1,
          );
        },
      ),
      { numRuns: 1000 },
    );
  });

  test('a surface that stays at the limit of a band is in it, however often it was read', () => {
    for (const [celsius, gain, days] of [
      [25, 'very-slow', 3],
      [15, 'slow', 4],
      [10, 'medium', 4],
    ] as const)
      for (const hours of [1, 5, 7, 24, 48]) {
        const times = Array.from({ length: 60 }, (_, i) => i * hours * 3600);
        const history = temperatureHistory({
          times,
          temperatures: times.map(() => 273.15 + celsius),
        });
        const [din] = curingPlan({ history, gain, law, coefficient: 0.25 });
        expect(din!.ends! / DAY, `${celsius} °C each ${hours} h`).toBe(days);
      }
    expect(dinCuring({ surfaceTemperature: 298.149, gain: 'very-slow' })).toBe(5 * DAY);
  });

  test('a cold first hour does not set the band of days', () => {
    const history = temperatureHistory({
      times: [0, 3600, 7200, 40 * DAY],
      temperatures: [280.15, 280.15, 293.15, 293.15],
    });
    const [din] = curingPlan({ history, gain: 'slow', law, coefficient: 0.25 });
    expect(din!.ends).toBe(4 * DAY);
  });

  test('cold that begins just before the end of the cure delays it by its whole length', () => {
    const cold = 4 * DAY - 0.001;
    const history = temperatureHistory({
      times: [0, cold, cold + 0.0001, cold + DAY, cold + DAY + 0.0001, 40 * DAY],
      temperatures: [293.15, 293.15, 276.15, 276.15, 293.15, 293.15],
    });
    const [din] = curingPlan({ history, gain: 'slow', law, coefficient: 0.25 });
    expect(din!.ends! / DAY).toBeCloseTo(5, 6);
  });

  test('notes a history that ends before the cure', () => {
    const short = plan(20, 2);
    expect(ends(short, 'din-1045-3').notes).toEqual([{ code: 'held-after-end', of: 'history' }]);
    expect(ends(short, 'en-class-4').ends).toBeUndefined();
  });

  test('DIN’s cure never shortens as the surface cools', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 250, max: 320, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.constantFrom('rapid', 'medium', 'slow', 'very-slow'),
        (surfaceTemperature, colder, gain) => {
          const warm = dinCuring({ surfaceTemperature, gain });
          const cold = dinCuring({ surfaceTemperature: surfaceTemperature - colder, gain });
          expect(cold).toBeGreaterThanOrEqual(warm);
        },
      ),
    );
  });

  test('the mean of a straight line is its middle, and the last reading holds', () => {
    const history = temperatureHistory({ times: [0, 10], temperatures: [280, 290] });
    expect(coldestMean(history, 10, 10)).toBe(285);
    expect(coldestMean(history, 20, 20)).toBe(287.5);
  });

  test('the mean until a moment leaves out what came before casting and what comes after', () => {
    const before = temperatureHistory({ times: [-20, -10, 10], temperatures: [300, 280, 290] });
    // 285 at casting, 290 at the end.
    expect(coldestMean(before, 10, 10)).toBe(287.5);
    const after = temperatureHistory({
      times: [0, 10, 20, 30],
      temperatures: [280, 290, 250, 330],
    });
    expect(coldestMean(after, 10, 10)).toBe(285);
    expect(coldestMean(after, 5, 5)).toBe(282.5);
    // From 285 at 10 over the cold of the reading at 20, until it has warmed to the mean: 5550 + 250 τ + 4 τ² over
    // 20 + τ is 250 + 8 τ where (20 + τ)² = 537.5.
    expect(coldestMean(after, 10, 30)).toBeCloseTo(250 + 8 * (Math.sqrt(537.5) - 20), 9);
  });
});

describe('drying', () => {
  test('the rule bends at 50 mm', () => {
    expect(screedDryingTime({ thickness: 0.05 }) / DAY).toBeCloseTo(50, 9);
    expect(screedDryingTime({ thickness: 0.051 }) / DAY).toBeCloseTo(52, 9);
  });

  test('at 75 % it rests at five sixths of the way from its moisture at 50 % to that at 80 %', () => {
    // 0.026 and 0.045 kg/kg: ISO 10456 for aerated concrete, from memory.
    expect(DRY_ENOUGH_MOISTURE).toBeCloseTo(0.026 + (5 / 6) * 0.019, 12);
  });

  test('late, what is left is the first term: 8/π² · exp(−π² Fo/4)', () => {
    const of = { thickness: 0.1, faces: 1, diffusivity: 1e-9 } as const;
    // Fo = 1e-9 · 1e7/0.01 = 1; the second term is below 1e-10.
    const left = moistureLeft({ ...of, time: 1e7 });
    expect(left).toBeCloseTo((8 / Math.PI ** 2) * Math.exp(-(Math.PI ** 2) / 4), 9);
    // Early: 1 − 2 √(Fo/π), here with Fo = 0.01.
    expect(moistureLeft({ ...of, time: 1e5 })).toBeCloseTo(1 - 2 * Math.sqrt(0.01 / Math.PI), 9);
  });

  test('the early law and the series meet', () => {
    const of = { thickness: 0.1, faces: 1, diffusivity: 1 } as const;
    const at = (fourier: number) => moistureLeft({ ...of, time: fourier * 0.01 });
    expect(at(0.05 - 1e-9)).toBeCloseTo(at(0.05 + 1e-9), 7);
    expect(at(0)).toBe(1);
    // After 0.05 the series itself: the early law is off by 1e-6 at 0.1, and by a thousandth at 0.3.
    for (const fourier of [0.05, 0.07, 0.1, 0.15, 0.3]) {
      const terms = Array.from({ length: 200 }, (_, n) => ((2 * n + 1) * Math.PI) / 2);
      const left = terms.reduce((sum, k) => sum + (2 / k ** 2) * Math.exp(-(k ** 2) * fourier), 0);
      expect(at(fourier)).toBeCloseTo(left, 10);
    }
  });

  test('the time to a moisture leaves that moisture', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 0.3, noNaN: true }),
        fc.constantFrom(1 as const, 2 as const),
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        (thickness, faces, share) => {
          const resting = 0.03;
          const { time, soonest, latest } = diffusionDryingTime({
            thickness,
            faces,
            resting,
            initial: 0.4,
            target: resting + share * 0.37,
          });
          expect(moistureLeft({ thickness, faces, time })).toBeCloseTo(share, 7);
          expect(soonest).toBeLessThan(time);
          expect(latest).toBeGreaterThan(time);
        },
      ),
    );
  });

  test('two faces dry four times as fast as one', () => {
    const of = { thickness: 0.1, initial: 0.4, target: 0.1, resting: 0.03 };
    const one = diffusionDryingTime({ ...of, faces: 1 }).time;
    expect(one / diffusionDryingTime({ ...of, faces: 2 }).time).toBeCloseTo(4, 9);
    expect(() => diffusionDryingTime({ ...of, faces: 1, target: 0.03 })).toThrow(DomainError);
  });
});
