import { demand } from '../domain-error.ts';

/**
 * Factor from the median absolute deviation of normal values to their standard deviation:
 * 1/Φ⁻¹(3/4).
 * @source rousseeuw-croux-1993 (from memory)
 */
const MAD_TO_SIGMA = 1.4826;
/**
 * Robust deviations from the median beyond which a value is pulled in.
 * @source huber-1981 (a usual choice, from memory)
 */
const PULL_AT = 2.5;
/** The minimum number of values in which an outlier can be recognised. @source common-practice */
const ENOUGH_TO_JUDGE = 4;

/**
 * The middle value; the mean of the two middle ones for an even number.
 * @param values at least one, any unit, which is that of the result. No range: order alone.
 * @throws {DomainError} for no values, or one that is not finite
 * @source definition
 */
export function median(values: readonly number[]): number {
  demand('values', values.length, 'count', { min: 1 });
  for (const value of values) demand('values', value, 'count', {});
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/**
 * A standard deviation that is robust against one outlier: 1.4826 × the median distance from the
 * median. No range: a statistic.
 * @param values at least one, any unit. For normal values it estimates σ; up to half may be wild.
 * @throws {DomainError} for no values, or one that is not finite
 * @source rousseeuw-croux-1993 (from memory)
 */
export function robustDeviation(values: readonly number[]): number {
  const middle = median(values);
  return MAD_TO_SIGMA * median(values.map((value) => Math.abs(value - middle)));
}

export interface PulledIn {
  readonly values: readonly number[];
  /** Indices of the outliers that were moved to the edge. */
  readonly moved: readonly number[];
}

/**
 * Values clamped to 2.5 robust deviations from the median, so that one spoiled batch counts, but no
 * more than a poor one. No range: a statistic.
 *
 * @param values any number, one unit; fewer than four are left as they are
 * @param least the deviation is never taken as smaller than this, same unit, so that equal readings
 *   do not make the next one wild
 * @throws {DomainError} for a value that is not finite, or a negative `least`
 * @source huber-1981 (metric winsorizing, from memory)
 */
export function pullIn(values: readonly number[], least: number): PulledIn {
  demand('least', least, 'count', { min: 0 });
  if (values.length < ENOUGH_TO_JUDGE) return { values, moved: [] };
  const middle = median(values);
  const reach = PULL_AT * Math.max(robustDeviation(values), least);
  const inside = values.map((value) => Math.min(middle + reach, Math.max(middle - reach, value)));
  return { values: inside, moved: inside.flatMap((value, i) => (value === values[i] ? [] : [i])) };
}
