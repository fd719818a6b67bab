import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { correlationFactor } from '../../../src/core/uncertainty/correlation.ts';
import { simulateNormal } from '../../../src/core/uncertainty/monte-carlo.ts';
import { spreadOf, symmetricInterval } from '../../../src/core/uncertainty/spread.ts';
import { studentTBelow } from '../../../src/core/uncertainty/student-t.ts';

describe('correlations', () => {
  test('refuses two fully correlated readings of which only one is correlated with a third', () => {
    const torn = [
      [1, 1, 0],
      [1, 1, 0.5],
      [0, 0.5, 1],
    ];
    expect(() => correlationFactor(torn)).toThrow(
      expect.objectContaining({
        quantity: 'correlation',
        value: -0.5,
        allowed: { min: 0 },
        because: 'cannot-all-hold',
      }),
    );
  });

  test('takes coefficients from −1 to 1 and refuses any beyond', () => {
    const pair = (r: number) => [
      [1, r],
      [r, 1],
    ];
    for (const r of [-1, 1]) expect(correlationFactor(pair(r))[1]).toEqual([r, 0]);
    for (const r of [-1.01, 1.01])
      expect(() => correlationFactor(pair(r))).toThrow(
        expect.objectContaining({ value: r, allowed: { min: -1, max: 1 } }),
      );
  });

  test('two fully correlated readings must have the same correlation with a third', () => {
    const third = (r: number) => [
      [1, 1, 0.5],
      [1, 1, r],
      [0.5, r, 1],
    ];
    expect(() => correlationFactor(third(0.5))).not.toThrow();
    for (const r of [0.51, 0.55, 0.49]) expect(() => correlationFactor(third(r))).toThrow('cannot');
  });

  test('refuses a matrix with an entry missing', () => {
    expect(() => correlationFactor([[1], []])).toThrow(DomainError);
  });
});

test('lists of means and uncertainties of different length throw an Error', () => {
  const how = { model: () => {}, results: 1, trials: 1000, seed: 1 };
  expect(() => simulateNormal({ ...how, mean: [1, 2], u: [0.1] })).toThrow(
    '2 readings, 1 uncertainties',
  );
});

test('uncertainties of independent readings add in quadrature: 3 and 4 make 5', () => {
  const { values } = simulateNormal({
    mean: [10, 20],
    u: [3, 4],
    model: (x, y) => {
      y[0] = x[0]! + x[1]!;
    },
    results: 1,
    trials: 200_000,
    seed: 7,
  });
  const { mean, sd } = spreadOf(values[0]!);
  // Standard errors of the mean and of the deviation: 5/√N and 5/√(2N); four of each.
  expect(Math.abs(mean - 30)).toBeLessThan((4 * 5) / Math.sqrt(200_000));
  expect(Math.abs(sd - 5)).toBeLessThan((4 * 5) / Math.sqrt(400_000));
});

test('the interval of one value is that value', () => {
  expect(symmetricInterval([4], 0.95)).toEqual({ low: 4, high: 4 });
});

describe('below a value of Student’s t', () => {
  test('the probability is 1 below +∞ and 0 below −∞', () => {
    const below = (t: number) => studentTBelow({ t, freedom: 3 });
    expect(below(Number.POSITIVE_INFINITY)).toBe(1);
    expect(below(Number.NEGATIVE_INFINITY)).toBe(0);
  });
  test('refuses degrees of freedom that are no whole number from 1, and a t that is NaN', () => {
    expect(() => studentTBelow({ t: 1, freedom: 2.5 })).toThrow(
      'freedom = 2.5 is not within {"min":1} (not-a-whole-number)',
    );
    expect(() => studentTBelow({ t: 1, freedom: 0 })).toThrow(DomainError);
    expect(() => studentTBelow({ t: Number.NaN, freedom: 3 })).toThrow(DomainError);
  });
});
