import { describe, expect, test } from 'vitest';
import { arrheniusFactor } from '../../../../src/core/curing/age-factor.ts';
import { conduct } from '../../../../src/core/curing/heat/conduction.ts';
import { type Face, steadyFace } from '../../../../src/core/curing/heat/face.ts';
import { degreeOfHydration, ORDINARY_CEMENT } from '../../../../src/core/curing/heat/hydration.ts';
import {
  differenceOf,
  faceHistory,
  heatInside,
  peakOf,
  temperatureInside,
} from '../../../../src/core/curing/heat/inside.ts';
import { mostFreshConductivity } from '../../../../src/core/curing/heat/thermal-properties.ts';
import { temperatureHistory } from '../../../../src/core/curing/history.ts';
import { air, DAY, slab } from './slab.ts';

describe('hydration in the slab', () => {
  test('held at one temperature it follows the isothermal curve', () => {
    const temperature = 303.15;
    const held = steadyFace({ temperature, transfer: Number.POSITIVE_INFINITY });
    const run = conduct({
      ...slab,
      // Thin and quick to conduct: no place can warm.
      thickness: 0.001,
      conductivity: 100,
      near: held,
      far: held,
      initialTemperature: temperature,
      duration: DAY,
      cells: 4,
    });
    const age = DAY * arrheniusFactor({ ...ORDINARY_CEMENT, temperature });
    expect(run.degrees[1]).toBeCloseTo(degreeOfHydration({ ...ORDINARY_CEMENT, age }), 6);
  });

  test('equal faces give a symmetric temperature profile', () => {
    const { temperatures, depths } = conduct(slab);
    for (const along of [10, 100, 190].map((row) => temperatures[row]!)) {
      expect(along).toHaveLength(depths.length);
      along.forEach((t, i) => {
        expect(t).toBeCloseTo(along.at(-1 - i)!, 8);
      });
    }
  });

  test('a blanket until the second day keeps the face warmer, then it falls', () => {
    const wrapped = {
      ambient: air.ambient,
      coverings: [
        { from: 0, transfer: 1 },
        { from: DAY, transfer: 8 },
      ],
    };
    const bare = conduct(slab);
    const covered = conduct({ ...slab, near: wrapped, far: wrapped });
    const at = (run: typeof bare, time: number) => run.temperatures[Math.round(time / 900)]![0]!;
    expect(at(covered, 20 * 3600)).toBeGreaterThan(at(bare, 20 * 3600) + 5);
    expect(at(covered, DAY + 3600)).toBeLessThan(at(covered, DAY) - 5);
  });

  test('the peak and the largest difference are those found by searching every moment and depth', () => {
    const run = conduct(slab);
    const peak = peakOf(run);
    expect(peak.temperature).toBe(Math.max(...run.temperatures.flat()));
    expect(Math.abs(peak.depth - 0.15)).toBeLessThan(0.006);
    const { value, time } = differenceOf(run);
    const row = run.times.indexOf(time);
    expect(temperatureInside(run, peak.depth, row) - temperatureInside(run, 0, row)).toBeCloseTo(
      value,
      6,
    );
  });
});

test.each([0, 1, 2] as const)(
  'the default cells and steps are fine enough: a part curved in %s directions',
  (round) => {
    const bare = steadyFace({ temperature: 288.15, transfer: 7.7 });
    for (const thickness of [0.03, 0.1, 0.3, 1])
      for (const conductivity of [0.12, 0.8]) {
        const peak = (mesh: { cells?: number; step?: number }) =>
          heatInside({
            thickness,
            round,
            conductivity,
            mix: { cement: 400, water: 200 },
            hydration: ORDINARY_CEMENT,
            initialTemperature: 293.15,
            near: bare,
            far: bare,
            duration: 5 * DAY,
            ...mesh,
          }).peak.temperature;
        expect(Math.abs(peak({}) - peak({ cells: 240, step: 75 }))).toBeLessThan(0.1);
      }
  },
);

describe('a run written down by hand', () => {
  const run = (...temperatures: number[]) => ({
    ...conduct(slab),
    depths: Float64Array.of(0, 0.05, 0.15, 0.2),
    times: Float64Array.of(0, 60, 120),
    temperatures: [0, 4, 8].map((from) => temperatures.slice(from, from + 4)),
  });

  test('the history of a face is its own temperature at each time, not one between two cells', () => {
    const of = run(280, 250, 250, 282, 279, 250, 250, 281, 283, 250, 250, 284);
    const times = [0, 60, 120];
    expect(faceHistory(of, 'near')).toEqual({ times, temperatures: [280, 279, 283], gaps: [] });
    expect(faceHistory(of, 'far')).toEqual({ times, temperatures: [282, 281, 284], gaps: [] });
  });

  test('the difference is the most that the hottest place inside is ahead of the cooler face', () => {
    // 8 K over the near face at first, 12 K over the far one after a minute, then 10 K.
    const found = differenceOf(run(290, 296, 298, 291, 295, 305, 300, 293, 290, 300, 299, 291));
    expect(found).toEqual({ value: 12, time: 60 });
    // A face hotter than all that lies between is no heat from inside.
    for (const row of [
      [310, 295, 296, 295],
      [295, 296, 295, 310],
    ])
      expect(differenceOf(run(...row, ...row, ...row))).toEqual({ value: 1, time: 0 });
    expect(differenceOf(run(290, 290, 290, 290, 290, 290, 290, 290, 290, 290, 290, 290))).toEqual({
      value: 0,
      time: 0,
    });
  });
});

describe('heat inside a part', () => {
  const part = {
    thickness: 0.3,
    mix: { cement: 400, water: 200 },
    hydration: ORDINARY_CEMENT,
    initialTemperature: 293.15,
    near: air,
    far: air,
    duration: 3 * DAY,
  };

  test('a thicker part gets hotter and later', () => {
    const [thin, thick] = [0.06, 0.4].map((thickness) => heatInside({ ...part, thickness }));
    expect(thick!.peak.temperature).toBeGreaterThan(thin!.peak.temperature + 10);
    expect(thick!.peak.time).toBeGreaterThan(thin!.peak.time);
    expect(thin!.run.energy.imbalance).toBeLessThan(1e-6);
  });

  test('notes temperatures beyond the age law, and boiling', () => {
    const codes = (more: object) =>
      heatInside({ ...part, conductivity: 0.25, ...more }).notes.filter(
        ({ code, of }) => code === 'boils' || of === 'temperature',
      );
    const stretched = { code: 'outside-range', of: 'temperature' };
    const boils = { code: 'boils', of: 'peak' };
    const told = new Set<string>();
    // By centimetres, from a part that stays below 80 °C to one that boils.
    for (let thickness = 0.1; thickness < 0.7; thickness += 0.01) {
      const celsius =
        heatInside({ ...part, conductivity: 0.25, thickness }).peak.temperature - 273.15;
      const expected = celsius > 100 ? [stretched, boils] : celsius > 80 ? [stretched] : [];
      expect(codes({ thickness }), `${celsius} °C`).toEqual(expected);
      told.add(String(expected.length));
    }
    expect(told).toEqual(new Set(['0', '1', '2']));
    // Cast warm, and left in hard frost: its cells fall below 0 °C.
    const frost = steadyFace({ temperature: 263.15, transfer: 25 });
    expect(codes({ thickness: 0.05, near: frost, far: frost })).toEqual([stretched]);
    // A face below 0 °C alone is none of the cells'.
    const touched = steadyFace({ temperature: 273, transfer: Number.POSITIVE_INFINITY });
    expect(codes({ thickness: 0.2, near: touched, duration: 3600 })).toEqual([]);
  });

  /**
   * The middle of a round part by an explicit scheme written apart: points on rays from the middle, where the
   * Laplacian is (n + 1) times the second derivative.
   */
  function hottestByPoints(n: 0 | 1 | 2, diameter: number, conductivity: number, points: number) {
    const [capacity, h] = [400 * 750 + 200 * 4187, air.coverings[0]!.transfer];
    const dr = diameter / 2 / points;
    const spread = conductivity / capacity / dr ** 2;
    const dt = 0.2 / spread / (n + 1);
    const t = new Float64Array(points + 1).fill(293.15);
    const age = new Float64Array(points + 1);
    let hottest = 0;
    for (let time = 0; time < 1.5 * DAY; time += dt) {
      const old = t.slice();
      for (let i = 0; i <= points; i++) {
        const before = degreeOfHydration({ ...ORDINARY_CEMENT, age: Math.max(age[i]!, 1) });
        age[i]! += dt * arrheniusFactor({ ...ORDINARY_CEMENT, temperature: old[i]! });
        const gain = degreeOfHydration({ ...ORDINARY_CEMENT, age: Math.max(age[i]!, 1) }) - before;
        // A point beyond the face stands in for what the air takes.
        const beyond = old[points - 1]! - ((2 * dr * h) / conductivity) * (old[points]! - 293.15);
        const [within, without] = [old[Math.max(i - 1, 0)]!, i < points ? old[i + 1]! : beyond];
        const laplacian =
          i === 0
            ? 2 * (n + 1) * (without - old[0]!)
            : within - 2 * old[i]! + without + (n / (2 * i)) * (without - within);
        t[i] = old[i]! + dt * spread * laplacian + (ORDINARY_CEMENT.heat * 400 * gain) / capacity;
      }
      hottest = Math.max(hottest, t[0]!);
    }
    return hottest;
  }

  test('a cylinder and a sphere are cooler than a slab as thick, as an independent scheme finds', () => {
    const hottest = ([0, 1, 2] as const).map((round) => {
      const found = heatInside({ ...part, thickness: 0.3, round, conductivity: 0.5 });
      expect(found.run.energy.imbalance).toBeLessThan(1e-6);
      const apart = hottestByPoints(round, 0.3, 0.5, 16);
      expect(Math.abs(found.peak.temperature - apart), `${round} ways`).toBeLessThan(0.2);
      return found.peak.temperature;
    });
    expect(hottest[0]).toBeGreaterThan(hottest[1]! + 15);
    expect(hottest[1]).toBeGreaterThan(hottest[2]! + 10);
  });

  describe('parts without heat of hydration', () => {
    const inert = { ...part, mix: { cement: 0, water: 400 }, conductivity: 0.4, duration: 3600 };
    const codes = (initialTemperature: number, face: Face, more: object = {}) =>
      heatInside({ ...inert, initialTemperature, near: face, far: face, ...more }).notes.map(
        ({ code }) => code,
      );
    const held = (temperature: number) =>
      steadyFace({ temperature, transfer: Number.POSITIVE_INFINITY });

    test('80 °C and the boiling point themselves get no note', () => {
      expect(codes(353.15, held(353.15))).toEqual([]);
      expect(codes(373.15, held(373.15))).toEqual(['outside-range']);
      expect(codes(373.16, held(373.16))).toEqual(['outside-range', 'boils']);
    });

    test('the difference is taken to the cooler of the two faces', () => {
      for (const cold of ['near', 'far']) {
        const faces = { near: held(293.5), far: held(293.5), [cold]: held(273.25) };
        const { difference } = heatInside({ ...inert, initialTemperature: 293.5, ...faces });
        expect(difference.value).toBeCloseTo(20.25, 6);
      }
    });

    test('frost or heat that is over by the end is noted all the same', () => {
      const weather = (middle: number): Face => ({
        ambient: temperatureHistory({
          times: [0, DAY, 2 * DAY],
          temperatures: [293, middle, 293],
        }),
        coverings: [{ from: 0, transfer: 25 }],
      });
      const over = { thickness: 0.05, duration: 3 * DAY };
      expect(codes(293, weather(260), over)).toContain('outside-range');
      expect(codes(293, weather(365), over)).toContain('outside-range');
      expect(codes(293, weather(280), over)).toEqual([]);
    });
  });

  test('a chosen conductivity replaces the upper bound of the mix', () => {
    const thin = { ...part, thickness: 0.05 };
    expect(heatInside({ ...thin, conductivity: 0.25 }).conductivity).toBe(0.25);
    expect(heatInside(thin).conductivity).toBe(mostFreshConductivity(part.mix));
  });
});
