import { describe, expect, test } from 'vitest';
import { diffusionDryingTime, moistureLeft } from '../../../src/core/curing/drying.ts';
import { timeToReachAge } from '../../../src/core/curing/equivalent-age.ts';
import { waterLost } from '../../../src/core/curing/evaporation.ts';
import { evaporationMeasures } from '../../../src/core/curing/evaporation-measures.ts';
import { frostGuard } from '../../../src/core/curing/frost.ts';
import {
  dailyHistory,
  steadyHistory,
  temperatureHistory,
} from '../../../src/core/curing/history.ts';
import {
  iceFor,
  mixTemperature,
  waterTemperatureFor,
} from '../../../src/core/curing/mix-temperature.ts';
import { plowmanShare } from '../../../src/core/curing/nurse-saul.ts';
import { quicken } from '../../../src/core/curing/quicken.ts';
import { setByTemperature, setRace } from '../../../src/core/curing/set.ts';
import { sabinSet } from '../../../src/core/curing/set-by-water.ts';
import { fitStrength } from '../../../src/core/curing/strength-fit.ts';
import {
  ageForShare,
  grownBand,
  growthCoefficient,
  modulusShare,
  strengthShare,
} from '../../../src/core/curing/strength-growth.ts';
import { expectLimits } from '../refuses.ts';

const [HOUR, DAY, ICE] = [3600, 86_400, 273.15];
const law = { law: 'arrhenius', activationEnergy: 42_500 } as const;
const history = steadyHistory({ temperature: 293.15, duration: DAY });

describe('strength', () => {
  test('refuses shares, coefficients and strengths out of range', () => {
    expectLimits(
      ageForShare,
      { share: 0.5, coefficient: 0.25 },
      {
        share: { refuses: [0, -0.1] },
        coefficient: { takes: [0.01, 2], refuses: [0, -0.1, 2.01] },
      },
    );
    expectLimits(
      ({ meanStrength }) => growthCoefficient({ cement: '32.5N', meanStrength }),
      { meanStrength: 30e6 },
      { meanStrength: { refuses: [0, -1] } },
    );
    expectLimits(
      (known) => grownBand({ known, least: { age: DAY }, most: { age: DAY }, coefficients: [0.2] }),
      { low: 1e6, high: 2e6 },
      { low: { takes: [0, 2e6], refuses: [-1] }, high: { takes: [1e6], refuses: [0.9e6] } },
    );
    expectLimits(
      ({ age, strength }) => fitStrength({ results: [{ age, strength }], coefficient: 0.2 }),
      { age: DAY, strength: 1e6 },
      { age: { takes: [HOUR], refuses: [HOUR - 1] }, strength: { refuses: [0, -1] } },
    );
  });

  test('is half at 28 days over (1 + ln 2/s)², and the modulus grows as its root', () => {
    expect(ageForShare({ share: 0.5, coefficient: Math.LN2 })).toBeCloseTo(7 * DAY, 6);
    expect(strengthShare({ age: 7 * DAY, coefficient: Math.LN2 })).toBeCloseTo(0.5, 12);
    expect(modulusShare({ age: 7 * DAY, coefficient: Math.LN2 })).toBeCloseTo(Math.SQRT1_2, 12);
  });

  test('by Plowman is his constant at 1000 K·h, and one slope more at ten times that', () => {
    const at = (hours: number) => plowmanShare({ maturity: hours * HOUR, a: 10, b: 68 });
    expect(at(1000)).toBeCloseTo(0.1, 12);
    expect(at(10_000)).toBeCloseTo(0.78, 12);
    expect(() => at(0)).toThrow('maturity');
  });

  test('refuses a strength and a growth coefficient of 0 or less for the frost guard', () => {
    expectLimits(
      ({ strength28, coefficient }) =>
        frostGuard({ history, law, strength28, coefficients: [coefficient] }),
      { strength28: 5e6, coefficient: 0.25 },
      { strength28: { refuses: [0, -1] }, coefficient: { refuses: [0, -1] } },
    );
  });
});

describe('set', () => {
  const set = { initial: 3 * HOUR, final: 5 * HOUR };

  test('refuses an initial set at casting and a final set before the initial', () => {
    expectLimits(
      (reference) =>
        setByTemperature({ reference, referenceTemperature: 293, temperature: 283, law }),
      set,
      {
        initial: { takes: [5 * HOUR], refuses: [0, -1] },
        final: { takes: [3 * HOUR], refuses: [3 * HOUR - 1] },
      },
    );
    expect(() => sabinSet({ cement: 'A', waterCement: 0 })).toThrow('waterCement');
  });

  test('refuses a foam life and a time of reading of 0 or less', () => {
    expectLimits(
      ({ depth, after, ...race }) => setRace({ ...race, settling: { depth, after } }),
      { initialSet: 7200, foamTime: 3600, depth: 0.002, after: 1800 },
      {
        initialSet: { refuses: [0, -1] },
        foamTime: { refuses: [0, -1] },
        depth: { takes: [0], refuses: [-0.001] },
        after: { refuses: [0, -1] },
      },
    );
  });

  const plain = {
    set,
    temperature: 283.15,
    law,
    mixWarmer: 8,
    roomWarmer: 12,
    rapidFactor: 0.7,
    chlorideDose: 0.01,
    steel: false,
  };

  test('refuses to quicken by colder water, a colder room or a slower cement', () => {
    expectLimits(
      (more: { mixWarmer: number; roomWarmer: number; rapidFactor: number }) =>
        quicken({ ...plain, ...more }),
      { mixWarmer: 8, roomWarmer: 12, rapidFactor: 0.7 },
      {
        mixWarmer: { takes: [0], refuses: [-1], as: 'warmer' },
        roomWarmer: { takes: [0], refuses: [-1], as: 'warmer' },
        rapidFactor: { takes: [1], refuses: [0, -0.1, 1.01] },
      },
    );
    expect(() => quicken({ ...plain, set: { initial: 2, final: 1 } })).toThrow('final');
  });

  test('each way to quicken gives the time worked out by hand', () => {
    const factor = (kelvin: number) =>
      Math.exp((42_500 / 8.314462618) * (1 / (283.15 + kelvin) - 1 / 283.15));
    const [water, room, rapid, , chloride] = quicken(plain);
    expect(water!.factor).toBeCloseTo(factor(8), 9);
    expect(room!.factor).toBeCloseTo(factor(12), 9);
    expect(rapid).toMatchObject({ factor: 0.7, allowed: true });
    expect(rapid!.set!.final).toBeCloseTo(3.5 * HOUR, 9);
    // 1 % counts as 11 °F, and 10 °F more take a quarter off.
    expect(chloride!.factor).toBeCloseTo(0.75 ** 1.1, 9);
  });
});

describe('drying', () => {
  test('refuses a thickness, diffusivity and moistures out of range', () => {
    expectLimits(
      (of: { thickness: number; time: number; diffusivity: number }) =>
        moistureLeft({ faces: 1, ...of }),
      { thickness: 0.05, time: DAY, diffusivity: 3e-10 },
      {
        thickness: { refuses: [0, -0.05] },
        time: { takes: [0], refuses: [-1] },
        diffusivity: { refuses: [0, -1e-10] },
      },
    );
    expectLimits(
      (of: { initial: number; target: number; resting: number }) =>
        diffusionDryingTime({ thickness: 0.05, faces: 1, ...of }),
      { initial: 0.2, target: 0.1, resting: 0.05 },
      {
        initial: { takes: [0.1], refuses: [0.09] },
        target: { takes: [0.2, 0.051], refuses: [0.05, 0.04] },
        resting: { takes: [0], refuses: [-0.01] },
      },
    );
    expectLimits(
      waterLost,
      { rate: 1e-4, area: 0.2, duration: HOUR },
      {
        rate: { takes: [0], refuses: [-1e-4] },
        area: { refuses: [0, -1] },
        duration: { takes: [0], refuses: [-1] },
      },
    );
  });

  test('refuses measures that leave a share beyond 1 or heat the surface', () => {
    const weather = {
      concreteTemperature: 298.15,
      airTemperature: 293.15,
      relativeHumidity: 0.5,
      windSpeed: 4,
      sunlit: true,
    };
    const share = { takes: [0, 1], refuses: [-0.01, 1.01] };
    expectLimits(
      (of: Record<'shadeLeaves' | 'windbreakLeaves' | 'sheetLeaves' | 'coolerBy', number>) =>
        evaporationMeasures({ ...weather, ...of }),
      { shadeLeaves: 0.4, windbreakLeaves: 0.3, sheetLeaves: 0.1, coolerBy: 4 },
      {
        shadeLeaves: share,
        windbreakLeaves: share,
        sheetLeaves: share,
        coolerBy: { takes: [0], refuses: [-1] },
      },
    );
    const [nothing, shade, windbreak, cooler, sheet] = evaporationMeasures({
      ...weather,
      shadeLeaves: 0.4,
      windbreakLeaves: 1,
      sheetLeaves: 0.1,
      coolerBy: 0,
    });
    expect(shade!.saved).toBeCloseTo(0.6, 12);
    expect(sheet!.rate).toBeCloseTo(0.1 * nothing!.rate, 15);
    expect([windbreak!.saved, cooler!.saved]).toEqual([0, 0]);
  });
});

describe('histories', () => {
  test('refuse lists of different length and times that do not rise', () => {
    expectLimits(
      (of: Record<'first' | 'second' | 'readings', number>) =>
        temperatureHistory({
          times: [of.first, of.second],
          temperatures: Array<number>(of.readings).fill(293.15),
        }),
      { first: 0, second: HOUR, readings: 2 },
      {
        first: { takes: [-HOUR, HOUR - 1], refuses: [Number.NaN, -Infinity], as: 'time' },
        second: { takes: [1], refuses: [0, -1, Number.NaN, Infinity], as: 'time' },
        readings: { refuses: [3], as: 'temperatures' },
      },
    );
    expect(() => temperatureHistory({ times: [0, 1], temperatures: [293.15] })).toThrow(
      /^temperatures/,
    );
    expect(() => temperatureHistory({ times: [], temperatures: [] })).toThrow(/^readings/);
  });

  test('have a gap where an interval is longer than allowed, not where it is as long', () => {
    const { gaps } = temperatureHistory({
      times: [0, 60, 121],
      temperatures: [293.15, 293.15, 293.15],
      longestGap: 60,
    });
    expect(gaps).toEqual([{ from: 60, to: 121 }]);
  });

  test('made from days refuse a start, hours of extremes and a step outside the day', () => {
    expectLimits(
      (of: Record<'start' | 'coldestAt' | 'warmestAt' | 'step', number>) =>
        dailyHistory({ days: [{ coldest: 278, warmest: 288 }], ...of }),
      { start: 0, coldestAt: 5 * HOUR, warmestAt: 15 * HOUR, step: 900 },
      {
        start: { takes: [0, DAY - 900], refuses: [-1, DAY] },
        coldestAt: { takes: [0], refuses: [-1] },
        warmestAt: { takes: [5 * HOUR + 1, DAY], refuses: [5 * HOUR, DAY + 1] },
        step: { takes: [1, DAY], refuses: [0, DAY + 1] },
      },
    );
    expect(() => dailyHistory({ days: [] })).toThrow('days');
  });

  test('refuse a negative age', () => {
    expectLimits(
      ({ age }: { age: number }) => timeToReachAge({ history, law, age }),
      { age: HOUR },
      { age: { takes: [0], refuses: [-1] } },
    );
  });
});

describe('the temperature of a mix', () => {
  const dry = { mass: 400, temperature: ICE + 20, specificHeat: 1000 };

  test('by hand: 400 kg of powder at 20 °C and 100 of water at 10 °C', () => {
    const water = { mass: 100, temperature: ICE + 10, specificHeat: 4000 };
    expect(mixTemperature({ ingredients: [dry, water] }).temperature).toBeCloseTo(ICE + 15, 9);
    // 12 MJ above ice; 10 kg of ice from −10 °C take 0.21 and 3.3355 of it, and are water then.
    const iced = mixTemperature({
      ingredients: [dry, water],
      ice: { mass: 10, temperature: ICE - 10 },
      waterSpecificHeat: 4000,
    });
    expect(iced.temperature).toBeCloseTo(ICE + (12e6 - 0.21e6 - 3.3355e6) / 840_000, 9);
    expect(iced).toMatchObject({ iceLeft: 0, notes: [] });
  });

  test('refuses a mix without mass', () => {
    const nothing = expect.objectContaining({
      quantity: 'capacity',
      value: 0,
      allowed: { min: 0, aboveMin: true },
      because: 'nothing-to-warm',
    });
    expect(() => mixTemperature({ ingredients: [{ ...dry, mass: 0 }] })).toThrow(nothing);
  });

  test('refuses masses, heat capacities and ice out of range', () => {
    expectLimits((ingredient) => mixTemperature({ ingredients: [dry, ingredient] }), dry, {
      mass: { takes: [0], refuses: [-1] },
      temperature: { refuses: [149, 501] },
      specificHeat: { refuses: [0, -1] },
    });
    expectLimits(
      ({ mass, temperature }) =>
        mixTemperature({ ingredients: [dry], ice: { mass, temperature } }).iceLeft,
      { mass: 1, temperature: ICE - 5 },
      { mass: { takes: [0], refuses: [-1], as: 'ice' } },
    );
    expectLimits(
      ({ temperature }: { temperature: number }) =>
        mixTemperature({ ingredients: [dry], ice: { mass: 1, temperature } }),
      { temperature: ICE - 5 },
      { temperature: { takes: [ICE], refuses: [0, ICE + 0.01], as: 'iceTemperature' } },
    );
    // Just at 0 °C it is not frozen.
    expect(mixTemperature({ ingredients: [{ ...dry, temperature: ICE }] }).temperature).toBe(ICE);
  });

  test('refuses no water, and a wanted temperature outside 0 to 100 °C', () => {
    expectLimits(
      (of: { water: number; wanted: number }) => waterTemperatureFor({ others: [dry], ...of }),
      { water: 100, wanted: ICE + 20 },
      {
        water: { refuses: [0, -1] },
        wanted: { takes: [ICE, ICE + 100], refuses: [ICE - 0.01, ICE + 100.1] },
      },
    );
    expectLimits(
      (of: { wanted: number; iceTemperature: number }) =>
        iceFor({ others: [dry], water: 100, waterTemperature: ICE + 20, ...of }),
      { wanted: ICE + 15, iceTemperature: ICE - 5 },
      {
        wanted: { takes: [ICE, ICE + 19.9], refuses: [ICE - 0.01, ICE + 20.1] },
        iceTemperature: { takes: [ICE], refuses: [0, ICE + 0.01] },
      },
    );
  });

  test('is noted as needing ice, hot water or the impossible only beyond water of 0, 60 and 100 °C', () => {
    // 400 kg and 100 of water, both of 400 kJ/K: the water is as far above the mix as the powder below.
    const code = (wanted: number, powder: number) =>
      waterTemperatureFor({
        others: [{ ...dry, temperature: ICE + powder }],
        water: 100,
        wanted: ICE + wanted,
        waterSpecificHeat: 4000,
      }).notes.map(({ code }) => code);
    expect(code(10.001, 20)).toEqual([]);
    expect(code(9.999, 20)).toEqual(['needs-ice']);
    expect(code(39.999, 20)).toEqual([]);
    expect(code(40.001, 20)).toEqual(['hot-water']);
    expect(code(59.999, 20)).toEqual(['hot-water']);
    expect(code(60.001, 20)).toEqual(['impossible']);
  });
});
