import { firstOrder } from '../uncertainty/first-order.ts';

/** One reading: its value and its standard uncertainty, in the same unit. */
export interface Reading {
  readonly value: number;
  readonly uncertainty: number;
}

/**
 * Uncertainty of a result of named independent readings, to first order. Range as `firstOrder`.
 * @returns the value, its standard uncertainty, and the share of the variance that each reading
 *   contributes, 0–1
 * @throws {DomainError} for a negative uncertainty, and whatever `f` throws
 * @source jcgm-100
 */
export function fromReadings<K extends string>(
  readings: Readonly<Record<K, Reading>>,
  f: (values: Readonly<Record<K, number>>) => number,
): { readonly value: number; readonly uncertainty: number; readonly shares: Record<K, number> } {
  const names = Object.keys(readings) as K[];
  const byName = (x: readonly number[]) =>
    Object.fromEntries(names.map((name, i) => [name, x[i]!])) as Record<K, number>;
  const { value, u, parts } = firstOrder(
    (x) => f(byName(x)),
    names.map((name) => readings[name].value),
    names.map((name) => readings[name].uncertainty),
  );
  const squared = parts.map((part) => (u === 0 ? 0 : (part / u) ** 2));
  return { value, uncertainty: u, shares: byName(squared) };
}
