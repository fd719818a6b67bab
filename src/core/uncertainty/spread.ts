import { demand } from '../domain-error.ts';

/** What a simulated result is like, in its own unit. */
export interface Spread {
  readonly mean: number;
  /** Standard deviation: the standard uncertainty of the result. */
  readonly sd: number;
}

/**
 * Mean and standard deviation of simulated values.
 *
 * @param values at least two, in any order
 * @throws {DomainError} for fewer than two values ('no-trials')
 * @source jcgm-101 7.6 (mean, standard deviation, divisor M − 1)
 */
export function spreadOf(values: Float64Array): Spread {
  const size = values.length;
  demand('trials', size, 'count', { min: 2 }, 'no-trials');
  // Sums about a value among them keep their digits.
  const about = values[size >> 1]!;
  let [sum, squares] = [0, 0];
  for (let i = 0; i < size; i++) {
    const gap = values[i]! - about;
    sum += gap;
    squares += gap * gap;
  }
  const variance = Math.max(0, (squares - (sum * sum) / size) / (size - 1));
  return { mean: about + sum / size, sd: Math.sqrt(variance) };
}

/**
 * The interval that leaves out the same share at both ends.
 *
 * @param coverage the share inside, above 0 and below 1: 0.95
 * @throws {DomainError} for a coverage outside 0–1, or no values
 * @source jcgm-101 7.7
 */
export function symmetricInterval(
  sorted: Float64Array,
  coverage: number,
): { readonly low: number; readonly high: number } {
  demand('coverage', coverage, 'ratio', { min: 0, max: 1, aboveMin: true, belowMax: true });
  return {
    low: quantile(sorted, (1 - coverage) / 2),
    high: quantile(sorted, (1 + coverage) / 2),
  };
}

/**
 * The share of the trials that landed between two values, ends counted: the odds, 0–1.
 *
 * @throws {DomainError} for no values or ends in the wrong order
 * @source jcgm-101 7.5 (the discrete representation)
 */
export function shareWithin(
  sorted: Float64Array,
  band: { readonly low: number; readonly high: number },
): number {
  demand('trials', sorted.length, 'count', { min: 1 }, 'no-trials');
  demand('high', band.high, 'count', { min: band.low });
  return (firstAbove(sorted, band.high) - firstFrom(sorted, band.low)) / sorted.length;
}

/** How many values fall in each of `bins` equal parts between two ends; what lies outside is left out. */
export interface Bin {
  readonly from: number;
  readonly to: number;
  readonly share: number;
}

/**
 * A histogram of simulated values as shares of all of them.
 *
 * @throws {DomainError} for no values, fewer than one bin, or ends in the wrong order
 * @source none: it counts values
 */
export function histogram(
  sorted: Float64Array,
  { low, high, bins }: { readonly low: number; readonly high: number; readonly bins: number },
): readonly Bin[] {
  demand('trials', sorted.length, 'count', { min: 1 }, 'no-trials');
  demand('high', high, 'count', { min: low, aboveMin: true });
  demand('bins', bins, 'count', { min: 1, max: 1000 });
  const edge = (i: number) => low + ((high - low) * i) / bins;
  return Array.from({ length: Math.floor(bins) }, (_, i) => ({
    from: edge(i),
    to: edge(i + 1),
    share: (firstFrom(sorted, edge(i + 1)) - firstFrom(sorted, edge(i))) / sorted.length,
  }));
}

/** The value below which a share of the sorted values lies, between neighbours in proportion. */
function quantile(sorted: Float64Array, share: number): number {
  demand('trials', sorted.length, 'count', { min: 1 }, 'no-trials');
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below]!;
  return low + (place - below) * ((sorted[below + 1] ?? low) - low);
}

/** The first place whose value is at least `value`. */
const firstFrom = (sorted: Float64Array, value: number) => search(sorted, (x) => x >= value);
/** The first place whose value is above `value`. */
const firstAbove = (sorted: Float64Array, value: number) => search(sorted, (x) => x > value);

function search(sorted: Float64Array, past: (x: number) => boolean): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (past(sorted[middle]!)) high = middle;
    else low = middle + 1;
  }
  return low;
}
