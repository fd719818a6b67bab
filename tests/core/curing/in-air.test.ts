import { describe, expect, test } from 'vitest';
import { type AgeLaw, ageFactor } from '../../../src/core/curing/age-factor.ts';
import { conduct } from '../../../src/core/curing/heat/conduction.ts';
import { steadyFace } from '../../../src/core/curing/heat/face.ts';
import { ORDINARY_CEMENT } from '../../../src/core/curing/heat/hydration.ts';
import { STILL_AIR_TRANSFER } from '../../../src/core/curing/heat/still-air.ts';
import { freshHeatCapacity } from '../../../src/core/curing/heat/thermal-properties.ts';
import { coolingTime, temperatureInAir, timeInAir } from '../../../src/core/curing/in-air.ts';
import { quicken } from '../../../src/core/curing/quicken.ts';
import { setByTemperature } from '../../../src/core/curing/set.ts';
import { expectLimits } from '../refuses.ts';

const [HOUR, ICE] = [3600, 273.15];
const law: AgeLaw = { law: 'fhp' };
const [warm, cold] = [ICE + 20.6, ICE + 9];
const bag = {
  reference: { initial: 2.5 * HOUR, final: 3.5 * HOUR },
  referenceTemperature: ICE + 20,
  law,
};
// 600 kg/m³ at a w/c of 0.4: 428.6 kg of cement and 171.4 of water, 1.0393 MJ/(m³·K).
const mix = { cement: 600 / 1.4, water: 240 / 1.4 };
const heatCapacity = freshHeatCapacity(mix);
const timeConstant = coolingTime({ thickness: 0.04, heatCapacity, transfer: STILL_AIR_TRANSFER });

describe('a thin part in other air', () => {
  test('approaches the air temperature exponentially, as half its thickness cooling through one face', () => {
    // 1.0393e6 J/(m³·K) × 0.02 m × 0.13 m²·K/W
    expect(timeConstant).toBeCloseTo(2702, 0);
    const air = { temperature: cold, timeConstant: HOUR };
    expect(temperatureInAir(warm, air, 0)).toBe(warm);
    expect(temperatureInAir(warm, air, HOUR * Math.LN2)).toBeCloseTo((warm + cold) / 2, 9);
    expect(temperatureInAir(warm, air, 1000 * HOUR)).toBe(cold);
  });

  test('sets at a time between those at the pouring and at the air temperature', () => {
    const at = (temperature: number) => setByTemperature({ ...bag, temperature });
    for (const other of [cold, ICE + 35])
      for (const tau of [1, 60, HOUR, 10 * HOUR, 1e9]) {
        const air = { temperature: other, timeConstant: tau };
        const found = setByTemperature({ ...bag, temperature: warm, air });
        for (const rule of ['arrhenius', 'third'] as const)
          for (const set of ['initial', 'final'] as const) {
            const ends = [at(warm)[rule][set], at(other)[rule][set]];
            const value = found[rule][set];
            expect(value).toBeGreaterThan(Math.min(...ends) * (1 - 1e-6));
            expect(value).toBeLessThan(Math.max(...ends) * (1 + 1e-6));
            // At once, or not at all.
            if (tau === 1) expect(value / ends[1]!).toBeCloseTo(1, 3);
            if (tau === 1e9) expect(value / ends[0]!).toBeCloseTo(1, 3);
          }
      }
  });

  test('agrees with a sum in steps of one second', () => {
    for (const [from, to, tau] of [
      [warm, cold, timeConstant],
      [ICE + 30, ICE - 10, 1200],
      [ICE + 5, ICE + 45, 5000],
    ] as const) {
      const air = { temperature: to, timeConstant: tau };
      let [age, time] = [0, 0];
      for (; age < 2.5 * HOUR; time++)
        age += ageFactor(law, temperatureInAir(from, air, time + 0.5));
      const found = timeInAir({ needed: 2.5 * HOUR, from, air, pace: (t) => ageFactor(law, t) });
      expect(Math.abs(found - time)).toBeLessThan(2);
    }
  });

  test('sets in the cold no earlier than in the full model with heat of hydration, and at most a tenth later', () => {
    for (const thickness of [0.02, 0.04, 0.06, 0.1]) {
      const face = steadyFace({ temperature: cold, transfer: STILL_AIR_TRANSFER });
      const { temperatures, times, depths } = conduct({
        thickness,
        conductivity: 0.5,
        heatCapacity,
        initialTemperature: warm,
        near: face,
        far: face,
        duration: 8 * HOUR,
        step: 60,
        cells: 20,
        hydration: { ...ORDINARY_CEMENT, cement: mix.cement },
      });
      let [age, i] = [0, 1];
      for (; age < bag.reference.initial && i < times.length; i++) {
        const inside = temperatures[i]!.slice(1, depths.length - 1);
        const mean = inside.reduce((a, b) => a + b) / inside.length;
        age += ageFactor(law, mean) * (times[i]! - times[i - 1]!);
      }
      const tau = coolingTime({ thickness, heatCapacity, transfer: STILL_AIR_TRANSFER });
      const { arrhenius } = setByTemperature({
        ...bag,
        temperature: warm,
        air: { temperature: cold, timeConstant: tau },
      });
      const share = arrhenius.initial / times[i - 1]!;
      expect(share, `${thickness}`).toBeGreaterThan(1);
      expect(share, `${thickness}`).toBeLessThan(1.1);
    }
  });

  test('is quickened more by a warmer room than by warmer water', () => {
    const air = { temperature: cold, timeConstant };
    const { arrhenius: set } = setByTemperature({ ...bag, temperature: warm, air });
    const of = { set, temperature: warm, law, mixWarmer: 5, roomWarmer: 5, chlorideDose: 0.01 };
    const ways = quicken({ ...of, rapidFactor: 0.7, steel: false, cooling: { ...bag, air } });
    const [water, room, rapid] = ways.map((way) => (way.set ? way.set.initial / HOUR : 0));
    expect(set.initial / HOUR).toBeGreaterThan(water!);
    expect(water).toBeGreaterThan(room!);
    const both = { temperature: cold + 5, timeConstant };
    const warmer = setByTemperature({ ...bag, temperature: warm + 5, air: both });
    expect(room! * HOUR).toBeCloseTo(warmer.arrhenius.initial, 6);
    // While it is still warm, more than its share is done: seven tenths of the age takes less of the time.
    expect(rapid).toBeLessThan((0.7 * set.initial) / HOUR);
  });

  test('refuses a thickness, heat capacity or air temperature out of range', () => {
    const good = { thickness: 0.04, heatCapacity, transfer: 7 };
    const above = { refuses: [0, -1], takes: [1e-6] };
    expectLimits(coolingTime, good, { thickness: above, heatCapacity: above, transfer: above });
    const one = { needed: 1, from: 293, pace: () => 1 };
    const time = (of: Partial<typeof one> & { temperature?: number; timeConstant?: number }) =>
      timeInAir({
        ...one,
        ...of,
        air: { temperature: of.temperature ?? 280, timeConstant: of.timeConstant ?? 1 },
      });
    expectLimits(
      time,
      { ...one, temperature: 280, timeConstant: 60 },
      {
        needed: { refuses: [0, -1] },
        from: { refuses: [149, 501] },
        temperature: { refuses: [149, 501], as: 'air' },
        timeConstant: { refuses: [0, -1] },
      },
    );
  });
});
