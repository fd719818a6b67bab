import { HOUR } from '../../../core/quantity/constants.ts';

/**
 * Limits on the share of a foam’s liquid that has drained. Above `thin` the bubble walls are too
 * thin to survive stirring (common practice, no source). Above `gone` the rest is not worth adding,
 * and from `all` on it weighs too little to calculate with (both are choices).
 */
export const DRAINED = { thin: 0.25, gone: 0.5, all: 0.99 } as const;

/**
 * No foam in this trade takes longer than this, s, to lose a quarter of its liquid. A longer time
 * is probably in the wrong unit. From memory.
 */
export const STANDS_MOST = 4 * HOUR;
