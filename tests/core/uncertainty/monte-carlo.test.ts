import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { correlationFactor } from '../../../src/core/uncertainty/correlation.ts';
import {
  arcsine,
  curvedTrapezoid,
  gaussian,
  rectangular,
  scaledT,
} from '../../../src/core/uncertainty/distributions.ts';
import { simulate, simulateNormal } from '../../../src/core/uncertainty/monte-carlo.ts';
import { normalFrom, randomFrom } from '../../../src/core/uncertainty/random.ts';
import {
  histogram,
  shareWithin,
  spreadOf,
  symmetricInterval,
} from '../../../src/core/uncertainty/spread.ts';

const one = (distribution: Parameters<typeof simulate>[0]['inputs'][number], seed = 1) =>
  simulate({
    inputs: [distribution],
    model: (x, y) => {
      y[0] = x[0]!;
    },
    results: 1,
    trials: 200_000,
    seed,
  }).values[0]!;

describe('the random streams', () => {
  test('the same seed gives the same numbers, another gives others', () => {
    const take = (seed: number) => {
      const random = randomFrom(seed);
      return Array.from({ length: 5 }, () => random());
    };
    expect(take(7)).toEqual(take(7));
    expect(take(7)).not.toEqual(take(8));
  });

  test('uniform numbers fill every tenth equally, normal ones have mean 0 and standard deviation 1', () => {
    const random = randomFrom(3);
    const tenths = new Array<number>(10).fill(0);
    for (let i = 0; i < 100_000; i++) tenths[Math.floor(random() * 10)]!++;
    // Five standard deviations of a binomial count.
    for (const count of tenths) expect(Math.abs(count - 10_000)).toBeLessThan(5 * Math.sqrt(9_000));
    const normal = normalFrom(randomFrom(4));
    let [sum, squares, fourth] = [0, 0, 0];
    for (let i = 0; i < 100_000; i++) {
      const z = normal();
      sum += z;
      squares += z ** 2;
      fourth += z ** 4;
    }
    expect(Math.abs(sum / 1e5)).toBeLessThan(0.016);
    expect(Math.abs(squares / 1e5 - 1)).toBeLessThan(0.023);
    expect(Math.abs(fourth / 1e5 - 3)).toBeLessThan(0.16);
  });
});

describe('distributions have the deviation their definition gives', () => {
  test.each([
    ['normal', gaussian(5, 2), 5, 2],
    ['rectangular', rectangular(-1, 3), 1, 4 / Math.sqrt(12)],
    ['arcsine', arcsine(-1, 3), 1, 4 / Math.sqrt(8)],
    [
      'curved trapezoid',
      curvedTrapezoid({ low: -1, high: 1, slack: 0.5 }),
      0,
      Math.sqrt(4 / 12 + 0.25 / 9),
    ],
    ['scaled t', scaledT({ mean: 10, scale: 1, freedom: 18 }), 10, Math.sqrt(18 / 16)],
  ] as const)('%s', (_, distribution, mean, sd) => {
    const spread = spreadOf(one(distribution));
    expect(Math.abs(spread.mean - mean)).toBeLessThan((5 * sd) / Math.sqrt(200_000));
    expect(Math.abs(spread.sd / sd - 1)).toBeLessThan(0.01);
  });
});

describe('readings that err together', () => {
  test('the Cholesky factor times its transpose is the matrix', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 9, maxLength: 9 }),
        (cells) => {
          // Any rows of unit length give coefficients that can hold at once.
          const rows = [0, 1, 2].map((i) => {
            const row = cells.slice(3 * i, 3 * i + 3);
            const size = Math.hypot(...row);
            return size < 1e-3 ? [1, 0, 0] : row.map((c) => c / size);
          });
          const r = rows.map((a, i) =>
            rows.map((b, j) =>
              i === j
                ? 1
                : Math.max(
                    -1,
                    Math.min(
                      1,
                      a.reduce((s, ai, k) => s + ai * b[k]!, 0),
                    ),
                  ),
            ),
          );
          const l = correlationFactor(r);
          for (let i = 0; i < 3; i++)
            for (let j = 0; j < 3; j++)
              expect(l[i]!.reduce((s, a, k) => s + a * l[j]![k]!, 0)).toBeCloseTo(r[i]![j]!, 3);
        },
      ),
    );
  });

  test('refuses correlation coefficients that are not positive semidefinite', () => {
    const r = [
      [1, 0.9, -0.9],
      [0.9, 1, 0.9],
      [-0.9, 0.9, 1],
    ];
    expect(() => correlationFactor(r)).toThrow('cannot-all-hold');
  });

  test('the difference of two fully correlated readings has no uncertainty', () => {
    const together = (r: number) =>
      spreadOf(
        simulateNormal({
          mean: [10, 4],
          u: [1, 1],
          factor: correlationFactor([
            [1, r],
            [r, 1],
          ]),
          model: (x, y) => {
            y[0] = x[0]! - x[1]!;
          },
          results: 1,
          trials: 20_000,
          seed: 1,
        }).values[0]!,
      ).sd;
    expect(together(1)).toBeLessThan(1e-9);
    expect(together(0)).toBeCloseTo(Math.SQRT2, 1);
    expect(together(-1)).toBeCloseTo(2, 1);
  });
});

describe('what is read off the trials', () => {
  test('shares, interval and histogram agree with each other', () => {
    const values = one(gaussian(0, 1));
    expect(shareWithin(values, { low: -1, high: 1 })).toBeCloseTo(0.6827, 2);
    const { low, high } = symmetricInterval(values, 0.95);
    expect(shareWithin(values, { low, high })).toBeCloseTo(0.95, 4);
    const bins = histogram(values, { low: -10, high: 10, bins: 40 });
    expect(bins.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  test('trials that the model refuses or answers with NaN are left out and counted', () => {
    const { values, impossible } = simulate({
      inputs: [rectangular(-1, 1)],
      model: (x, y) => {
        y[0] = x[0]! > 0 ? 1 : Number.NaN;
      },
      results: 1,
      trials: 1000,
      seed: 1,
    });
    expect(values[0]!.length + impossible).toBe(1000);
    expect(impossible).toBeGreaterThan(400);
    expect(() => spreadOf([])).toThrow('no-trials');
  });
});
