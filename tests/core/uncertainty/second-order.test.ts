import fc from 'fast-check';
import { expect, test } from 'vitest';
import { secondOrder } from '../../../src/core/uncertainty/second-order.ts';

// Normal readings of mean m and deviation u have E x² = m² + u² and E x⁴ = m⁴ + 6m²u² + 3u⁴; the terms
// of the next order leave out only the highest power of u.

test('the cube of a reading has nearly the exact standard deviation', () => {
  const [m, u] = [10, 1];
  // Var x³ = 9m⁴u² + 36m²u⁴ + 15u⁶, of which first order is the first term.
  const exact = 9 * m ** 4 * u ** 2 + 36 * m ** 2 * u ** 4 + 15 * u ** 6;
  const { mean, u: found } = secondOrder(([x]) => x! ** 3, [m], [u]);
  expect(Math.abs(found ** 2 / exact - 1)).toBeLessThan(5e-4);
  expect(mean).toBeCloseTo(m ** 3 + 3 * m * u ** 2, 9);
});

test('a reading times the square of another has nearly the exact standard deviation', () => {
  const [x, y, ux, uy] = [10, 12, 1, 1.5];
  const square = y ** 2 + uy ** 2;
  const exact =
    (x ** 2 + ux ** 2) * (y ** 4 + 6 * y ** 2 * uy ** 2 + 3 * uy ** 4) - (x * square) ** 2;
  for (const turned of [false, true]) {
    const f = ([a, b]: readonly number[]) => (turned ? b! * a! ** 2 : a! * b! ** 2);
    const found = turned ? secondOrder(f, [y, x], [uy, ux]) : secondOrder(f, [x, y], [ux, uy]);
    expect(Math.abs(found.u ** 2 / exact - 1)).toBeLessThan(5e-4);
    expect(found.mean).toBeCloseTo(x * square, 9);
  }
});

test('a reading without uncertainty contributes nothing', () => {
  const f = ([x, y]: readonly number[]) => x! * y! ** 3;
  expect(secondOrder(f, [2, 3], [0.1, 0])).toEqual({
    value: 54,
    mean: expect.closeTo(54, 12),
    u: expect.closeTo(2.7, 12),
  });
});

test('the second derivative is taken close to the reading: a fourth power hardly changes it', () => {
  // E x⁴ = m⁴ + 6m²u² + 3u⁴, of which the last is left out.
  const { mean } = secondOrder(([x]) => x! ** 4, [10], [1]);
  expect(Math.abs(mean - 10_600)).toBeLessThan(0.1);
});

test('a model is evaluated at no point twice, and not varied in a reading without uncertainty', () => {
  const points = (u: readonly number[]) => {
    const asked: string[] = [];
    const f = (x: readonly number[]) => {
      asked.push(x.join(' '));
      return x[0]! * x[1]! ** 2 * x[2]!;
    };
    secondOrder(f, [4, 8, 16], u);
    expect(new Set(asked).size).toBe(asked.length);
    return asked.length;
  };
  // Itself, four along each reading in doubt, and four about it for each pair of them.
  expect(points([0.5, 0.25, 1])).toBe(1 + 3 * 4 + 3 * 4);
  expect(points([0.5, 0, 1])).toBe(1 + 2 * 4 + 4);
});

test('a variance that the second-order terms make negative gives no ±', () => {
  // Of x − x³ about nothing, u² = 1 − 6 u² with u = 1; its exact variance is 1 − 6 + 15.
  expect(() => secondOrder(([x]) => x! - x! ** 3, [0], [1])).toThrow(
    expect.objectContaining({ quantity: 'variance', because: 'bends-too-much' }),
  );
  expect(secondOrder(([x]) => x! - x! ** 3, [0], [0.1]).u).toBeCloseTo(0.1 * Math.sqrt(0.94), 3);
});

test('a model that refuses the readings or a point near them is refused by name', () => {
  const upTo = (edge: number) => (x: readonly number[]) => (x[0]! < edge ? x[0]! ** 2 : Number.NaN);
  const refused = expect.objectContaining({ quantity: 'outcome' });
  expect(() => secondOrder(upTo(1), [1], [0.2])).toThrow(refused);
  // Half a ± away it is asked.
  expect(() => secondOrder(upTo(1), [0.91], [0.2])).toThrow(refused);
  expect(secondOrder(upTo(1), [0.89], [0.2]).mean).toBeCloseTo(0.89 ** 2 + 0.04, 12);
});

test('refuses lists of different length and a negative uncertainty', () => {
  const sum = ([x, y]: readonly number[]) => x! + y!;
  expect(() => secondOrder(sum, [1, 2], [0.1])).toThrow('2 inputs, 1 uncertainties');
  expect(() => secondOrder(sum, [1, 2], [0.1, -1])).toThrow('uncertainty');
});

test('a product of two readings is exact: u² = y²u²x + x²u²y + u²x u²y', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -10, max: 10, noNaN: true }),
      fc.double({ min: -10, max: 10, noNaN: true }),
      fc.double({ min: 0.01, max: 5, noNaN: true }),
      fc.double({ min: 0.01, max: 5, noNaN: true }),
      (x, y, ux, uy) => {
        const { u, mean } = secondOrder(([a, b]) => a! * b!, [x, y], [ux, uy]);
        expect(u).toBeCloseTo(
          Math.sqrt(y ** 2 * ux ** 2 + x ** 2 * uy ** 2 + ux ** 2 * uy ** 2),
          6,
        );
        expect(mean).toBeCloseTo(x * y, 6);
      },
    ),
  );
});

test('the square of a reading has exactly the mean and standard deviation of its distribution', () => {
  const { u, mean } = secondOrder(([a]) => a! ** 2, [0.05], [0.005]);
  expect(mean).toBeCloseTo(0.05 ** 2 + 0.005 ** 2, 12);
  expect(u).toBeCloseTo(Math.sqrt(4 * 0.05 ** 2 * 0.005 ** 2 + 2 * 0.005 ** 4), 12);
});
