import { describe, expect, test } from 'vitest';
import { lastPart } from '../../../src/core/mix/absolute-volume.ts';
import { checkBase } from '../../../src/core/mix/base-check.ts';
import { baseMix, waterCementRatio } from '../../../src/core/mix/base-mix.ts';
import { binderDensity } from '../../../src/core/mix/binder.ts';
import { dundeeRule } from '../../../src/core/mix/dundee.ts';
import {
  evenLoads,
  inBuckets,
  loadsOfWholePieces,
  mixerLoads,
} from '../../../src/core/mix/loads.ts';
import { dampAggregate, freeWater } from '../../../src/core/mix/moisture.ts';
import { ovenDryDensity } from '../../../src/core/mix/oven-dry.ts';
import { pooled } from '../../../src/core/mix/several-buckets.ts';
import {
  demandWaterCement,
  isBaseMix,
  waterCementNotes,
} from '../../../src/core/mix/water-cement-limits.ts';
import { airContent, wetDensity, yieldVolume } from '../../../src/core/mix/weigh.ts';
import { expectLimits } from '../refuses.ts';

describe('what is left of a volume', () => {
  const parts = [{ mass: 300, density: 3000 }];
  const left = (mix: { volume: number; air: number; density: number }) =>
    lastPart({ ...mix, parts });

  test('after a tenth of cement and a twentieth of air, by hand', () => {
    const sand = left({ volume: 1, air: 0.05, density: 2600 });
    expect(sand.volume).toBeCloseTo(0.85, 12);
    expect(sand.mass).toBeCloseTo(2210, 9);
  });

  test('is 0 when the parts just fill it; refuses air, volumes and densities out of range', () => {
    expect(left({ volume: 0.1, air: 0, density: 2600 })).toEqual({ volume: 0, mass: 0 });
    expectLimits(
      left,
      { volume: 1, air: 0.05, density: 2600 },
      {
        volume: { refuses: [0.09, -1] },
        air: { takes: [0], refuses: [-0.01, 1.01] },
        density: { refuses: [0, -1] },
      },
    );
    expectLimits(
      ({ air }: { air: number }) => lastPart({ volume: 1, air, parts: [], density: 2600 }),
      { air: 0.5 },
      { air: { takes: [1], refuses: [1.01] } },
    );
  });
});

describe('a binder', () => {
  const blend = ({ share, density }: { share: number; density: number }) =>
    binderDensity([
      { kind: 'slag', share, density },
      { kind: 'portland', share: 1 - share, density: 3000 },
    ]);

  test('has the density of its blend, and refuses shares and densities out of range', () => {
    expect(blend({ share: 0.5, density: 2000 })).toBeCloseTo(2400, 9);
    expect(() => binderDensity([])).toThrow('parts');
    expectLimits(
      blend,
      { share: 0.5, density: 2900 },
      {
        share: { takes: [0, 1], refuses: [-0.01, 1.01] },
        density: { takes: [1000, 5000], refuses: [999, 5001], as: 'binderDensity' },
      },
    );
  });

  test('refuses shares that differ from a sum of 1 by more than 10⁻⁹', () => {
    const of = (second: number) => () =>
      binderDensity([
        { kind: 'portland', share: 0.7 },
        { kind: 'slag', share: second },
      ]);
    expect(of(0.3 - 9e-10)).not.toThrow();
    expect(of(0.3 + 9e-10)).not.toThrow();
    expect(of(0.3 - 1.1e-9)).toThrow('shares-not-whole');
    expect(of(0.3 + 1.1e-9)).toThrow('shares-not-whole');
  });
});

describe('a base mix', () => {
  test('refuses ratios and densities out of range', () => {
    expectLimits(
      baseMix,
      {
        waterCement: 0.5,
        sandCement: 1,
        cementDensity: 3150,
        sandDensity: 2650,
        waterDensity: 1000,
      },
      {
        waterCement: { takes: [0, 100], refuses: [-0.01, 100.1] },
        sandCement: { takes: [0, 100], refuses: [-0.01, 100.1] },
        cementDensity: { takes: [1000, 5000], refuses: [999, 5001] },
        sandDensity: { takes: [100, 5000], refuses: [99, 5001] },
        waterDensity: { takes: [900, 1200], refuses: [899, 1201] },
      },
    );
    expectLimits(
      waterCementRatio,
      { cement: 10, water: 0.005, waterDensity: 998 },
      {
        cement: { refuses: [0, -1] },
        water: { takes: [0, 1e6], refuses: [-0.001, 1.1e6] },
        waterDensity: { takes: [900, 1200], refuses: [899, 1201] },
      },
    );
  });

  test('refuses to be checked with a w/c or cement of 0, or with air above 0.3', () => {
    expectLimits(
      ({ waterCement, cement, air }: { waterCement: number; cement: number; air: number }) =>
        checkBase({ measuredDensity: 1500, recipe: { waterCement }, cement, air }),
      { waterCement: 0.4, cement: 13, air: 0.1 },
      {
        waterCement: { takes: [0.01], refuses: [0, -0.4] },
        cement: { takes: [0.01], refuses: [0, -13] },
        air: { takes: [0, 0.3], refuses: [-0.01, 0.31] },
      },
    );
  });

  test('may be foamed from a w/c of 0.2 to one of 1.25', () => {
    expect([0.199, 0.2, 1.25, 1.251].map(isBaseMix)).toEqual([false, true, true, false]);
  });

  test('of neat cement is usual to 0.8, with sand to 1.25', () => {
    const codes = (sanded: boolean) => (waterCement: number) =>
      waterCementNotes({ waterCement, sanded }).map(({ code }) => code);
    const outside = ['outside-range'];
    expect([0.35, 0.8, 0.801].map(codes(false))).toEqual([[], [], outside]);
    expect([0.35, 1.25, 1.251].map(codes(true))).toEqual([[], [], outside]);
    expect(codes(true)(0.349)).toEqual(['paste-robs-foam']);
  });

  test('refuses a w/c below 0.2, which takes water from the foam, and above 2', () => {
    const refused = (because: string | undefined) =>
      expect.objectContaining({ quantity: 'waterCement', because });
    for (const edge of [0.2, 2]) expect(() => demandWaterCement(edge)).not.toThrow();
    expect(() => demandWaterCement(0.199)).toThrow(refused('paste-robs-foam'));
    expect(() => demandWaterCement(2.001)).toThrow(refused(undefined));
    // Nothing is noted of what is no base mix.
    for (const none of [0.199, 2.001])
      expect(() => waterCementNotes({ waterCement: none, sanded: true })).toThrow('waterCement');
  });
});

describe('the Dundee rule', () => {
  test('leaves no fine aggregate where cement and water are all of it', () => {
    expect(dundeeRule({ density: 450, cement: 300 })).toMatchObject({ water: 150, fine: 0 });
    expect(dundeeRule({ density: 1000, cement: 300, waterCement: 0.6 })).toMatchObject({
      water: 180,
      fine: 520,
    });
  });

  test('refuses no cement and a negative w/c', () => {
    expectLimits(
      dundeeRule,
      { density: 1200, cement: 300, waterCement: 0.5 },
      {
        cement: { takes: [1], refuses: [0, -1] },
        waterCement: { takes: [0], refuses: [-0.01, 100.1] },
      },
    );
    expect(() => dundeeRule({ density: 24_500, cement: 240, waterCement: 100 })).not.toThrow();
  });
});

describe('water in sand, by hand', () => {
  test('of 102 kg that absorb 2 %, at a moisture of 5 %', () => {
    const { ovenDry, toWeigh, water } = dampAggregate({
      surfaceDry: 102,
      moisture: 0.05,
      absorption: 0.02,
    });
    expect(ovenDry).toBeCloseTo(100, 12);
    expect(toWeigh).toBeCloseTo(105, 12);
    expect(water).toBeCloseTo(3, 12);
  });

  test('of 50 kg with 4 % of free water, or that will absorb 1 %', () => {
    expect(freeWater({ surfaceDry: 50, free: 0.04 })).toBeCloseTo(2, 12);
    expect(freeWater({ surfaceDry: 50, free: -0.01 })).toBeCloseTo(-0.5, 12);
  });
});

describe('several buckets', () => {
  test('are added up, and their spread is the heaviest less the lightest', () => {
    const all = pooled([
      { mass: 10, density: 500 },
      { mass: 12, density: 600 },
      { mass: 11, density: 550 },
    ]);
    expect(all.mass).toBe(33);
    expect(all.volume).toBeCloseTo(0.06, 12);
    expect(all.spread).toBeCloseTo(100 / 550, 12);
  });

  test('refuse an empty list, and masses and densities of 0 or less', () => {
    expect(() => pooled([])).toThrow('buckets');
    expectLimits(
      (bucket: { mass: number; density: number }) => pooled([{ mass: 10, density: 500 }, bucket]),
      { mass: 10, density: 600 },
      { mass: { refuses: [0, -1] }, density: { refuses: [0, -1] } },
    );
  });
});

describe('weighing', () => {
  test('refuses negative masses, and volumes and densities of 0 or less', () => {
    expectLimits(
      wetDensity,
      { tare: 1, full: 13, vessel: 0.02 },
      {
        tare: { takes: [0], refuses: [-0.1] },
        full: { takes: [1.01], refuses: [0.9, 1.1e9] },
        vessel: { refuses: [-0.02] },
      },
    );
    expectLimits(
      yieldVolume,
      { mass: 60, density: 600 },
      { mass: { refuses: [0, -1] }, density: { refuses: [0, -1] } },
    );
    expectLimits(
      airContent,
      { airFreeDensity: 1800, density: 600 },
      { airFreeDensity: { refuses: [0, -1] }, density: { takes: [1900], refuses: [0, -1] } },
    );
    expectLimits(
      ovenDryDensity,
      { cement: 350, aggregate: 600, volume: 1 },
      {
        cement: { takes: [0], refuses: [-1, 1.1e9] },
        aggregate: { takes: [0], refuses: [-1, 1.1e9] },
        volume: { refuses: [-1] },
      },
    );
  });
});

describe('loads and buckets', () => {
  const batch = {
    volume: 1,
    cement: 300,
    water: 150,
    sand: 200,
    foamMass: 40,
    foamVolume: 0.5,
    baseMass: 650,
    baseVolume: 0.5,
  };

  test('each load is an equal part of every ingredient', () => {
    const { count, each, foamBuckets } = mixerLoads({ batch, largestLoad: 0.3, foamBucket: 0.05 });
    expect(count).toBe(4);
    expect(each).toEqual({
      volume: 0.25,
      cement: 75,
      water: 37.5,
      sand: 50,
      foamMass: 10,
      foamVolume: 0.125,
      baseMass: 162.5,
      baseVolume: 0.125,
    });
    expect(foamBuckets).toEqual({ whole: 2, part: expect.closeTo(0.5, 12) });
  });

  test('allows at most 10,000 loads; a mixer larger than the batch gives one', () => {
    const loads = (plan: { volume: number; largestLoad: number; foamBucket: number }) =>
      mixerLoads({ ...plan, batch: { ...batch, volume: plan.volume } });
    expect(loads({ volume: 1, largestLoad: 1e6, foamBucket: 1 }).count).toBe(1);
    expect(loads({ volume: 1, largestLoad: 1e-4, foamBucket: 1 }).count).toBe(10_000);
    expectLimits(
      loads,
      { volume: 1, largestLoad: 0.3, foamBucket: 0.05 },
      {
        volume: { refuses: [0, -1] },
        largestLoad: { refuses: [0.99e-4, -1] },
        foamBucket: { refuses: [0, -1] },
      },
    );
  });

  test('more loads are made where more are asked for, and no fewer than the mixer takes', () => {
    const count = (least: number) =>
      mixerLoads({ batch, largestLoad: 0.3, foamBucket: 0.05, least }).count;
    expect([1, 4, 6].map(count)).toEqual([4, 4, 6]);
    expect(mixerLoads({ batch, largestLoad: 0.3, foamBucket: 0.05, least: 6 }).each.cement).toBe(
      50,
    );
    expect(() => count(0)).toThrow('least');
    expect(() => count(10_001)).toThrow('least');
    expect(() => count(1.5)).toThrow('not-a-whole-number');
  });

  test('loads of whole pieces are the smallest number that shares them evenly', () => {
    const loads = (pieces: number, largestLoad: number) =>
      loadsOfWholePieces({ pieces, volume: pieces * 0.1, largestLoad });
    // 4 pieces of 0.1 in a mixer of 0.16: one a load; of 0.25, two; of 0.4, all.
    expect([0.16, 0.25, 0.4].map((mixer) => loads(4, mixer))).toEqual([4, 2, 1]);
    // Seven go by sevens only.
    expect(loads(7, 0.35)).toBe(7);
    expect(loads(12, 0.55)).toBe(3);
    // Three of 0.1 is binary dust more than 0.3.
    expect(loads(3, 0.3)).toBe(1);
    expect(loads(4, 0.099)).toBeUndefined();
  });

  test('several sizes share a common divisor, except small pieces that fit into the room left in a load', () => {
    const even = (spare: number, ...sizes: readonly [count: number, litres: number][]) =>
      evenLoads(
        sizes.map(([count, volume]) => ({ count, volume })),
        spare,
      );
    expect(even(0, [12, 8], [6, 0.25])).toBe(6);
    expect(even(0, [12, 8], [4, 0.25])).toBe(4);
    // A twelfth of 3 L takes one bar of 0.25 L more.
    expect(even(3, [4, 0.25], [12, 8])).toBe(12);
    expect(even(2.9, [4, 0.25], [12, 8])).toBe(4);
    expect(even(3, [7, 8], [4, 8])).toBe(1);
  });

  test('a bucket full but for a rounding error counts as full', () => {
    expect(inBuckets(0.3, 0.1)).toEqual({ whole: 3, part: 0 });
    expect(inBuckets(3 - 1e-7, 1)).toEqual({ whole: 2, part: expect.closeTo(1, 6) });
    expect(inBuckets(0.02, 0.05)).toEqual({ whole: 0, part: expect.closeTo(0.4, 12) });
  });
});
