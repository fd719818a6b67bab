import { demand, demandWhole } from '../domain-error.ts';
import { select } from './select.ts';

/** Statistics of a simulated result, in its own unit. */
export interface Spread {
  readonly mean: number;
  /** Standard deviation: the standard uncertainty of the result. */
  readonly sd: number;
}

/**
 * Mean and standard deviation of simulated values. No range: a statistic.
 *
 * @param values at least two, in any order and any unit, which is that of the results
 * @throws {DomainError} for fewer than two values ('no-trials')
 * @source jcgm-101 7.6 (mean, standard deviation, divisor M − 1)
 */
export function spreadOf(values: readonly number[]): Spread {
  const size = values.length;
  demand('trials', size, 'count', { min: 2 }, 'no-trials');
  // Sums relative to one of the values keep their digits.
  const about = values[size >> 1]!;
  const [sum, squares] = gapSums(values, about);
  const variance = Math.max(0, (squares - (sum * sum) / size) / (size - 1));
  return { mean: about + sum / size, sd: Math.sqrt(variance) };
}

/**
 * The sums of the values' distances from one of them, and of their squares. Apart from `spreadOf`:
 * where V8 (13.6 to 14.6) compiles a long loop while it runs, the object made right behind it may
 * hold the same two numbers as the next one made there, and the ± of a batch was that of its yield.
 */
function gapSums(values: readonly number[], about: number): [number, number] {
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < values.length; i++) {
    const gap = values[i]! - about;
    sum += gap;
    squares += gap * gap;
  }
  return [sum, squares];
}

/**
 * The interval that excludes the same share at both ends. No range: a statistic.
 *
 * @param coverage the share inside, above 0 and below 1: 0.95
 * @throws {DomainError} for a coverage outside 0–1, or no values
 * @source jcgm-101 7.7
 */
export function symmetricInterval(
  values: readonly number[],
  coverage: number,
): { readonly low: number; readonly high: number } {
  demand('coverage', coverage, 'ratio', { min: 0, max: 1, aboveMin: true, belowMax: true });
  demand('trials', values.length, 'count', { min: 1 }, 'no-trials');
  const parted = values.slice();
  return {
    low: quantile(parted, (1 - coverage) / 2),
    high: quantile(parted, (1 + coverage) / 2),
  };
}

/**
 * The share of the trials between two values, inclusive: the odds, 0–1. No range: a statistic.
 *
 * @throws {DomainError} for no values or ends in the wrong order
 * @source jcgm-101 7.5 (the discrete representation)
 */
export function shareWithin(
  values: readonly number[],
  band: { readonly low: number; readonly high: number },
): number {
  demand('trials', values.length, 'count', { min: 1 }, 'no-trials');
  demand('high', band.high, 'count', { min: band.low });
  const { low, high } = band;
  let inside = 0;
  for (let i = 0; i < values.length; i++) if (values[i]! >= low && values[i]! <= high) inside++;
  return inside / values.length;
}

/**
 * The number of values in each of `bins` equal intervals between two ends; values outside are
 * ignored.
 */
export interface Bin {
  readonly from: number;
  readonly to: number;
  readonly share: number;
}

/**
 * A histogram of simulated values as shares of all of them.
 *
 * @throws {DomainError} for no values, bins that are not a whole number from 1 to 1000, or ends in
 *   the wrong order
 * @source none: it counts values
 */
export function histogram(
  values: readonly number[],
  { low, high, bins }: { readonly low: number; readonly high: number; readonly bins: number },
): readonly Bin[] {
  demand('trials', values.length, 'count', { min: 1 }, 'no-trials');
  demand('high', high, 'count', { min: low, aboveMin: true });
  demandWhole('bins', bins, { min: 1, max: 1000 });
  const edge = (i: number) => low + ((high - low) * i) / bins;
  const found = new Float64Array(bins);
  for (const value of values) {
    if (!(value >= low && value < high)) continue;
    // The quotient may choose a neighbouring bin by rounding; the edges decide.
    let bin = Math.floor(((value - low) / (high - low)) * bins);
    if (value < edge(bin)) bin--;
    else if (value >= edge(bin + 1)) bin++;
    found[bin]!++;
  }
  return Array.from(found, (count, i) => ({
    from: edge(i),
    to: edge(i + 1),
    share: count / values.length,
  }));
}

/**
 * The value below which a share of the values lies, interpolated between neighbours; reorders the
 * values.
 */
function quantile(values: number[], share: number): number {
  const place = share * (values.length - 1);
  const below = Math.floor(place);
  const low = select(values, below);
  // After the selection the values behind are no smaller, so the next one is their minimum.
  let next = values[below + 1] ?? low;
  for (let i = below + 2; i < values.length; i++) if (values[i]! < next) next = values[i]!;
  return low + (place - below) * (next - low);
}
