import { DomainError, demand, Unsettled } from '../domain-error.ts';

export interface FirstOrder {
  /** f(x), in the unit of f. */
  readonly value: number;
  /** The combined standard uncertainty, in the unit of f. */
  readonly u: number;
  /** |cᵢ uᵢ| for each input: what it would bring alone, in the unit of f. */
  readonly parts: readonly number[];
}

export type Model = (x: readonly number[]) => number;

/** The share of an input's uncertainty by which it is moved to find its slope. */
const STEP = 1e-3;
/** The least step as a share of the input itself, where differences lose half their digits. */
const LEAST_STEP = 6e-6;

/**
 * How far the uncertainties of some independent readings carry through to a result, to first order: the
 * law of propagation of uncertainty,
 * u²(y) = Σᵢ (cᵢ uᵢ)² with cᵢ = ∂f/∂xᵢ.
 *
 * `f` is the model; `x` its inputs and `u` their standard uncertainties, in the same units. The slopes are
 * central differences over a thousandth of uᵢ (never more than half of it), so `f` is asked only for values
 * that the readings themselves allow. Where `f` refuses one side (a reading at the edge of its domain),
 * the slope is taken from the other, by a parabola through two steps there, or a line through one where `f`
 * refuses the second.
 *
 * Exact when `f` is linear. No range is published; where the slope changes over ±uᵢ the result is
 * too small (GUM 5.1.2, note), and where it vanishes it is 0 although the result is not certain.
 * @throws {DomainError} when an uncertainty is negative or not finite.
 * @throws {RangeError} when the lists differ in length.
 * @throws whatever `f` throws at `x`, or refuses on both sides of it; and anything but a `DomainError` or
 * `Unsettled` from either side.
 * @source jcgm-100 5.1.2, equation (10); 5.1.3, note 2 (numerical slopes)
 */
export function firstOrder(f: Model, x: readonly number[], u: readonly number[]): FirstOrder {
  const { value, signed } = contributions(f, x, u);
  return { value, u: Math.hypot(...signed), parts: signed.map(Math.abs) };
}

/**
 * f(x), and what the uncertainty of each input brings alone with the sign of its slope, cᵢ uᵢ, in the unit of f.
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
  // The step as it survives the addition, not as it was meant.
  const up = x[i]! + h - x[i]!;
  // An uncertainty lost in the last digit of its reading brings nothing that could be shown.
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
    // A fault of the program is no edge of the domain: half a slope would hide it.
    if (error instanceof DomainError || error instanceof Unsettled) return { ok: false, error };
    throw error;
  }
}
