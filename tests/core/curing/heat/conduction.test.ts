import { describe, expect, test } from 'vitest';
import { conduct } from '../../../../src/core/curing/heat/conduction.ts';
import {
  outdoorTransfer,
  steadyFace,
  throughLayers,
} from '../../../../src/core/curing/heat/face.ts';
import { temperatureInside } from '../../../../src/core/curing/heat/inside.ts';
import {
  slabSeriesConvective,
  slabSeriesHeld,
} from '../../../../src/core/curing/heat/slab-series.ts';
import { STILL_AIR_TRANSFER } from '../../../../src/core/curing/heat/still-air.ts';
import { DomainError } from '../../../../src/core/domain-error.ts';
import { convectiveSlab, heldSlab } from '../../../published/curing/slabs.ts';
import { air, DAY, slab } from './slab.ts';

describe('against exact series', () => {
  test('halving cells and steps quarters the error: faces held', () => {
    const exact = 100 * slabSeriesHeld({ fourier: 0.3, fromFace: 0.4 });
    // 0.4 lies on a cell's edge in every grid, so that the interpolation's error scales too.
    const errors = [25, 50, 100, 200].map((n) =>
      Math.abs(heldSlab({ fromFace: 0.4, time: 0.3, cells: n, steps: n }) - exact),
    );
    for (const [i, error] of errors.slice(1).entries()) {
      const order = Math.log2(errors[i]! / error);
      expect(order).toBeGreaterThan(1.8);
      expect(order).toBeLessThan(2.3);
    }
    expect(errors.at(-1)).toBeLessThan(0.002);
  });

  test('halving cells and steps quarters the error: faces in air', () => {
    const exact = slabSeriesConvective({ biot: 2, fourier: 0.5, fromMiddle: 1 });
    const errors = [20, 40, 80, 160].map((n) =>
      Math.abs(convectiveSlab({ biot: 2, fourier: 0.5, cells: n, steps: n })[1] - exact),
    );
    for (const [i, error] of errors.slice(1).entries())
      expect(Math.log2(errors[i]! / error)).toBeGreaterThan(1.8);
  });

  /** Share of the step not yet felt in the middle, its face held; Fo = a·t/R². Carslaw and Jaeger, from memory. */
  const unfelt = {
    1: (fourier: number) =>
      // Zeros of J₀, and J₁ there.
      [
        [2.404825557695773, 0.5191474972894669],
        [5.520078110286311, -0.3402648065583681],
        [8.653727912911013, 0.2714522999283819],
      ].reduce(
        (sum, [zero, j1]) => sum + (2 * Math.exp(-(zero! ** 2) * fourier)) / (zero! * j1!),
        0,
      ),
    2: (fourier: number) =>
      [1, 2, 3, 4].reduce(
        (sum, n) => sum - 2 * (-1) ** n * Math.exp(-((n * Math.PI) ** 2) * fourier),
        0,
      ),
  };

  test.each([1, 2] as const)(
    'halving cells and steps quarters the error: curved in %s directions',
    (round) => {
      const held = steadyFace({ temperature: 400, transfer: Number.POSITIVE_INFINITY });
      const middle = (n: number) => {
        const unit = { conductivity: 1, heatCapacity: 1, initialTemperature: 300 };
        const ends = { near: held, far: held, duration: 0.25, step: 0.25 / n, cells: n };
        return temperatureInside(conduct({ thickness: 2, round, ...unit, ...ends }), 1, n) - 300;
      };
      const exact = 100 * (1 - unfelt[round](0.25));
      const errors = [25, 50, 100, 200].map((n) => Math.abs(middle(n) - exact));
      for (const [i, error] of errors.slice(1).entries()) {
        expect(Math.log2(errors[i]! / error)).toBeGreaterThan(1.7);
      }
      expect(errors.at(-1)).toBeLessThan(0.005);
    },
  );

  test('halving cells and steps quarters the error: with the heat of hydration', () => {
    const peakAt = (n: number) => {
      const run = conduct({ ...slab, duration: DAY, cells: 2 * n, step: DAY / (6 * n) });
      return temperatureInside(run, 0.15, 6 * n);
    };
    const [a, b, c, d] = [12, 24, 48, 96].map(peakAt) as [number, number, number, number];
    expect(Math.log2((b - a) / (c - b))).toBeGreaterThan(1.7);
    expect(Math.log2((c - b) / (d - c))).toBeGreaterThan(1.7);
  });

  test('a steady heat flow gives a straight temperature profile', () => {
    const run = conduct({
      thickness: 0.2,
      conductivity: 0.3,
      heatCapacity: 1e6,
      initialTemperature: 290,
      near: steadyFace({ temperature: 310, transfer: Number.POSITIVE_INFINITY }),
      far: steadyFace({ temperature: 280, transfer: 6 }),
      duration: 20 * DAY,
      step: 3600,
      cells: 10,
    });
    const flow = 30 / (0.2 / 0.3 + 1 / 6);
    const last = run.times.length - 1;
    expect(temperatureInside(run, 0, last)).toBe(310);
    expect(temperatureInside(run, 0.1, last)).toBeCloseTo(310 - (flow * 0.1) / 0.3, 6);
    expect(temperatureInside(run, 0.2, last)).toBeCloseTo(280 + flow / 6, 6);
  });
});

test.each([
  ['the start', [{ from: 0, transfer: 1e6 }]],
  [
    'a cover that comes off',
    [
      { from: 0, transfer: 1 },
      { from: 600, transfer: 1e6 },
    ],
  ],
])('a sudden warming causes no oscillation: no place cools after %s', (_, coverings) => {
  const { ambient } = steadyFace({ temperature: 400, transfer: 0 });
  const { temperatures } = conduct({
    thickness: 0.1,
    conductivity: 1,
    heatCapacity: 1e6,
    initialTemperature: 300,
    near: { ambient, coverings },
    far: steadyFace({ temperature: 300, transfer: 0 }),
    duration: 2400,
    step: 100,
    cells: 20,
  });
  for (const [row, along] of temperatures.slice(1).entries())
    along.forEach((now, place) => {
      expect(now).toBeGreaterThanOrEqual(temperatures[row]![place]! - 1e-9);
    });
});

describe('short first steps', () => {
  const wrapped = {
    ambient: air.ambient,
    coverings: [
      { from: 0, transfer: 1 },
      { from: 40_000, transfer: 8 },
    ],
  };
  const grown = conduct({ ...slab, near: wrapped, duration: DAY, step: 1200, firstStep: 75 });

  test('come after the start and each change of covering, and double until they are long', () => {
    const steps = [...grown.times.slice(1)].map((time, i) => time - grown.times[i]!);
    const ramp = [75, 150, 300, 600].flatMap((step) => [step, step, step, step]);
    expect(steps.slice(0, 16)).toEqual(ramp);
    const change = grown.times.indexOf(40_000);
    expect(steps.slice(change, change + 16)).toEqual(ramp);
    expect(Math.max(...steps)).toBeLessThanOrEqual(1200 + 1e-6);
    expect(grown.times.at(-1)).toBeCloseTo(DAY, 6);
    expect(grown.energy.imbalance).toBeLessThan(1e-9);
  });

  test('are cut short at a change of covering and at the end of the run', () => {
    const early = { ...wrapped, coverings: [wrapped.coverings[0]!, { from: 200, transfer: 8 }] };
    const run = conduct({ ...slab, near: early, duration: 500, step: 1200, firstStep: 75 });
    expect([...run.times]).toEqual([0, 75, 150, 200, 275, 350, 425, 500]);
  });

  test('are followed by longer ones from a given time, and begin again where a covering changes after it', () => {
    const late = [{ from: 20_000, step: 7200 }];
    const run = conduct({
      ...slab,
      near: wrapped,
      duration: DAY,
      step: 1200,
      firstStep: 300,
      late,
    });
    const times = [...run.times];
    expect(times).toContain(20_000);
    const steps = (from: number, to: number) =>
      times
        .slice(times.indexOf(from) + 1, times.indexOf(to) + 1)
        .map((at, i, all) => at - (all[i - 1] ?? from));
    // As even as they can be, and no longer than was asked.
    expect(steps(20_000, 40_000)).toEqual(
      [20_000 / 3, 20_000 / 3, 20_000 / 3].map((each) => expect.closeTo(each, 6)),
    );
    expect(steps(40_000, DAY).slice(0, 9)).toEqual([300, 300, 300, 300, 600, 600, 600, 600, 1200]);
    // And so on, to 4800 s and even steps to the end; none is longer than is asked so late.
    expect(steps(40_000, DAY).slice(12)).toEqual([
      ...Array(4).fill(2400),
      ...Array(4).fill(4800),
      ...Array(2).fill((DAY - 77_200) / 2),
    ]);
    expect(Math.max(...steps(0, 20_000))).toBeLessThanOrEqual(1200 + 1e-6);
    expect(run.energy.imbalance).toBeLessThan(1e-9);
    expect(() => conduct({ ...slab, late: [{ from: 0, step: 0 }] })).toThrow('lateStep');
    expect(() => conduct({ ...slab, late: [{ from: -1, step: 60 }] })).toThrow('late');
  });

  test('resolve a sudden cooling that long steps miss', () => {
    const { hydration: _, ...cooling } = slab;
    const warm = { ...cooling, initialTemperature: 313.15, duration: 4800, step: 1200, cells: 60 };
    const biot = (8 * 0.15) / 0.4;
    const off = (firstStep?: number) => {
      const run = conduct({ ...warm, ...(firstStep && { firstStep }) });
      const row = run.times.indexOf(1200);
      const fourier = (0.4 * run.times[row]!) / (1.3e6 * 0.15 ** 2);
      const exact = 293.15 + 20 * slabSeriesConvective({ biot, fourier, fromMiddle: 1 });
      return Math.abs(temperatureInside(run, 0, row) - exact);
    };
    expect(off()).toBeGreaterThan(0.3);
    // Four steps of 75 s, four of 150 and one of 300 end there.
    expect(off(75)).toBeLessThan(0.03);
  });

  test('are no shorter than 1/4096 of the long ones, and no longer than them', () => {
    const of = (firstStep: number) => () => conduct({ ...slab, step: 900, firstStep });
    expect(of(0)).toThrow('firstStep');
    expect(of(900 / 4097)).toThrow('firstStep');
    expect(of(900 / 4096)).not.toThrow();
    expect([...conduct({ ...slab, step: 900, firstStep: 1800 }).times]).toEqual([
      ...conduct(slab).times,
    ]);
  });
});

describe('faces', () => {
  test('layers and surface film add in series', () => {
    const transfer = throughLayers({
      film: 10,
      layers: [
        { thickness: 0.018, conductivity: 0.13 },
        { thickness: 0.02, conductivity: 0.04 },
      ],
    });
    expect(1 / transfer).toBeCloseTo(0.1 + 0.018 / 0.13 + 0.5, 12);
    expect(throughLayers({ film: 7, layers: [] })).toBeCloseTo(7, 12);
    expect(outdoorTransfer({ windSpeed: 4 })).toBe(25);
    // ISO 6946, from memory: 0.13 m²·K/W between a wall and the room.
    expect(1 / STILL_AIR_TRANSFER).toBeCloseTo(0.13, 12);
  });

  test('round a part, layers are summed as shells', () => {
    const layers = [
      { thickness: 0.05, conductivity: 0.035 },
      { thickness: 0.02, conductivity: 0.13 },
    ];
    const radius = 0.075;
    const through = (round: 0 | 1 | 2, of = layers) =>
      throughLayers({ film: STILL_AIR_TRANSFER, layers: of, around: { round, radius } });
    for (const round of [0, 1, 2] as const) {
      let [r, resists] = [radius, 0];
      for (const { thickness, conductivity } of layers)
        for (let i = 0; i < 10_000; i++) {
          const shell = thickness / 10_000;
          resists += (shell / conductivity) * (radius / (r + shell / 2)) ** round;
          r += shell;
        }
      resists += (radius / r) ** round / STILL_AIR_TRANSFER;
      expect(through(round) * resists).toBeCloseTo(1, 7);
    }
    // By hand: 1/(0.36 × 0.13 + 0.075 × 0.4/0.035) for the ball, 1/(0.6 × 0.13 + 0.075 × ln(5/3)/0.035).
    expect(through(2, layers.slice(0, 1))).toBeCloseTo(1.10626, 5);
    expect(through(1, layers.slice(0, 1))).toBeCloseTo(0.85279, 5);
    expect(through(2, [])).toBeCloseTo(STILL_AIR_TRANSFER, 12);
    // Round a part so wide that it is as good as flat.
    const wide = { film: 10, layers, around: { round: 2, radius: 1e6 } } as const;
    expect(throughLayers(wide)).toBeCloseTo(throughLayers({ film: 10, layers }), 6);
    expect(() => throughLayers({ ...wide, around: { round: 1, radius: 0 } })).toThrow('radius = 0');
    const less = [{ thickness: -0.01, conductivity: 0.1 }];
    expect(() => through(1, less)).toThrow('thickness = -0.01');
  });

  test('refuses cells, steps, layers and films out of range', () => {
    expect(() => conduct({ ...slab, thickness: 0 })).toThrow(DomainError);
    for (const cells of [1, 2.5])
      expect(() => conduct({ ...slab, cells })).toThrow(`cells = ${cells}`);
    expect(() => conduct({ ...slab, near: { ...air, coverings: [] } })).toThrow(DomainError);
    expect(() =>
      conduct({ ...slab, near: { ...air, coverings: [{ from: 60, transfer: 1 }] } }),
    ).toThrow(DomainError);
    expect(() => conduct({ ...slab, far: steadyFace({ temperature: 290, transfer: -1 }) })).toThrow(
      DomainError,
    );
    expect(() => throughLayers({ film: 0, layers: [] })).toThrow(DomainError);
    expect(() => temperatureInside(conduct(slab), 0.31, 0)).toThrow(DomainError);
  });
});
