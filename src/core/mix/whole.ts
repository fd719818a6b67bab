import { justOver, justUnder, SLIVER } from '../quantity/dust.ts';

/**
 * How many whole units cover an amount: bags to open, loads to mix?
 *
 * ⌈amount⌉, or `least` if that is more. An excess of one part in 10⁹ (rounding error) does not take
 * another. Range: any amount that is not negative.
 *
 * @source none: it counts what has been worked out
 */
export const wholeOnes = (amount: number, least = 0): number =>
  Math.max(least, Math.ceil(justUnder(amount, SLIVER)));

/**
 * How many whole units does an amount fill: bags emptied, buckets of foam?
 *
 * ⌊amount⌋. A unit short by one part in 10⁹ (rounding error) is full. Range: any amount that is not
 * negative.
 *
 * @source none: it counts what has been worked out
 */
export const wholeFilled = (amount: number): number => Math.floor(justOver(amount, SLIVER));
