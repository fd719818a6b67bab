import type { Kind } from './quantity/kinds.ts';

/** The values a quantity may take, in SI. An absent end is open. */
export interface Allowed {
  readonly min?: number;
  readonly max?: number;
  /** True when `min` itself is not allowed ("more than", not "at least"). */
  readonly aboveMin?: boolean;
  /** True when `max` itself is not allowed ("less than", not "at most"). */
  readonly belowMax?: boolean;
}

export interface Refusal {
  /** The argument that was refused, by the name the function gives it. */
  readonly quantity: string;
  /** What was read, in SI. */
  readonly value: number;
  /**
   * The kind of quantity, so that a page can show it in the reader's unit. A quantity that has no
   * kind (a heat capacity, a diffusivity, a fineness, mol/kg) is refused as the nearest kind. Its
   * unit would then be wrong, so a page shows such a refusal only in words of its own (`because`).
   */
  readonly kind: Kind;
  readonly allowed: Allowed;
  /**
   * A short code for the physical reason, when it is more than a plain range:
   * 'heavier-than-base-mix', 'paste-robs-foam'. A worksheet turns it into a sentence.
   */
  readonly because?: string | undefined;
}

/** Thrown by core when an input lies outside the physical domain. It carries facts, not prose. */
export class DomainError extends RangeError implements Refusal {
  override readonly name = 'DomainError';
  readonly quantity: string;
  readonly value: number;
  readonly kind: Kind;
  readonly allowed: Allowed;
  readonly because: string | undefined;

  constructor(refusal: Refusal) {
    const { quantity, value, allowed, because } = refusal;
    super(
      `${quantity} = ${value} is not within ${JSON.stringify(allowed)}${because ? ` (${because})` : ''}`,
    );
    this.quantity = quantity;
    this.value = value;
    this.kind = refusal.kind;
    this.allowed = allowed;
    this.because = because;
  }
}

/**
 * Refuses a value outside `allowed`, and anything that is not a finite number.
 * @throws {DomainError} naming the quantity, the value and the allowed range.
 * @source none: a guard, not a formula
 */
export function demand(
  quantity: string,
  value: number,
  kind: Kind,
  allowed: Allowed,
  because?: string,
): void {
  const { min = -Infinity, max = Infinity, aboveMin = false, belowMax = false } = allowed;
  const highEnough = aboveMin ? value > min : value >= min;
  const lowEnough = belowMax ? value < max : value <= max;
  if (Number.isFinite(value) && highEnough && lowEnough) return;
  throw new DomainError({ quantity, value, kind, allowed, ...(because ? { because } : {}) });
}

/**
 * Refuses a count that is outside `allowed` or not a whole number.
 * @throws {DomainError} as `demand`; 'not-a-whole-number'
 * @source none: a guard, not a formula
 */
export function demandWhole(quantity: string, value: number, allowed: Allowed): void {
  demand(quantity, value, 'count', allowed);
  if (!Number.isInteger(value))
    throw new DomainError({
      quantity,
      value,
      kind: 'count',
      allowed,
      because: 'not-a-whole-number',
    });
}

/**
 * Thrown by core when a search did not converge: no single input is at fault, and no number is
 * better than a wrong one. Pages put this error and `DomainError` into words; any other is a bug.
 */
export class Unsettled extends Error {
  override readonly name: string = 'Unsettled';
}

/**
 * The result of a function; undefined if core refuses its input or a search did not converge. No
 * range: that of the function.
 * @throws any error but a `DomainError` or `Unsettled`
 * @source none: a guard, not a formula
 */
export function ifAllowed<T>(ask: () => T): T | undefined {
  try {
    return ask();
  } catch (error) {
    if (error instanceof DomainError || error instanceof Unsettled) return undefined;
    throw error;
  }
}
