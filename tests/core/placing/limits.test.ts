import { describe, expect, test } from 'vitest';
import { type DayPlan, dayClock } from '../../../src/core/placing/clock.ts';
import { longestSpan, panelUpTheFill } from '../../../src/core/placing/panel.ts';
import { floatUp } from '../../../src/core/placing/pressure.ts';
import { batchVolume } from '../../../src/core/placing/volume.ts';
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
  test('foam, mix and joint last just long enough', () => {
    expect(dayClock(plan)).toMatchObject({ obstacles: [], remedies: [] });
  });

  test('a second less of any is in the way, and told with what it took', () => {
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

  test('one load has no joint, so a mixer that holds both mends it', () => {
    const two = { ...plan, loads: 2, joint: minutes(16) };
    expect(dayClock(two).remedies).toContain('a-larger-mixer');
    expect(dayClock({ ...two, loads: 1 }).obstacles).toEqual([]);
  });

  test('what is refused', () => {
    expectLimits(dayClock, plan, {
      loads: { takes: [1, 200], refuses: [0, 201] },
      base: { takes: [0], refuses: [-1] },
      place: { takes: [0], refuses: [-1] },
      foamLasts: { takes: [1], refuses: [0] },
      joint: { takes: [1], refuses: [0] },
    });
  });
});

test('a core floats by what it displaces less what it weighs', () => {
  const core = { density: 600, displaced: 0.01, mass: 1 };
  // (600 · 0.01 − 1) kg in standard gravity.
  expect(floatUp(core)).toBeCloseTo(5 * 9.806_65, 3);
  expectLimits(floatUp, core, {
    density: { refuses: [0, -1] },
    displaced: { takes: [0], refuses: [-1e-9] },
    mass: { takes: [0], refuses: [-1e-9] },
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

test('a panel’s limits and stiffness are above nothing', () => {
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
});

test('pieces are counted whole, and waste is a share', () => {
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
  expect(() => batchVolume(of(2.5))).toThrow(/not-a-whole-number/);
});
