import { justOver, justUnder, SLIVER } from '../quantity/dust.ts';

/**
 * How many whole ones does so much take: bags to open, loads to mix?
 *
 * ⌈amount⌉, or `least` where that is more. A sliver over a whole number (one part in 10⁹, binary dust) takes no other.
 * Range: any amount that is not negative.
 *
 * @source none: it counts what has been worked out
 */
export const wholeOnes = (amount: number, least = 0): number =>
  Math.max(least, Math.ceil(justUnder(amount, SLIVER)));

/**
 * How many whole ones does so much fill: bags emptied, buckets of foam?
 *
 * ⌊amount⌋. What lacks a sliver (one part in 10⁹, binary dust) is full. Range: any amount that is not negative.
 *
 * @source none: it counts what has been worked out
 */
export const wholeFilled = (amount: number): number => Math.floor(justOver(amount, SLIVER));
