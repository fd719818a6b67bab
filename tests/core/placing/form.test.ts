import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  longestSpan,
  panelBending,
  panelUpTheFill,
  SPAN_CASES,
} from '../../../src/core/placing/panel.ts';
import {
  floatUp,
  headPressure,
  leaningFace,
  sidePush,
  tieLoads,
  upperHalfLift,
} from '../../../src/core/placing/pressure.ts';
import { between } from '../arbitrary.ts';

describe('pressure of the mix', () => {
  test('the force on a side and its height agree with a sum over slices', () => {
    const side = { density: 600, depth: 0.8, width: 1.5 };
    const { resultant, above } = sidePush(side);
    const n = 10_000;
    let [force, moment] = [0, 0];
    for (let i = 0; i < n; i++) {
      const depth = ((i + 0.5) / n) * side.depth;
      const df = headPressure({ density: 600, depth }) * side.width * (side.depth / n);
      force += df;
      moment += df * (side.depth - depth);
    }
    expect(resultant).toBeCloseTo(force, 6);
    expect(above).toBeCloseTo(moment / force, 6);
  });

  test('the forces in the ties balance the pressure in force and moment', () => {
    fc.assert(
      fc.property(
        between(200, 2000),
        between(0.05, 3),
        between(0.1, 2),
        between(0, 0.5),
        between(0.05, 3),
        (density, depth, spacing, lower, gap) => {
          const upper = lower + gap;
          const ties = tieLoads({ density, depth, spacing, lower, upper });
          expect((ties.lower + ties.upper) / ties.push).toBeCloseTo(1, 9);
          const about = ties.lower * lower + ties.upper * upper - ties.push * (depth / 3);
          expect(Math.abs(about) / (ties.push * depth)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  test('a row of ties at a third of the depth takes the whole force', () => {
    for (const depth of [0.3, 0.6, 0.9]) {
      const at = { density: 600, depth, spacing: 0.5 };
      const third = Number((depth / 3).toFixed(1));
      expect(tieLoads({ ...at, lower: third, upper: depth }).upper).toBe(0);
      expect(tieLoads({ ...at, lower: 0, upper: third }).lower).toBe(0);
    }
  });

  test('a core as heavy as the mix it displaces neither floats nor sinks', () => {
    expect(floatUp({ density: 600, displaced: 0.01, mass: 6 })).toBeCloseTo(0, 12);
    expect(floatUp({ density: 600, displaced: 0.01, mass: 0 })).toBeCloseTo(58.84, 2);
  });

  test('the uplift on an inclined face is its mean pressure times the plan area', () => {
    fc.assert(
      fc.property(between(0, 2), between(0.05, 2), between(0, 1.4), (top, height, lean) => {
        const face = leaningFace({ density: 700, top, height, lean, width: 1.2 });
        const mean = headPressure({ density: 700, depth: top + height / 2 });
        const ground = height * Math.tan(lean) * 1.2;
        expect(Math.abs(face.lift - mean * ground)).toBeLessThan(1e-9 * (1 + mean * ground));
        // Sideways it is the push on an upright face of the same height.
        expect(face.sideways).toBeCloseTo(mean * height * 1.2, 6);
      }),
    );
  });

  test('the uplift on the upper half of a ball agrees with a sum over rings', () => {
    const n = 10_000;
    let lift = 0;
    for (let i = 0; i < n; i++) {
      // A ring from above, and how deep under the top of the ball it lies.
      const r = ((i + 0.5) / n) * 0.2;
      const depth = 0.2 - Math.sqrt(0.2 ** 2 - r ** 2);
      lift += headPressure({ density: 600, depth }) * 2 * Math.PI * r * (0.2 / n);
    }
    expect(upperHalfLift({ density: 600, diameter: 0.4 })).toBeCloseTo(lift, 4);
    expect(upperHalfLift({ density: 600, diameter: 0.4 })).toBeCloseTo(49.3, 1);
    expect(upperHalfLift({ density: 600, diameter: 0.6 })).toBeCloseTo(166, 0);
    expect(() => upperHalfLift({ density: 600, diameter: -0.1 })).toThrow('diameter = -0.1');
    expect(() => upperHalfLift({ density: 0, diameter: 0.4 })).toThrow('density = 0');
  });
});

describe('the panel', () => {
  const board = { thickness: 0.018, modulus: 8e9, pressure: 4000 };

  test('one span agrees with integrating the load numerically', () => {
    // EI v'''' = p, by exact sums of the beam equation at mid-span.
    const span = 0.6;
    const ei = board.modulus * (board.thickness ** 3 / 12);
    const v = (x: number) =>
      (board.pressure * x * (span ** 3 - 2 * span * x ** 2 + x ** 3)) / (24 * ei);
    expect(panelBending({ ...board, span, spans: 1 }).deflection).toBeCloseTo(v(span / 2), 12);
  });

  test('two and three spans agree with the three-moment equation and the integrated end span', () => {
    // End span with moment M at its inner support: v(x) from superposition; the maximum by search.
    const end = (m: number) => {
      let most = 0;
      for (let i = 1; i < 20_000; i++) {
        const x = i / 20_000;
        const load = (x * (1 - 2 * x ** 2 + x ** 3)) / 24;
        const hog = (m * x * (1 - x ** 2)) / 6;
        most = Math.max(most, load - hog);
      }
      return most;
    };
    expect(SPAN_CASES[2].deflection).toBeCloseTo(end(1 / 8), 5);
    expect(SPAN_CASES[3].deflection).toBeCloseTo(end(1 / 10), 5);
  });

  test('under a triangular load the deflection is the maximum of the deflection curve', () => {
    const span = 0.7;
    const ei = board.modulus * (board.thickness ** 3 / 12);
    let [most, moment] = [0, 0];
    for (let i = 1; i < 20_000; i++) {
      const x = (i / 20_000) * span;
      const v =
        (board.pressure * x * (7 * span ** 4 - 10 * span ** 2 * x ** 2 + 3 * x ** 4)) /
        (360 * span * ei);
      most = Math.max(most, v);
      moment = Math.max(moment, (board.pressure * x * (span ** 2 - x ** 2)) / (6 * span));
    }
    const bent = panelUpTheFill({ ...board, span });
    expect(bent.deflection / most).toBeCloseTo(1, 6);
    expect(bent.moment / moment).toBeCloseTo(1, 6);
  });

  test('the longest span just reaches its governing limit', () => {
    fc.assert(
      fc.property(
        between(500, 20_000),
        between(0.006, 0.03),
        fc.constantFrom(1 as const, 2 as const, 3 as const),
        (pressure, thickness, spans) => {
          const limits = { share: 1 / 300, stress: 1e7 };
          const panel = { spans, thickness, modulus: 8e9, pressure };
          const { span, by } = longestSpan({ ...panel, ...limits });
          const bent = panelBending({ ...panel, span });
          expect(
            by === 'deflection' ? bent.share / limits.share : bent.stress / limits.stress,
          ).toBeCloseTo(1, 9);
          expect(bent.share).toBeLessThanOrEqual(limits.share * (1 + 1e-9));
          expect(bent.stress).toBeLessThanOrEqual(limits.stress * (1 + 1e-9));
        },
      ),
    );
  });
});
