import { HOUR } from '../../../core/quantity/constants.ts';

/**
 * The share of its liquid past which a foam is too thin-walled to be stirred in whole, past which what is left is no
 * foam to add, and from which it has no weight to reckon with. Common practice, no source; the others are choices.
 */
export const DRAINED = { thin: 0.25, gone: 0.5, all: 0.99 } as const;

/** No foam of this trade keeps three quarters of its liquid so long, s: the unit is doubted first. From memory. */
export const STANDS_MOST = 4 * HOUR;
