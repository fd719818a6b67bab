import { describe, expect, test } from 'vitest';
import { type DayPlan, dayClock } from '../../../src/core/placing/clock.ts';
import { deepestLift, liftProfile } from '../../../src/core/placing/lift.ts';
import { longestSpan, panelBending, panelUpTheFill } from '../../../src/core/placing/panel.ts';
import {
  floatUp,
  headPressure,
  leaningFace,
  sidePush,
  tieLoads,
} from '../../../src/core/placing/pressure.ts';
import { batchVolume, pieceVolume } from '../../../src/core/placing/volume.ts';
import { expectLimits } from '../refuses.ts';

const minutes = (m: number) => m * 60;
/** A load every 17 minutes, its foam 4 minutes old, 7 minutes from blended to placed. */
const plan: DayPlan = {
  loads: 3,
  base: minutes(6),
  foam: minutes(2),
  blend: minutes(2),
  weigh: minutes(3),
  place: minutes(4),
  foamMade: 'each',
  hands: 1,
  foamLasts: minutes(4),
  mixLasts: minutes(7),
  joint: minutes(17),
};

describe('the clock of a day at its limits', () => {
  test('waits of foam, mix and joint exactly at their limits are accepted', () => {
    expect(dayClock(plan)).toMatchObject({ obstacles: [], remedies: [] });
  });

  test('a limit one second shorter is reported with the time taken', () => {
    expect(dayClock({ ...plan, foamLasts: minutes(4) - 1 }).obstacles).toEqual([
      { code: 'foam-too-old', load: 1, age: minutes(4) },
    ]);
    expect(dayClock({ ...plan, mixLasts: minutes(7) - 1 }).obstacles).toEqual([
      { code: 'mix-waits', load: 1, wait: minutes(7) },
    ]);
    expect(dayClock({ ...plan, joint: minutes(17) - 1 }).obstacles).toEqual([
      { code: 'cold-joint', load: 2, wait: minutes(17) },
    ]);
  });

  test('one load has no joint, so a larger mixer is a remedy', () => {
    // One load of both has twice the foam to make, 6 minutes old when it is in, and twice the mix to place, in 11.
    const two = {
      ...plan,
      loads: 2,
      joint: minutes(16),
      foamLasts: minutes(6),
      mixLasts: minutes(11),
    };
    expect(dayClock(two).remedies).toContain('a-larger-mixer');
    expect(dayClock({ ...two, loads: 1 }).obstacles).toEqual([]);
    // Half of three loads is two, which have a joint no shorter than before.
    expect(dayClock({ ...two, loads: 3 }).remedies).not.toContain('a-larger-mixer');
  });

  test('a second worker removes the base mix from the wait between loads', () => {
    // Weighing and placing 7, foam and blending 4: a load every 11 minutes, where alone it took 17.
    const remedies = (joint: number) => dayClock({ ...plan, joint }).remedies;
    expect(remedies(minutes(11))).toEqual([
      'a-second-pair-of-hands',
      'fewer-pieces',
      'quicker-steps',
    ]);
    expect(remedies(minutes(11) - 1)).toEqual(['fewer-pieces', 'quicker-steps']);
  });

  test('halving the time of every step halves the time of a load', () => {
    const remedies = (joint: number) => dayClock({ ...plan, joint }).remedies;
    expect(remedies(minutes(8.5))).toEqual(['fewer-pieces', 'quicker-steps']);
    expect(remedies(minutes(8.5) - 1)).toEqual(['fewer-pieces']);
  });

  test('refuses times and counts out of range', () => {
    expectLimits(dayClock, plan, {
      loads: { takes: [1, 200], refuses: [0, 201, 2.5] },
      base: { takes: [0], refuses: [-1] },
      foam: { takes: [0], refuses: [-1] },
      blend: { takes: [0], refuses: [-1] },
      weigh: { takes: [0], refuses: [-1] },
      place: { takes: [0], refuses: [-1] },
      foamLasts: { takes: [1], refuses: [0] },
      mixLasts: { takes: [1], refuses: [0] },
      joint: { takes: [1], refuses: [0] },
    });
  });
});

test('the uplift of a core is the mix it displaces less its weight', () => {
  const core = { density: 600, displaced: 0.01, mass: 1 };
  // (600 · 0.01 − 1) kg in standard gravity.
  expect(floatUp(core)).toBeCloseTo(5 * 9.806_65, 3);
  expectLimits(floatUp, core, {
    density: { refuses: [0, -1] },
    displaced: { takes: [0], refuses: [-1e-9] },
    mass: { takes: [0], refuses: [-1e-9] },
  });
});

const positive = { refuses: [0, -1, Number.NaN] };
const notNegative = { takes: [0], refuses: [-1e-9, Number.NaN] };

test('refuses densities and sizes of 0, and rows of ties out of order', () => {
  const head = { density: 600, depth: 0.8 };
  expectLimits(headPressure, head, { density: positive, depth: notNegative });
  expectLimits(sidePush, { ...head, width: 1 }, { density: positive, width: positive });
  expectLimits(
    leaningFace,
    { density: 600, top: 0, height: 0.5, lean: 0.3, width: 1 },
    {
      density: positive,
      top: { ...notNegative, as: 'depth' },
      height: positive,
      width: positive,
      // Flat, the face would be a lid with no height of its own.
      lean: { takes: [0, 1.57], refuses: [-0.01, Math.PI / 2] },
    },
  );
  expectLimits(
    tieLoads,
    { ...head, spacing: 0.5, lower: 0.1, upper: 0.6 },
    {
      lower: notNegative,
      upper: { takes: [0.11], refuses: [0.1, 0.05] },
      spacing: { ...positive, as: 'width' },
    },
  );
});

test('refuses densities, depths, pressures and gas contents of a lift out of range', () => {
  const lift = { density: 600, gas: 0.6, depth: 0.5, atmosphere: 100_000 };
  const gas = { takes: [0, 1], refuses: [-1e-9, 1 + 1e-9] };
  expectLimits(liftProfile, lift, {
    density: positive,
    gas,
    depth: { takes: [1000], refuses: [0, -1, 1001] },
    atmosphere: positive,
  });
  const { depth: _, ...shallow } = { ...lift, gain: 0.02 };
  expectLimits(deepestLift, shallow, {
    density: positive,
    gas,
    gain: positive,
    atmosphere: positive,
  });
});

test('a panel up the fill: moment over section modulus, deflection over span', () => {
  const panel = { span: 0.4, thickness: 0.012, modulus: 6e9, pressure: 2000 };
  const { moment, stress, share, deflection } = panelUpTheFill(panel);
  // p L²/(9√3) = 20.53 N·m per m; S = t²/6 = 2.4·10⁻⁵ m³ per m.
  expect(moment).toBeCloseTo(20.528, 3);
  expect(stress).toBeCloseTo(20.528 / 2.4e-5, -2);
  expect(share * 0.4).toBeCloseTo(deflection, 15);
  // 0.00652 p L⁴/(E I), I = t³/12 = 1.44·10⁻⁷ m⁴ per m.
  expect(deflection).toBeCloseTo((0.006_52 * 2000 * 0.4 ** 4) / (6e9 * 1.44e-7), 6);
});

test('refuses limits and a stiffness of a panel of 0 or less', () => {
  const panel = {
    spans: 1,
    thickness: 0.012,
    modulus: 6e9,
    pressure: 2000,
    share: 1 / 270,
    stress: 8e6,
  } as const;
  expectLimits<Parameters<typeof longestSpan>[0]>(longestSpan, panel, {
    share: { refuses: [0, -1] },
    stress: { refuses: [0, -1] },
    thickness: { refuses: [0, -1] },
    modulus: { refuses: [0, -1] },
    pressure: { takes: [0], refuses: [-1] },
  });
  expect(longestSpan({ ...panel, pressure: 0 }).span).toBe(Number.POSITIVE_INFINITY);
  expectLimits<Parameters<typeof panelBending>[0]>(
    panelBending,
    { spans: 1, span: 0.4, thickness: 0.012, modulus: 6e9, pressure: 2000 },
    {
      span: positive,
      thickness: positive,
      modulus: positive,
      pressure: notNegative,
    },
  );
});

test('refuses a ring without a hole, or with one outside it', () => {
  const ring = { shape: 'ring', outerDiameter: 0.3, innerDiameter: 0.2, height: 0.1 } as const;
  expectLimits<Parameters<typeof pieceVolume>[0] & { readonly shape: 'ring' }>(pieceVolume, ring, {
    outerDiameter: { refuses: [0, -1, 1e5] },
    innerDiameter: { takes: [0.001, 0.299], refuses: [0, -0.1, 0.3, 0.31] },
    height: { refuses: [0, -1, 1e5] },
  });
});

test('refuses a fractional number of pieces, and a waste beyond its range', () => {
  const piece = { length: 0.3, width: 0.2, thickness: 0.05, shape: 'slab' } as const;
  const of = (count: number) => ({
    pieces: [{ piece, count }],
    settling: 0.02,
    waste: 0.1,
  });
  // Two of 3 L, a fiftieth to settle, a tenth of both to lose.
  expect(batchVolume(of(2)).total).toBeCloseTo(0.006 * 1.02 * 1.1, 12);
  expectLimits(batchVolume, of(2), {
    settling: { takes: [0, 1], refuses: [-1e-9, 1.001] },
    waste: { takes: [0, 1], refuses: [-1e-9, 1.001] },
  });
  for (const count of [0, -1, 1e6 + 1]) expect(() => batchVolume(of(count))).toThrow(/count/);
  expect(() => batchVolume(of(2.5))).toThrow(
    expect.objectContaining({
      quantity: 'count',
      value: 2.5,
      allowed: { min: 1, max: 1e6 },
      because: 'not-a-whole-number',
    }),
  );
});
