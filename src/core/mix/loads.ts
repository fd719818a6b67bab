import { demand, demandWhole } from '../domain-error.ts';
import { demandAmount } from '../extremes.ts';
import { justOver, SLIVER } from '../quantity/dust.ts';
import { wholeFilled, wholeOnes } from './whole.ts';

/** The amounts of a batch to divide: kg and m³. A `Proportion` has all of these. */
export interface BatchAmounts {
  readonly volume: number;
  readonly cement: number;
  readonly water: number;
  readonly sand: number;
  readonly foamMass: number;
  readonly foamVolume: number;
  readonly baseMass: number;
  readonly baseVolume: number;
}

export interface Loads {
  /** Equal loads the batch is made in. */
  readonly count: number;
  /** Amounts of one load, kg and m³. */
  readonly each: BatchAmounts;
  /** Foam for one load in buckets: whole ones, then the remaining share of one. */
  readonly foamBuckets: { readonly whole: number; readonly part: number };
}

/**
 * Splits a batch into the fewest equal loads a mixer takes.
 *
 * `largestLoad` is the blended mix the mixer holds, m³; `foamBucket` the volume foam is measured
 * out in, m³. count = ⌈volume / largestLoad⌉, or `least` if that is more. An excess of one part in
 * 10⁹ (rounding error) does not make another load.
 *
 * @throws {DomainError} for a mixer or a bucket that holds nothing, or more than 10,000 loads.
 * @source none: it shares out what has been worked out
 */
export function mixerLoads(plan: {
  readonly batch: BatchAmounts;
  readonly largestLoad: number;
  readonly foamBucket: number;
  /** The minimum number of loads; 1 if omitted. */
  readonly least?: number;
}): Loads {
  const { batch, largestLoad, foamBucket, least = 1 } = plan;
  demandAmount('volume', batch.volume, 'volume');
  demandAmount('foamBucket', foamBucket, 'volume');
  demand('largestLoad', largestLoad, 'volume', { min: batch.volume / 10_000 });
  demandWhole('least', least, { min: 1, max: 10_000 });
  const count = wholeOnes(batch.volume / largestLoad, least);
  const share = 1 / count;
  return {
    count,
    each: {
      volume: batch.volume * share,
      cement: batch.cement * share,
      water: batch.water * share,
      sand: batch.sand * share,
      foamMass: batch.foamMass * share,
      foamVolume: batch.foamVolume * share,
      baseMass: batch.baseMass * share,
      baseVolume: batch.baseVolume * share,
    },
    foamBuckets: inBuckets(batch.foamVolume * share, foamBucket),
  };
}

/**
 * The number of equal loads at which each piece is filled from one load: the fewest that the mixer
 * takes and that divide the `pieces`, all alike, evenly. `volume` of the mix for all of them and
 * the mixer's `largestLoad`, m³. Undefined if one piece takes more than a load. Range: any number
 * of pieces.
 * @source none: it shares out what has been worked out
 */
export function loadsOfWholePieces(plan: {
  readonly pieces: number;
  readonly volume: number;
  readonly largestLoad: number;
}): number | undefined {
  const { pieces, volume, largestLoad } = plan;
  for (let loads = 1; loads <= pieces; loads++)
    if (pieces % loads === 0 && volume / loads <= justOver(largestLoad, SLIVER)) return loads;
  return undefined;
}

/**
 * The number of equal loads among which pieces of several sizes can be divided with none filled
 * from two; any divisor of it works too. `sizes`: how many of each, and the volume of one, m³;
 * `spare`: the mix beyond them all, m³. It is the greatest common divisor of their numbers; the
 * smallest sizes do not count if the spare mix gives each of that many loads room for one more of
 * each. Range: any number of sizes from one.
 * @source none: it shares out what has been worked out
 */
export function evenLoads(
  sizes: readonly { readonly count: number; readonly volume: number }[],
  spare: number,
): number {
  let rest = sizes.reduce((sum, { volume }) => sum + volume, 0);
  let loads = 0;
  for (const { count, volume } of sizes.toSorted((a, b) => b.volume - a.volume)) {
    loads = commonDivisor(count, loads);
    rest -= volume;
    if (rest * loads <= spare) break;
  }
  return loads;
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

/**
 * An amount of foam in buckets: whole ones, then the remaining share of one. Volumes in the same
 * unit; a bucket short by one part in 10⁹ is full.
 * @source none: it shares out what has been worked out
 */
export function inBuckets(volume: number, bucket: number): Loads['foamBuckets'] {
  const buckets = volume / bucket;
  const whole = wholeFilled(buckets);
  return { whole, part: Math.max(0, buckets - whole) };
}
