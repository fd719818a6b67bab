import { demand } from '../domain-error.ts';
import { DUST } from '../quantity/dust.ts';
import { studentT } from '../uncertainty/student-t.ts';

/**
 * Mean range of two normal values over their standard deviation: 2/√π.
 * @source nist-sematech 6.3.2 (d₂ for n = 2, from memory)
 */
export const D2 = 2 / Math.sqrt(Math.PI);
/**
 * Standard deviation of that range over σ: √(2 − 4/π).
 * @source nist-sematech 6.3.2 (d₃ for n = 2, from memory)
 */
export const D3 = Math.sqrt(2 - 4 / Math.PI);
/**
 * How many in a row on one side are no longer chance.
 * @source nelson-1984 (his second rule has nine; eight is the older rule, from memory)
 */
const LONG_RUN = 8;
/**
 * The minimum number of values for limits that are more than provisional.
 * @source common-practice
 */
const FIRM_LIMITS = 20;

export interface ControlChart {
  /** Mean of the values, in their unit. */
  readonly centre: number;
  /** Standard deviation from one batch to the next: mean moving range/d₂. */
  readonly sigma: number;
  /**
   * Half width of the 95 % interval of the long-run mean: t sigma/√n with n − 1 degrees of freedom.
   */
  readonly centreReach: number;
  /** centre ± 3 sigma. */
  readonly low: number;
  readonly high: number;
  readonly meanRange: number;
  /** A larger jump from one batch to the next is no longer chance: (1 + 3 d₃/d₂) × mean range. */
  readonly rangeHigh: number;
  /** Indices of the values outside the limits. */
  readonly beyond: readonly number[];
  /** Indices of the values that end a jump above `rangeHigh`. */
  readonly jumps: readonly number[];
  /** The last index of each run of eight or more on one side of the centre. */
  readonly runs: readonly number[];
  /** Limits from fewer than 20 values change considerably with each one added. */
  readonly provisional: boolean;
}

/**
 * Is a batch's result out of the ordinary, or within the usual variation?
 *
 * Shewhart's chart of individual values: centre = mean, limits centre ± 3 MR/d₂ with MR the mean of
 * |xᵢ − xᵢ₋₁|. The interval t σ/√n shows whether the mean itself is off, with σ = MR/d₂ counted as
 * n − 1 differences.
 *
 * @param values in the order they were made, at least two, one unit. No range is published; values
 *   that follow one another closely make the limits too narrow.
 * @throws {DomainError} fewer than two values, or one that is not finite
 * @source nist-sematech 6.3.2.2 (individuals control charts, from memory)
 */
export function controlChart(values: readonly number[]): ControlChart {
  demand('values', values.length, 'count', { min: 2 });
  for (const value of values) demand('values', value, 'count', {});
  const centre = values.reduce((sum, value) => sum + value, 0) / values.length;
  const ranges = values.slice(1).map((value, i) => Math.abs(value - values[i]!));
  const meanRange = ranges.reduce((sum, range) => sum + range, 0) / ranges.length;
  const sigma = meanRange / D2;
  const low = centre - 3 * sigma;
  const high = centre + 3 * sigma;
  const rangeHigh = meanRange * (1 + (3 * D3) / D2);
  const places = (of: readonly number[], wild: (x: number) => boolean, shift = 0) =>
    of.flatMap((x, i) => (wild(x) ? [i + shift] : []));
  // Equal values cannot be outside the limits; rounding error must not decide.
  const dust = DUST * Math.max(...values.map(Math.abs), meanRange);
  return {
    centre,
    sigma,
    centreReach:
      (studentT({ freedom: values.length - 1, confidence: 0.95 }) * sigma) /
      Math.sqrt(values.length),
    low,
    high,
    meanRange,
    rangeHigh,
    beyond: places(values, (x) => x < low - dust || x > high + dust),
    jumps: places(ranges, (range) => range > rangeHigh + dust, 1),
    runs: longRuns(values.map((x) => (Math.abs(x - centre) <= dust ? 0 : Math.sign(x - centre)))),
    provisional: values.length < FIRM_LIMITS,
  };
}

function longRuns(sides: readonly number[]): number[] {
  const ends: number[] = [];
  let length = 0;
  for (const [i, side] of sides.entries()) {
    length = side === 0 ? 0 : side === sides[i - 1] ? length + 1 : 1;
    if (length >= LONG_RUN && sides[i + 1] !== side) ends.push(i);
  }
  return ends;
}
