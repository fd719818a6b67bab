import { demand } from '../domain-error.ts';
import { correlationFactor } from './correlation.ts';

export interface SecondOrder {
  /** f(x), in the unit of f. */
  readonly value: number;
  /** f(x) with the shift that bending gives the mean: f + ½ Σ ∂²f/∂xᵢ² uᵢ². */
  readonly mean: number;
  /** Standard uncertainty with the terms of the next higher order, in the unit of f. */
  readonly u: number;
}

type Model = (x: readonly number[]) => number;

/** Differences are taken this share of uᵢ apart: wide enough to keep digits, narrow enough to be slopes. */
const STEP = 0.25;

/**
 * How far uncertainties carry when the model bends: first order plus the terms of the next order
 * for independent normal readings,
 * u² = Σ cᵢ² uᵢ² + ΣΣ [½ (∂²f/∂xᵢ∂xⱼ)² + ∂f/∂xᵢ · ∂³f/∂xᵢ∂xⱼ²] uᵢ² uⱼ².
 *
 * Derivatives are central differences over a quarter of uᵢ, so `f` is asked for values up to half a
 * uᵢ away. Exact for products of two readings; no range is published. Readings that err together, by
 * the coefficients rᵢⱼ of `correlation`, are made of independent ones z, each 0 ± 1, x + u·(L z) with
 * L Lᵀ = r, and the terms are those of z.
 *
 * @throws {DomainError} when an uncertainty is negative, or no readings can err together so; whatever
 *   `f` throws nearby
 * @throws {RangeError} when the lists differ in length
 * @source jcgm-100 5.1.2, note (the terms); the shift of the mean is Taylor's series
 */
export function secondOrder(
  f: Model,
  x: readonly number[],
  u: readonly number[],
  correlation?: readonly (readonly number[])[],
): SecondOrder {
  if (u.length !== x.length) throw new RangeError(`${x.length} inputs, ${u.length} uncertainties`);
  for (const ui of u) demand('uncertainty', ui, 'count', { min: 0 });
  if (correlation) {
    const factor = correlationFactor(correlation);
    const made = (z: readonly number[]) =>
      x.map((xi, i) => {
        const row = factor[i]!;
        let moved = 0;
        for (let j = 0; j <= i; j++) moved += row[j]! * z[j]!;
        return xi + u[i]! * moved;
      });
    // One that moves no reading in doubt is sure.
    const moves = x.map((_, j) => (factor.some((row, i) => row[j]! * u[i]! !== 0) ? 1 : 0));
    return secondOrder(
      (z) => f(made(z)),
      x.map(() => 0),
      moves,
    );
  }
  const value = f(x);
  const places = x.map((_, i) => i).filter((i) => u[i]! > 0);
  // In steps of STEP × uᵢ from x; every derivative comes out times its uᵢ at once. Each point serves several.
  const known = new Map<string, number>();
  const at = (i: number, steps: number, j = i, more = 0): number => {
    // With j = i the moves add up: two steps, none, and two steps back.
    if (i === j && more !== 0) return at(i, steps + more);
    if (i > j) return at(j, more, i, steps);
    if (steps === 0) return value;
    const key = `${i} ${steps} ${j} ${more}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const moved = [...x];
    moved[i] = moved[i]! + steps * STEP * u[i]!;
    moved[j] = moved[j]! + more * STEP * u[j]!;
    const asked = f(moved);
    known.set(key, asked);
    return asked;
  };
  const slope = (i: number) => (at(i, 1) - at(i, -1)) / (2 * STEP);
  const bend = (i: number, j: number) =>
    i === j
      ? (at(i, 1) - 2 * value + at(i, -1)) / STEP ** 2
      : (at(i, 1, j, 1) - at(i, 1, j, -1) - at(i, -1, j, 1) + at(i, -1, j, -1)) / (4 * STEP ** 2);
  const third = (i: number, j: number) =>
    (at(i, 1, j, 1) -
      2 * at(i, 1) +
      at(i, 1, j, -1) -
      at(i, -1, j, 1) +
      2 * at(i, -1) -
      at(i, -1, j, -1)) /
    (2 * STEP ** 3);

  let [variance, shift] = [0, 0];
  for (const i of places) {
    const ci = slope(i);
    variance += ci ** 2;
    shift += bend(i, i) / 2;
    for (const j of places) variance += bend(i, j) ** 2 / 2 + ci * third(i, j);
  }
  return { value, mean: value + shift, u: Math.sqrt(Math.max(0, variance)) };
}
