import { describe, expect, test } from 'vitest';
import { heldAtTwoPoints, momentAt } from '../../../src/core/demould/beam.ts';
import { bendingShape } from '../../../src/core/demould/bending-shape.ts';
import {
  bendingStress,
  type FlatPart,
  handlingStress,
  utilisation,
} from '../../../src/core/demould/handling.ts';
import { barsTogether } from '../../../src/core/demould/several-bars.ts';
import { strippingBurden } from '../../../src/core/demould/stripping.ts';
import { partMass } from '../../../src/core/demould/weight.ts';
import { expectLimits } from '../refuses.ts';

describe('a beam held off its middle, by hand', () => {
  // 4 m of 6 N/m on supports at 1 m and 3.5 m: 24 N at 2 m, so 24 · 1.5/2.5 on the left.
  const beam = { length: 4, left: 1, right: 0.5, load: 6 };

  test('forces, moments and where the span sags most', () => {
    const { reactionLeft, reactionRight, hogLeft, hogRight, sag, sagAt, worst } =
      heldAtTwoPoints(beam);
    expect(reactionLeft).toBeCloseTo(14.4, 12);
    expect(reactionRight).toBeCloseTo(9.6, 12);
    expect(hogLeft).toBeCloseTo(3, 12);
    expect(hogRight).toBeCloseTo(0.75, 12);
    // No shear at 14.4/6; 14.4 · 1.4 − 6 · 2.4²/2 there.
    expect(sagAt).toBeCloseTo(2.4, 12);
    expect(sag).toBeCloseTo(2.88, 12);
    expect(worst).toBe(hogLeft);
  });

  test('a span that hogs throughout has a negative sagging moment', () => {
    // 0.4 m from each end of 1 m: 0.5 · 0.1 − 0.125 in the middle.
    const { sag, worst } = heldAtTwoPoints({ length: 1, left: 0.4, right: 0.4, load: 1 });
    expect(sag).toBeCloseTo(-0.075, 12);
    expect(worst).toBeCloseTo(0.08, 12);
  });

  test('refuses a place outside the beam', () => {
    expectLimits(
      ({ x }: { x: number }) => momentAt(beam, x),
      { x: 2 },
      { x: { takes: [0, 4], refuses: [-0.01, 4.01] } },
    );
  });

  test('accepts supports up to its middle, and one there with one before it', () => {
    expect(heldAtTwoPoints({ length: 2, left: 1, right: 0, load: 1 }).reactionLeft).toBe(2);
    const because = (left: number, right: number) => () =>
      heldAtTwoPoints({ length: 2, left, right, load: 1 });
    expect(because(0.4, 1.01)).toThrow(
      expect.objectContaining({
        quantity: 'right',
        value: 1.01,
        kind: 'length',
        allowed: { min: 0, max: 1 },
        because: 'would-tip',
      }),
    );
    expect(because(1.5, 1)).toThrow('supports-cross');
  });
});

describe('the bending shape', () => {
  test('runs from end to end, in 60 steps by default', () => {
    const beam = { length: 3, left: 0.5, right: 0.3, load: 2 };
    const { x, moment, deflection } = bendingShape(beam, 5);
    expect([x.length, moment.length, deflection.length]).toEqual([61, 61, 61]);
    expect(x[0]).toBe(0);
    expect(x[60]).toBe(3);
    expect(x[20]).toBeCloseTo(1, 12);
    expect(moment[20]).toBeCloseTo(momentAt(beam, 1), 12);
    expect(bendingShape(beam, 5, 2).x).toEqual([0, 1.5, 3]);
    expect(() => bendingShape(beam, 5, 2.5)).toThrow('not-a-whole-number');
  });

  test('is 0 at both supports, whether or not a step falls there', () => {
    // Steps of 0.1: supports at 0.2 and 0.9, each on a step.
    const on = bendingShape({ length: 1, left: 0.2, right: 0.1, load: 1 }, 1, 10).deflection;
    expect(on[2]).toBeCloseTo(0, 12);
    expect(on[9]).toBeCloseTo(0, 12);
    // Supports between steps: straight from step to step, a weighted mean of two of them.
    const off = bendingShape({ length: 1, left: 0.225, right: 0.15, load: 1 }, 1, 10).deflection;
    expect(0.75 * off[2]! + 0.25 * off[3]!).toBeCloseTo(0, 12);
    expect(0.5 * off[8]! + 0.5 * off[9]!).toBeCloseTo(0, 12);
  });

  test('a cantilevered end off the middle, by superposition', () => {
    // Held at 0 and at 0.8 of 1 m, w = EI = 1: the free end falls a⁴/8 − a·θ, with the slope down into
    // the span θ = s³/24 − (a²/2)·s/3 at the support.
    const [a, s] = [0.2, 0.8];
    const slope = s ** 3 / 24 - ((a ** 2 / 2) * s) / 3;
    const { deflection } = bendingShape({ length: 1, left: 0, right: a, load: 1 }, 1, 500);
    expect(deflection[500]).toBeCloseTo(a ** 4 / 8 - slope * a, 7);
  });
});

describe('handling', () => {
  const slab: FlatPart = {
    length: 1,
    width: 0.5,
    depth: 0.1,
    density: 1000,
    factor: 1.5,
    adhesion: 0,
  };
  const weight = 1000 * 9.80665 * 0.1 * 1.5;

  test('lifted by the ends, weight, moment and stress are those worked out by hand', () => {
    const { load, moment, stress } = handlingStress(slab, { by: 'ends' });
    expect(load).toBeCloseTo(weight * 0.5, 9);
    expect(moment).toBeCloseTo((weight * 0.5) / 8, 9);
    expect(stress).toBeCloseTo((6 * weight * 0.5) / 8 / (0.5 * 0.01), 6);
    expect(handlingStress({ ...slab, adhesion: 1000 }, { by: 'ends' }).load).toBeCloseTo(
      (weight + 1000) * 0.5,
      9,
    );
  });

  test('held in the middle, the ends overhang both hands', () => {
    const { moment } = handlingStress(slab, { by: 'middle', grip: 0.2 });
    expect(moment).toBeCloseTo((weight * 0.5 * 0.4 ** 2) / 2, 9);
  });

  test('tipped, it rests on one end and is held in from the other', () => {
    const grip = handlingStress(slab, { by: 'tipping', grip: 0.2 });
    expect(grip).toEqual(handlingStress(slab, { by: 'two-points', left: 0, right: 0.2 }));
  });

  test('at four points the worse direction governs, and the load of both lines is given', () => {
    // Across: half a metre of slab held at its edges, 1 m along: w b²/8 of half of it.
    const edges = handlingStress(slab, { by: 'four-points', in: 0.2, aside: 0 });
    expect(edges.load).toBeCloseTo(weight * 0.5, 9);
    expect(edges.moment).toBeCloseTo(((weight / 2) * 0.5 ** 2) / 8, 9);
    expect(edges.stress).toBeCloseTo((6 * edges.moment) / (0.5 * 0.01), 6);
  });

  test('a strip exactly fifteen thicknesses wide is not reduced', () => {
    const square = { ...slab, length: 3, width: 3 };
    const hold = { by: 'four-points', in: 0.6, aside: 0.6 } as const;
    expect(handlingStress({ ...square, depth: 0.1 }, hold).notes).toEqual([]);
    expect(handlingStress({ ...square, depth: 0.099 }, hold).notes).toEqual([
      { code: 'strip-narrower-than-half', of: 'depth' },
    ]);
  });

  test('a multiplier alone gets no note that suction is counted twice', () => {
    expect(handlingStress(slab, { by: 'ends' }).notes).toEqual([]);
  });

  test('refuses each dimension out of range by its name', () => {
    expectLimits((part: FlatPart) => handlingStress(part, { by: 'ends' }), slab, {
      length: { refuses: [0, -1] },
      width: { refuses: [0, -1] },
      depth: { refuses: [0, -1] },
      density: { refuses: [0, -1] },
      factor: { takes: [1], refuses: [0.99] },
      adhesion: { takes: [0], refuses: [-1] },
    });
    expectLimits(
      bendingStress,
      { moment: 1, breadth: 1, depth: 1 },
      { breadth: { refuses: [0, -1] }, depth: { refuses: [0, -1] } },
    );
    expectLimits(
      ({ stress, low, high }: { stress: number; low: number; high: number }) =>
        utilisation({ stress, strength: { low, high } }),
      { stress: 1, low: 2, high: 3 },
      {
        stress: { takes: [0], refuses: [-1] },
        low: { takes: [3], refuses: [0, 3.1], as: 'strength' },
        high: { takes: [2], refuses: [1.9], as: 'strength' },
      },
    );
    expectLimits(
      strippingBurden,
      { density: 600, depth: 0.06, factor: 1.3, adhesion: 1000 },
      {
        density: { refuses: [0, -1] },
        depth: { refuses: [0, -1] },
        factor: { takes: [1], refuses: [0.99] },
        adhesion: { takes: [0], refuses: [-1] },
      },
    );
    expectLimits(
      partMass,
      { volume: 1, wetDensity: 600, dryDensity: 500, gone: 0.5, fittings: 1 },
      {
        volume: { refuses: [0, -1] },
        wetDensity: { refuses: [0, -1] },
        dryDensity: { takes: [600], refuses: [0, -1, 601] },
        gone: { takes: [0, 1], refuses: [-0.01, 1.01] },
        fittings: { takes: [0], refuses: [-1] },
      },
    );
  });

  test('where pull and factor give the same, the factor governs', () => {
    expect(strippingBurden({ density: 600, depth: 0.06, factor: 1, adhesion: 0 }).governs).toBe(
      'factor',
    );
  });
});

test('the uncertainty of readings is combined with the scatter of bars as worked out by hand', () => {
  // Two bars, one degree of freedom: t is 12.706 two-sided and 6.314 one-sided; s = 10√2 kPa.
  const { mean, scatter, plusMinus, nextBarLow } = barsTogether([
    { strength: 190e3, uncertainty: 2e3 },
    { strength: 210e3, uncertainty: 4e3 },
  ]);
  const s = 10e3 * Math.SQRT2;
  expect(mean).toBe(200e3);
  expect(scatter).toBeCloseTo(s, 6);
  expect(plusMinus! / Math.hypot((12.7062 * s) / Math.SQRT2, 1.96 * 3e3)).toBeCloseTo(1, 5);
  const drop = Math.hypot(6.31375 * s * Math.sqrt(1.5), 1.645 * 3e3);
  expect(nextBarLow! / (200e3 - drop)).toBeCloseTo(1, 4);
});
