import { expect, test } from 'vitest';
import { secondOrder } from '../../../src/core/uncertainty/second-order.ts';

// Normal readings of mean m and deviation u have E x² = m² + u² and E x⁴ = m⁴ + 6m²u² + 3u⁴; the terms
// of the next order leave out only the highest power of u.

test('a cube has nearly the deviation of its exact distribution', () => {
  const [m, u] = [10, 1];
  // Var x³ = 9m⁴u² + 36m²u⁴ + 15u⁶, of which first order is the first term.
  const exact = 9 * m ** 4 * u ** 2 + 36 * m ** 2 * u ** 4 + 15 * u ** 6;
  const { mean, u: found } = secondOrder(([x]) => x! ** 3, [m], [u]);
  expect(Math.abs(found ** 2 / exact - 1)).toBeLessThan(5e-4);
  expect(mean).toBeCloseTo(m ** 3 + 3 * m * u ** 2, 9);
});

test('a reading times the square of another has nearly its exact deviation', () => {
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

test('a reading that is sure brings nothing', () => {
  const f = ([x, y]: readonly number[]) => x! * y! ** 3;
  expect(secondOrder(f, [2, 3], [0.1, 0])).toEqual({
    value: 54,
    mean: expect.closeTo(54, 12),
    u: expect.closeTo(2.7, 12),
  });
});

test('readings that err together carry what their distribution carries', () => {
  // E xy = m n + r u v; Var xy = m²v² + n²u² + 2 r m n u v + u²v²(1 + r²), by the fourth moments of two normals.
  const [m, n, u, v] = [10, 12, 1, 1.5];
  for (const r of [-1, -0.9, 0, 0.4, 1]) {
    const found = secondOrder(
      ([x, y]) => x! * y!,
      [m, n],
      [u, v],
      [
        [1, r],
        [r, 1],
      ],
    );
    const variance =
      (m * v) ** 2 + (n * u) ** 2 + 2 * r * m * n * u * v + (u * v) ** 2 * (1 + r * r);
    expect(found.value).toBe(120);
    expect(found.mean).toBeCloseTo(m * n + r * u * v, 9);
    expect(found.u ** 2).toBeCloseTo(variance, 8);
  }
  expect(() =>
    secondOrder(
      ([x]) => x!,
      [1, 1],
      [1, 1],
      [
        [1, 2],
        [2, 1],
      ],
    ),
  ).toThrow('correlation');
});

test('one that is sure brings nothing though its error goes with another’s', () => {
  const asked: number[] = [];
  const f = ([x, y]: readonly number[]) => {
    asked.push(y!);
    return x! * y!;
  };
  const pair = [
    [1, 0.5],
    [0.5, 1],
  ];
  expect(secondOrder(f, [2, 3], [0.1, 0], pair).u).toBeCloseTo(0.3, 12);
  expect(new Set(asked)).toEqual(new Set([3]));
});

test('bending is found from near by: the fourth power hardly sways it', () => {
  // E x⁴ = m⁴ + 6m²u² + 3u⁴, of which the last is left out.
  const { mean } = secondOrder(([x]) => x! ** 4, [10], [1]);
  expect(Math.abs(mean - 10_600)).toBeLessThan(0.1);
});

test('a model is asked for no point twice, and nowhere for a reading that is sure', () => {
  const points = (u: readonly number[], correlation?: readonly (readonly number[])[]) => {
    const asked: string[] = [];
    const f = (x: readonly number[]) => {
      asked.push(x.join(' '));
      return x[0]! * x[1]! ** 2 * x[2]!;
    };
    secondOrder(f, [4, 8, 16], u, correlation);
    expect(new Set(asked).size).toBe(asked.length);
    return asked.length;
  };
  // Itself, four along each reading in doubt, and four about it for each pair of them.
  expect(points([0.5, 0.25, 1])).toBe(1 + 3 * 4 + 3 * 4);
  expect(points([0.5, 0, 1])).toBe(1 + 2 * 4 + 4);
  const alone = [
    [1, 0.5, 0],
    [0.5, 1, 0],
    [0, 0, 1],
  ];
  expect(points([0.5, 0, 0], alone)).toBe(1 + 4);
  expect(points([0.5, 0, 1], alone)).toBe(1 + 2 * 4 + 4);
});
