import { DomainError, demand, Unsettled } from '../domain-error.ts';

export interface FirstOrder {
  /** f(x), in the unit of f. */
  readonly value: number;
  /** The combined standard uncertainty, in the unit of f. */
  readonly u: number;
  /** |cᵢ uᵢ| for each input: its contribution alone, in the unit of f. */
  readonly parts: readonly number[];
}

export type Model = (x: readonly number[]) => number;

/** The step of the differences, as a share of the input's uncertainty. */
const STEP = 1e-3;
/**
 * The smallest step as a share of the input itself: with less, differences lose too many digits.
 */
const LEAST_STEP = 6e-6;

/**
 * How do the uncertainties of independent readings propagate to a result? To first order, by the
 * law of propagation of uncertainty: u²(y) = Σᵢ (cᵢ uᵢ)² with cᵢ = ∂f/∂xᵢ.
 *
 * `f` is the model; `x` its inputs and `u` their standard uncertainties, in the same units. The
 * slopes are central differences over a thousandth of uᵢ (never more than half of it), so `f` is
 * evaluated only for values that the readings themselves allow. If `f` refuses one side (a reading
 * at the edge of its domain), the slope is taken from the other: by a parabola through two steps
 * there or, if `f` refuses the second, by a line through one.
 *
 * Exact if `f` is linear. No range is published. If the slope changes over ±uᵢ, the result is too
 * small (GUM 5.1.2, note); if it vanishes at x, the result is 0 although y is not certain.
 * @throws {DomainError} when an uncertainty is negative or not finite.
 * @throws {RangeError} when the lists differ in length.
 * @throws whatever `f` throws at `x`; its refusal if it refuses both sides of it; and from either
 *   side any error that is not a `DomainError` or `Unsettled`.
 * @source jcgm-100 5.1.2, equation (10); 5.1.3, note 2 (numerical slopes)
 */
export function firstOrder(f: Model, x: readonly number[], u: readonly number[]): FirstOrder {
  const { value, signed } = contributions(f, x, u);
  return { value, u: Math.hypot(...signed), parts: signed.map(Math.abs) };
}

/**
 * f(x), and the contribution of each input with the sign of its slope, cᵢ uᵢ, in the unit of f.
 * Arguments, range and refusals as `firstOrder`.
 * @throws {DomainError | RangeError} as `firstOrder`.
 * @source jcgm-100 5.1.3, note 2
 */
export function contributions(
  f: Model,
  x: readonly number[],
  u: readonly number[],
): { readonly value: number; readonly signed: readonly number[] } {
  if (u.length !== x.length) throw new RangeError(`${x.length} inputs, ${u.length} uncertainties`);
  for (const ui of u) demand('uncertainty', ui, 'count', { min: 0 });
  const value = f(x);
  return {
    value,
    signed: x.map((_, i) => (u[i] === 0 ? 0 : slope(f, x, i, u[i]!, value) * u[i]!)),
  };
}

function slope(f: Model, x: readonly number[], i: number, u: number, value: number): number {
  const h = Math.max(STEP * u, Math.min(u / 2, LEAST_STEP * Math.abs(x[i]!)));
  // The step that was actually added, after rounding.
  const up = x[i]! + h - x[i]!;
  // An uncertainty below the last digit of its reading contributes nothing that could be shown.
  if (up === 0) return 0;
  const at = (steps: number) => f(x.map((xi, k) => (k === i ? xi + steps * up : xi)));
  const above = attempt(() => at(1));
  const below = attempt(() => at(-1));
  if (above.ok && below.ok) return (above.value - below.value) / (2 * up);
  const side = below.ok ? -1 : 1;
  const near = below.ok ? below : above;
  if (!near.ok) throw near.error;
  const far = attempt(() => at(2 * side));
  const rise = far.ok ? 4 * near.value - 3 * value - far.value : 2 * (near.value - value);
  return (side * rise) / (2 * up);
}

type Attempt =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly error: DomainError | Unsettled };

function attempt(ask: () => number): Attempt {
  try {
    return { ok: true, value: ask() };
  } catch (error) {
    // Any other error is a bug and must not be taken for the edge of the domain.
    if (error instanceof DomainError || error instanceof Unsettled) return { ok: false, error };
    throw error;
  }
}
