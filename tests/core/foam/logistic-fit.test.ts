import fc from 'fast-check';
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { describe, expect, test } from 'vitest';
import { fitLogistic, moveTogether } from '../../../src/core/foam/logistic-fit.ts';
import { normal } from './seeded.ts';

const logistic =
  ([u = 0, n = 0]: readonly number[]) =>
  (x: number) =>
    1 / (1 + Math.exp(-n * (x - u)));

const squaresOf = (x: readonly number[], v: readonly number[], constants: readonly number[]) =>
  x.reduce((sum, at, i) => sum + (v[i]! - logistic(constants)(at)) ** 2, 0);

/** Readings about a curve, as `fitDrainage` gives them to the fit. */
const jars = fc
  .record({
    u: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
    n: fc.double({ min: 0.6, max: 4, noNaN: true }),
    error: fc.constantFrom(0, 0.003, 0.01),
    count: fc.integer({ min: 5, max: 12 }),
    seed: fc.integer({ min: 1, max: 1e6 }),
  })
  .map(({ u, n, error, count, seed }) => {
    const noise = normal(seed);
    const x = Array.from({ length: count }, (_, i) => -1.2 + (2.4 * i) / (count - 1));
    return { x, v: x.map((at) => logistic([u, n])(at) + error * noise()) };
  });

describe('the logistic nearest to some readings', () => {
  test('agrees with a library’s Levenberg–Marquardt fit', () => {
    fc.assert(
      fc.property(jars, ({ x, v }) => {
        const fit = fitLogistic(x, v)!;
        const { parameterValues } = levenbergMarquardt({ x: [...x], y: v }, logistic, {
          initialValues: [0, 1.5],
          damping: 1e-3,
          maxIterations: 200,
          errorTolerance: 1e-18,
          gradientDifference: 1e-6,
          centralDifference: true,
        });
        expect(fit.u).toBeCloseTo(parameterValues[0]!, 4);
        expect(fit.n).toBeCloseTo(parameterValues[1]!, 4);
        expect(fit.squares).toBeLessThanOrEqual(squaresOf(x, v, parameterValues) + 1e-12);
      }),
    );
  });

  test('no neighbouring curve has a smaller sum of squares', () => {
    fc.assert(
      fc.property(jars, ({ x, v }) => {
        const { u, n, squares } = fitLogistic(x, v)!;
        for (const [du, dn] of [
          [1e-3, 0],
          [-1e-3, 0],
          [0, 1e-3],
          [0, -1e-3],
          [1e-3, 1e-3],
        ])
          expect(squaresOf(x, v, [u + du!, n + dn!])).toBeGreaterThan(squares);
      }),
    );
  });

  test('its shift with a common relative error agrees with a refit', () => {
    fc.assert(
      fc.property(jars, ({ x, v }) => {
        const move = moveTogether(fitLogistic(x, v)!, x, v);
        const step = 1e-3;
        const [more, less] = [1 + step, 1 - step].map(
          (share) =>
            fitLogistic(
              x,
              v.map((value) => share * value),
            )!,
        );
        for (const of of ['u', 'n'] as const) {
          const refitted = (more![of] - less![of]) / (2 * step);
          expect(Math.abs(move[of] - refitted)).toBeLessThan(1e-3 * (0.1 + Math.abs(refitted)));
        }
      }),
    );
  });

  test('is found for exponents from 0.02 to 60 only', () => {
    const found = (n: number) => {
      // As wide as the curve itself: from 12 % drained to 88 %.
      const x = [-2, -1, -0.4, 0.4, 1, 2].map((at) => at / n);
      return fitLogistic(x, x.map(logistic([0, n])))?.n;
    };
    expect(found(0.021)).toBeCloseTo(0.021, 6);
    expect(found(59)).toBeCloseTo(59, 3);
    expect(found(0.019)).toBeUndefined();
    expect(found(61)).toBeUndefined();
  });

  test('is undefined where a jump or equal readings leave the constants undetermined', () => {
    expect(fitLogistic([-1, -0.5, 0.5, 1], [0, 0, 1, 1])).toBeUndefined();
    expect(fitLogistic([-1, -0.5, 0.5, 1], [1, 1, 1, 1])).toBeUndefined();
  });
});
