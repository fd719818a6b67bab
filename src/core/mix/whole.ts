/**
 * How many whole ones does so much take: bags to open, loads to mix?
 *
 * ⌈amount⌉, or `least` where that is more. A sliver over a whole number (one part in 10⁹, binary dust) takes no other.
 * Range: any amount that is not negative.
 *
 * @source none: it counts what has been worked out
 */
export const wholeOnes = (amount: number, least = 0): number =>
  Math.max(least, Math.ceil(amount * (1 - DUST)));

const DUST = 1e-9;
