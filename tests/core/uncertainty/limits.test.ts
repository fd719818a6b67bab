import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { correlationFactor } from '../../../src/core/uncertainty/correlation.ts';
import {
  arcsine,
  curvedTrapezoid,
  type Distribution,
  gaussian,
  rectangular,
  scaledT,
} from '../../../src/core/uncertainty/distributions.ts';
import { simulate, simulateNormal } from '../../../src/core/uncertainty/monte-carlo.ts';
import {
  histogram,
  shareWithin,
  spreadOf,
  symmetricInterval,
} from '../../../src/core/uncertainty/spread.ts';
import { studentT } from '../../../src/core/uncertainty/student-t.ts';
import { expectLimits } from '../refuses.ts';

const ofPlace = (values: readonly number[]) => {
  let place = 0;
  return () => values[place++]!;
};
/** One draw from streams that are known. */
const draw = (from: Distribution, even: readonly number[], normal: readonly number[] = []) =>
  from(ofPlace(even), ofPlace(normal));

describe('one draw', () => {
  test('has the value that its formula gives for the numbers drawn', () => {
    expect(draw(gaussian(10, 2), [], [-1.5])).toBe(7);
    expect([0, 0.25, 1].map((e) => draw(rectangular(2, 6), [e]))).toEqual([2, 3, 6]);
    const swing = [0, 0.25, 0.75].map((e) => draw(arcsine(2, 6), [e]));
    [4, 6, 2].forEach((value, i) => {
      expect(swing[i]).toBeCloseTo(value, 12);
    });
    // 3² + 4² = 25 over two degrees of freedom; then 5 × √(2/25).
    expect(draw(scaledT({ mean: 1, scale: 10, freedom: 2 }), [], [3, 4, 5])).toBeCloseTo(
      1 + 10 * Math.SQRT2,
      12,
    );
  });

  test('of a curved trapezoid lies between ends that both move outwards or both inwards', () => {
    const at = (ends: number, between: number) =>
      draw(curvedTrapezoid({ low: 2, high: 6, slack: 0.5 }), [ends, between]);
    expect([at(0, 0), at(0, 1)]).toEqual([1.5, 6.5]);
    expect([at(1, 0), at(1, 1)]).toEqual([2.5, 5.5]);
    expect(at(0.3, 0.5)).toBeCloseTo(4, 12);
  });

  test('refuses ends out of order and a negative scatter', () => {
    const ends = { low: 2, high: 6 };
    const order = { high: { takes: [2], refuses: [1.9] } };
    expectLimits(({ low, high }: typeof ends) => rectangular(low, high), ends, order);
    expectLimits(({ low, high }: typeof ends) => arcsine(low, high), ends, order);
    expectLimits(
      curvedTrapezoid,
      { ...ends, slack: 0 },
      { ...order, slack: { takes: [0, 2], refuses: [-0.1, 2.1] } },
    );
    expectLimits(
      ({ u }: { u: number }) => gaussian(1, u),
      { u: 1 },
      {
        u: { takes: [0], refuses: [-1], as: 'uncertainty' },
      },
    );
    expectLimits(
      ({ scale, freedom }: { scale: number; freedom: number }) =>
        scaledT({ mean: 1, scale, freedom }),
      { scale: 1, freedom: 3 },
      { scale: { takes: [0], refuses: [-1] }, freedom: { takes: [1], refuses: [0, 2.5] } },
    );
  });
});

describe('trials', () => {
  const how = { model: () => {}, results: 1, seed: 1 };
  const limits = { trials: { takes: [100], refuses: [99, 5_000_001] } };
  test('number from 100 to 5,000,000', () => {
    expectLimits(
      (t: { trials: number }) => simulate({ ...how, ...t, inputs: [] }),
      { trials: 200 },
      limits,
    );
    expectLimits(
      (t: { trials: number }) => simulateNormal({ ...how, ...t, mean: [1], u: [0] }),
      { trials: 200 },
      limits,
    );
    const doubtful = { ...how, trials: 200, mean: [1] };
    expect(() => simulateNormal({ ...doubtful, u: [-1] })).toThrow('uncertainty');
  });
});

test('a value on an edge counts in the histogram bar above it, whatever its rounding error', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e3, max: 1e3, noNaN: true }),
      fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
      fc.integer({ min: 1, max: 60 }),
      (low, width, bins) => {
        const high = low + width;
        const edges = histogram([0], { low, high, bins }).map(({ from }) => from);
        const counted = histogram([...edges, high], { low, high, bins });
        // One on each lower edge; the upper end of all lies outside.
        expect(counted.map(({ share }) => Math.round(share * (bins + 1)))).toEqual(
          edges.map(() => 1),
        );
      },
    ),
  );
});

describe('what the trials say', () => {
  const four = [1, 2, 3, 4];

  test('the mean, standard deviation and interval are those worked out by hand', () => {
    const { mean, sd } = spreadOf(four);
    expect(mean).toBe(2.5);
    expect(sd).toBeCloseTo(Math.sqrt(5 / 3), 12);
    // A quarter lies at place 0.25 × 3 = 0.75 between 1 and 2.
    expect(symmetricInterval(four, 0.5)).toEqual({ low: 1.75, high: 3.25 });
  });

  test('a band includes both its ends, a histogram bar not its upper edge', () => {
    const share = (low: number, high: number) => shareWithin(four, { low, high });
    expect([share(2, 3), share(2.1, 2.9), share(0, 9), share(2, 2)]).toEqual([0.5, 0, 1, 0.25]);
    const bars = histogram(four, { low: 1, high: 4, bins: 3 });
    expect(bars.map((bar) => bar.share)).toEqual([0.25, 0.25, 0.25]);
    expect(bars.map(({ from, to }) => [from, to])).toEqual([
      [1, 2],
      [2, 3],
      [3, 4],
    ]);
  });

  test('a value one rounding step below an edge counts in the bar below', () => {
    const below = 1 - 2 ** -53;
    expect((below / 3) * 3).toBe(1);
    const bars = histogram([below], { low: 0, high: 3, bins: 3 });
    expect(bars.map(({ share }) => share)).toEqual([1, 0, 0]);
  });

  test('refuses no trials, one trial for a scatter, and bands and confidences out of range', () => {
    const none: number[] = [];
    expect(() => spreadOf([1])).toThrow('no-trials');
    expect(spreadOf([1, 1]).sd).toBe(0);
    expect(() => symmetricInterval(none, 0.9)).toThrow('no-trials');
    expect(() => shareWithin(none, { low: 0, high: 1 })).toThrow('no-trials');
    expect(() => histogram(none, { low: 0, high: 1, bins: 2 })).toThrow('no-trials');
    const share = { refuses: [0, 1, -0.1, 1.1] };
    expectLimits(
      ({ coverage }: { coverage: number }) => symmetricInterval(four, coverage),
      { coverage: 0.9 },
      {
        coverage: share,
      },
    );
    const band = { low: 1, high: 4 };
    expectLimits((b: typeof band) => shareWithin(four, b), band, {
      high: { takes: [1], refuses: [0.9] },
    });
    expectLimits(
      (b: typeof band & { bins: number }) => histogram(four, b),
      { ...band, bins: 3 },
      {
        high: { refuses: [1, 0.9] },
        bins: { takes: [1, 1000], refuses: [0, 1001, 2.5] },
      },
    );
    expectLimits(
      studentT,
      { freedom: 3, confidence: 0.95 },
      {
        freedom: { takes: [1], refuses: [0, 1.5] },
        confidence: share,
      },
    );
  });
});

describe('errors together', () => {
  test('the Cholesky factor of two readings is the one worked out by hand', () => {
    expect(
      correlationFactor([
        [1, 0.6],
        [0.6, 1],
      ]),
    ).toEqual([
      [1, 0],
      [0.6, 0.8],
    ]);
    expect(
      correlationFactor([
        [1, -1],
        [-1, 1],
      ]),
    ).toEqual([
      [1, 0],
      [-1, 0],
    ]);
    expect(() =>
      correlationFactor([
        [1, 1.01],
        [1.01, 1],
      ]),
    ).toThrow(/^correlation/);
    expect(() =>
      correlationFactor([
        [1, -1.01],
        [-1.01, 1],
      ]),
    ).toThrow(/^correlation/);
  });

  test('three readings cannot all have a correlation below −0.5 with each other', () => {
    const opposed = (r: number) =>
      correlationFactor([
        [1, r, r],
        [r, 1, r],
        [r, r, 1],
      ]);
    expect(() => opposed(-0.5)).not.toThrow();
    expect(() => opposed(-0.501)).toThrow(/cannot-all-hold/);
  });
});
