import { demand } from '../domain-error.ts';
import type { Model } from './first-order.ts';

export interface SecondOrder {
  /** f(x), in the unit of f. */
  readonly value: number;
  /** f(x) with the shift of the mean due to curvature: f + ½ Σ ∂²f/∂xᵢ² uᵢ². */
  readonly mean: number;
  /** Standard uncertainty with the terms of the next higher order, in the unit of f. */
  readonly u: number;
}

/**
 * Step of the differences, as a share of uᵢ: wide enough to keep digits, narrow enough to
 * approximate derivatives.
 */
const STEP = 0.25;

/**
 * How uncertainties propagate through a curved model: first order and the terms of the next order,
 * for independent normal readings, u² = Σ cᵢ² uᵢ² + ΣΣ [½ (∂²f/∂xᵢ∂xⱼ)² + ∂f/∂xᵢ · ∂³f/∂xᵢ∂xⱼ²] uᵢ²
 * uⱼ².
 *
 * Arguments as `firstOrder`. Derivatives are central differences over a quarter of uᵢ, so `f` is
 * evaluated up to half a uᵢ away. Exact for products of two readings; no range is published. A
 * third derivative opposed to the slope may outweigh everything else: then these terms are too few,
 * and there is no u.
 *
 * @throws {DomainError} when an uncertainty is negative; when `f` gives no number nearby
 *   ('outcome'); when the terms come to less than nothing ('variance', 'bends-too-much'); whatever
 *   `f` throws nearby
 * @throws {RangeError} when the lists differ in length
 * @source jcgm-100 5.1.2, note (the terms); the shift of the mean is Taylor's series
 */
export function secondOrder(f: Model, x: readonly number[], u: readonly number[]): SecondOrder {
  if (u.length !== x.length) throw new RangeError(`${x.length} inputs, ${u.length} uncertainties`);
  for (const ui of u) demand('uncertainty', ui, 'count', { min: 0 });
  // Each point serves several derivatives, so evaluations are cached.
  const known = new Map<string, number>();
  /** f at so many steps from x along i, and along j; for i = j the steps add up. */
  const at = (i: number, steps: number, j = i, more = 0): number => {
    const moved = [...x];
    if (i === j) moved[i] = x[i]! + (steps + more) * STEP * u[i]!;
    else {
      moved[i] = x[i]! + steps * STEP * u[i]!;
      moved[j] = x[j]! + more * STEP * u[j]!;
    }
    const key = moved.join(' ');
    const found = known.get(key) ?? f(moved);
    demand('outcome', found, 'count', {});
    known.set(key, found);
    return found;
  };
  const value = at(0, 0);
  // Every derivative is already multiplied by its uᵢ.
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

  const places = x.map((_, i) => i).filter((i) => u[i]! > 0);
  let [variance, shift] = [0, 0];
  for (const i of places) {
    const ci = slope(i);
    variance += ci ** 2;
    shift += bend(i, i) / 2;
    for (const j of places) variance += bend(i, j) ** 2 / 2 + ci * third(i, j);
  }
  demand('variance', variance, 'count', { min: 0 }, 'bends-too-much');
  return { value, mean: value + shift, u: Math.sqrt(variance) };
}
