import { describe, expect, test } from 'vitest';
import { binderHeat, bogue, cementHeat } from '../../../../src/core/curing/heat/cement-heat.ts';
import { conduct } from '../../../../src/core/curing/heat/conduction.ts';
import { peakOf, temperatureInside } from '../../../../src/core/curing/heat/inside.ts';
import {
  biotRoots,
  slabSeriesConvective,
  slabSeriesHeld,
} from '../../../../src/core/curing/heat/slab-series.ts';
import { expectLimits } from '../../refuses.ts';
import { DAY, slab } from './slab.ts';

const share = { takes: [0, 1], refuses: [-1e-6, 1.01] };

describe('a cement', () => {
  const oxides = {
    cao: 0.635,
    sio2: 0.205,
    al2o3: 0.05,
    fe2o3: 0.03,
    so3: 0.027,
    freeLime: 0.01,
    mgo: 0.02,
  };

  test('takes oxides from 0 to 1, and those left out as 0', () => {
    const beyond = { refuses: [-1e-6, 1.01] };
    expectLimits(bogue, oxides, {
      cao: beyond,
      sio2: beyond,
      al2o3: beyond,
      fe2o3: beyond,
      so3: { takes: [0], refuses: [-1e-6, 1.01] },
      freeLime: { takes: [0], refuses: [-1e-6, 1.01] },
      mgo: share,
    });
    const { freeLime: _, mgo: __, ...five } = oxides;
    expect(bogue(five)).toEqual(bogue({ ...five, freeLime: 0, mgo: 0 }));
  });

  test('needs an alumina to iron ratio of at least 0.64, if it has iron', () => {
    // ASTM C150 Annex A1, from memory: below 0.64 there is no C₃A and other factors hold. White cement
    // has next to no iron.
    const iron = (fe2o3: number) => () => bogue({ ...oxides, fe2o3 });
    expect(iron(0.05 / 0.641)).not.toThrow();
    expect(iron(0.05 / 0.639)).toThrow('al2o3/fe2o3');
    expect(iron(0)().c4af).toBe(0);
  });

  test('gives off the heat of each compound by its share', () => {
    const none = { c3s: 0, c2s: 0, c3a: 0, c4af: 0, so3: 0, freeLime: 0, mgo: 0 };
    // J/g: Schindler & Folliard 2005, from memory.
    const heats = { c3s: 500, c2s: 260, c3a: 866, c4af: 420, so3: 624, freeLime: 1186, mgo: 850 };
    for (const [name, heat] of Object.entries(heats))
      expect(cementHeat({ ...none, [name]: 1 })).toBeCloseTo(heat * 1000, 6);
    expectLimits(cementHeat, none, Object.fromEntries(Object.keys(none).map((k) => [k, share])));
  });

  test('refuses masses, heats and lime of a blend out of range', () => {
    const blend = {
      cement: 300,
      cementHeat: 450e3,
      flyAsh: 60,
      flyAshLime: 0.1,
      slag: 40,
      slagHeat: 461e3,
      other: 20,
    };
    const notNegative = { takes: [0], refuses: [-1] };
    expectLimits(binderHeat, blend, {
      cement: notNegative,
      cementHeat: notNegative,
      flyAsh: notNegative,
      flyAshLime: share,
      slag: notNegative,
      slagHeat: notNegative,
      other: notNegative,
    });
  });
});

describe('a run that was worked out', () => {
  // As warm as the air on both sides, and without cement.
  const { hydration: _, ...inert } = slab;
  const run = conduct({ ...inert, duration: DAY });

  test('refuses moments and depths that are not its own', () => {
    const last = run.times.length - 1;
    expectLimits(
      ({ depth, row }: { depth: number; row: number }) => temperatureInside(run, depth, row),
      { depth: 0.1, row: 0 },
      {
        depth: { takes: [0, slab.thickness], refuses: [-0.001, slab.thickness + 0.001] },
        row: { takes: [0, last], refuses: [-1, 1.5, last + 1] },
      },
    );
  });

  test('has its peak at the start, in a slab that nothing warms', () => {
    expect(peakOf(run)).toEqual({ temperature: 293.15, time: 0, depth: 0 });
  });
});

describe('a slab by its series', () => {
  test('refuses places outside the slab, and times before the series converges', () => {
    const fourier = { takes: [1e-4], refuses: [9e-5, 0, -1] };
    expectLimits(
      slabSeriesHeld,
      { fourier: 0.1, fromFace: 0.5 },
      {
        fourier,
        fromFace: { takes: [0, 2], refuses: [-0.01, 2.01] },
      },
    );
    expectLimits(
      slabSeriesConvective,
      { biot: 1, fourier: 0.1, fromMiddle: 0.5 },
      {
        biot: { refuses: [0, -1] },
        fourier,
        fromMiddle: { takes: [0, 1], refuses: [-0.01, 1.01] },
      },
    );
    expectLimits(
      biotRoots,
      { biot: 1, count: 3 },
      {
        biot: { refuses: [0, -1] },
        count: { takes: [1], refuses: [0, 1.5] },
      },
    );
  });

  test('has roots that solve ξ·tan ξ = Bi, one in each interval of π, for any Biot number', () => {
    for (const biot of [1e-8, 0.01, 1, 50, 1e6])
      for (const [n, root] of biotRoots({ biot, count: 5 }).entries()) {
        expect(root).toBeGreaterThan(n * Math.PI);
        expect(root).toBeLessThan((n + 0.5) * Math.PI);
        // ξ sin ξ − Bi cos ξ over its slope, (1 + Bi) sin ξ + ξ cos ξ, is how far the root is off.
        const off =
          (root * Math.sin(root) - biot * Math.cos(root)) /
          ((1 + biot) * Math.sin(root) + root * Math.cos(root));
        expect(Math.abs(off / root)).toBeLessThan(1e-14);
      }
    // Slow at the face, the whole slab cools as one: ξ² = Bi (1 − Bi/3).
    const [first] = biotRoots({ biot: 1e-8, count: 1 });
    expect((first! ** 2 / 1e-8 - 1) * 3e8).toBeCloseTo(-1, 5);
  });

  test('feels the step fully at its faces, equally from both, and not yet in its middle', () => {
    const at = (fromFace: number, fourier = 1e-4) => slabSeriesHeld({ fourier, fromFace });
    expect(at(0)).toBeCloseTo(1, 12);
    expect(at(2)).toBeCloseTo(1, 9);
    expect(at(1)).toBeCloseTo(0, 12);
    expect(at(0.3, 0.2)).toBeCloseTo(at(1.7, 0.2), 12);
  });
});
