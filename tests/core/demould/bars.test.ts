import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BarReadings, breakABar } from '../../../src/core/demould/break-a-bar.ts';
import { barsTogether } from '../../../src/core/demould/several-bars.ts';
import { DomainError } from '../../../src/core/domain-error.ts';
import { between } from '../arbitrary.ts';
import { expectLimits } from '../refuses.ts';

const reading = (value: number, uncertainty = 0) => ({ value, uncertainty });
const bar: BarReadings = {
  span: reading(0.3, 0.001),
  breadth: reading(0.05, 0.0005),
  depth: reading(0.05, 0.0005),
  length: reading(0.35, 0.001),
  barMass: reading(0.525, 0.005),
  hung: reading(8, 0.05),
};

describe('a broken bar', () => {
  test('own weight and load add, and overhanging ends take some weight off', () => {
    const g = 9.80665;
    const w = (0.525 * g) / 0.35;
    const own = (6 * ((w * 0.3 ** 2) / 8 - (w * 0.025 ** 2) / 2)) / (0.05 * 0.05 ** 2);
    const load = (3 * 8 * g * 0.3) / (2 * 0.05 * 0.05 ** 2);
    const { strength, ownWeight } = breakABar(bar, 'centre');
    expect(ownWeight).toBeCloseTo(own, 6);
    expect(strength).toBeCloseTo(own + load, 6);
  });

  test('third points need half as much again for the same strength', () => {
    const [centre, thirds] = (['centre', 'thirds'] as const).map((loading) => {
      const { strength, ownWeight } = breakABar(bar, loading);
      return strength - ownWeight;
    });
    expect(centre! / thirds!).toBeCloseTo(1.5, 10);
  });

  test('strength rises with the load and falls with the depth, and the variance shares sum to 1', () => {
    fc.assert(
      fc.property(between(1, 50), between(0.1, 10), (hung, more) => {
        const light = breakABar({ ...bar, hung: reading(hung, 0.05) }, 'centre');
        const heavy = breakABar({ ...bar, hung: reading(hung + more, 0.05) }, 'centre');
        expect(heavy.strength).toBeGreaterThan(light.strength);
        const sum = Object.values(light.shares).reduce((a, b) => a + b, 0);
        expect(sum).toBeCloseTo(1, 9);
      }),
    );
  });

  test('the depth enters squared, so its reading dominates the uncertainty', () => {
    const { strength, uncertainty, shares } = breakABar({ ...bar, barMass: reading(0) }, 'centre');
    // (0.5/50)·2, 0.5/50, 0.05/8 and 1/300, squared and summed by hand.
    const relative = Math.hypot(0.02, 0.01, 0.05 / 8, 1 / 300);
    expect(uncertainty / strength).toBeCloseTo(relative, 6);
    expect(shares.depth).toBe(Math.max(...Object.values(shares)));
  });

  test('a break just outside the middle third is noted, one far outside rejected', () => {
    expect(breakABar(bar, 'thirds', 0.04).notes).toEqual([]);
    expect(breakABar(bar, 'thirds', 0.06).notes).toEqual([
      { code: 'outside-third', of: 'brokeAt' },
    ]);
    expect(breakABar(bar, 'thirds', 0.07).notes).toEqual([{ code: 'throw-out', of: 'brokeAt' }]);
    expect(breakABar({ ...bar, span: reading(0.12) }, 'centre').notes).toEqual([
      { code: 'short-span', of: 'span' },
    ]);
  });

  test('a break exactly on a limit is kept, whatever the rounding error', () => {
    const sized = (span: number, depth: number) => ({
      ...bar,
      span: reading(span),
      depth: reading(depth),
      length: reading(span + 0.05),
    });
    for (const [span, depth] of [
      [0.15, 0.05],
      [0.3, 0.1],
      [0.21, 0.07],
      [0.6, 0.2],
    ] as const) {
      const broken = sized(span, depth);
      expect(breakABar(broken, 'centre').notes).toEqual([]);
      // As millimetres are read: a third point is a sixth of the span from the middle.
      expect(breakABar(broken, 'thirds', Math.round((span * 1e6) / 6) / 1e6).notes).toEqual([]);
      expect(breakABar(sized(span, depth + 0.001), 'centre').notes).toHaveLength(1);
    }
    expect(breakABar(bar, 'thirds', 0.065).notes).toEqual([
      { code: 'outside-third', of: 'brokeAt' },
    ]);
  });

  test('loaded at third points, the moment is that at the place of the break, by hand', () => {
    const g = 9.80665;
    const w = (0.525 * g) / 0.35;
    const section = 6 / (0.05 * 0.05 ** 2);
    for (const [brokeAt, arm] of [
      [0, 0.1],
      [0.05, 0.1],
      [0.06, 0.09],
    ] as const) {
      const { strength, ownWeight } = breakABar(bar, 'thirds', brokeAt);
      const own = (w * (0.15 ** 2 - brokeAt ** 2 - 0.025 ** 2)) / 2;
      expect(ownWeight).toBeCloseTo(section * own, 6);
      expect(strength - ownWeight).toBeCloseTo((section * 8 * g * arm) / 2, 6);
    }
  });

  test('loaded at the centre, the moment is that at the centre, wherever it broke', () => {
    expect(breakABar(bar, 'centre', 0.07)).toEqual(breakABar(bar, 'centre'));
  });

  test('a span of three depths and a break at the edge of the middle third are accepted', () => {
    const even = { ...bar, span: reading(0.375), depth: reading(0.125), length: reading(0.5) };
    expect(breakABar(even, 'thirds', 0.0625).notes).toEqual([]);
    expect(breakABar(even, 'thirds', 0.063).notes).toEqual([
      { code: 'outside-third', of: 'brokeAt' },
    ]);
  });

  test('refuses each reading out of range by its name, and a break outside the span', () => {
    const changed = (name: keyof BarReadings, value: number) => () =>
      breakABar({ ...bar, [name]: reading(value) }, 'thirds');
    for (const name of ['span', 'breadth', 'depth', 'length'] as const)
      expect(changed(name, 0)).toThrow(expect.objectContaining({ quantity: name, kind: 'length' }));
    for (const name of ['barMass', 'hung'] as const) {
      expect(changed(name, 0)).not.toThrow();
      expect(changed(name, -1)).toThrow(expect.objectContaining({ quantity: name, kind: 'mass' }));
    }
    expectLimits(
      ({ brokeAt }: { brokeAt: number }) => breakABar(bar, 'thirds', brokeAt),
      { brokeAt: 0.01 },
      { brokeAt: { takes: [0, 0.149], refuses: [-0.001, 0.15, 0.2] } },
    );
  });

  test('refuses a bar shorter than its span', () => {
    expect(() => breakABar({ ...bar, length: reading(0.29) }, 'centre')).toThrow(
      /shorter-than-span/,
    );
    expect(() => breakABar({ ...bar, depth: reading(0) }, 'centre')).toThrow(DomainError);
    expect(() => breakABar({ ...bar, hung: reading(1, -1) }, 'centre')).toThrow(
      /negative-uncertainty/,
    );
  });
});

describe('several bars', () => {
  const of = (...strengths: number[]) =>
    strengths.map((strength) => ({ strength, uncertainty: 0 }));

  test('the mean and ± of three bars are those worked out by hand', () => {
    const { mean, scatter, plusMinus, nextBarLow } = barsTogether(of(200e3, 220e3, 240e3));
    expect(mean).toBeCloseTo(220e3, 6);
    expect(scatter).toBeCloseTo(20e3, 6);
    // t 4.303 two-sided and 2.920 one-sided, two degrees of freedom.
    expect(plusMinus).toBeCloseTo((4.3027 * 20e3) / Math.sqrt(3), -1);
    expect(nextBarLow).toBeCloseTo(220e3 - 2.92 * 20e3 * Math.sqrt(4 / 3), -1);
  });

  test('one bar has no scatter to show', () => {
    expect(barsTogether(of(2e5))).toEqual({ mean: 2e5 });
    expect(() => barsTogether([])).toThrow(DomainError);
  });

  test('equal bars keep the uncertainty that their readings share', () => {
    const same = Array.from({ length: 9 }, () => ({ strength: 2e5, uncertainty: 1e4 }));
    expect(barsTogether(same).plusMinus).toBeCloseTo(1.96e4, 3);
  });

  test('equal bars have a scatter of 0, whatever the rounding error', () => {
    for (const strength of [224474.2185, 0.1, 1 / 3])
      for (const n of [2, 3, 6, 7]) {
        const bars = Array.from({ length: n }, () => ({ strength, uncertainty: 0 }));
        expect(barsTogether(bars).scatter).toBe(0);
      }
    expect(
      barsTogether([
        { strength: 1e5, uncertainty: 0 },
        { strength: 1e5 + 1e-4, uncertainty: 0 },
      ]).scatter,
    ).toBeGreaterThan(0);
  });

  test('tells whether the readings or the scatter contribute more', () => {
    const bars = (uncertainty: number) =>
      [200e3, 220e3, 240e3].map((strength) => ({ strength, uncertainty }));
    // 2.92 × 20 kPa × √(4/3) of scatter, 1.645 times the readings’ own.
    const even = (2.92 * 20e3 * Math.sqrt(4 / 3)) / 1.645;
    expect(barsTogether(bars(even * 1.01)).coarse).toBe(true);
    expect(barsTogether(bars(even * 0.99)).coarse).toBe(false);
    expect(barsTogether(of(2e5)).coarse).toBeUndefined();
  });

  test('the low end is 0, never negative, however wide the scatter', () => {
    expect(barsTogether(of(1e4, 9e5)).nextBarLow).toBe(0);
  });
});
