import { HOUR } from '../../../core/quantity/constants.ts';

/**
 * Shares of a foam’s liquid that have drained: past `thin` its walls are too thin for it to be stirred in whole (common
 * practice, no source); past `gone` what is left is no foam to add, and from `all` on it has no weight to reckon with
 * (choices, both).
 */
export const DRAINED = { thin: 0.25, gone: 0.5, all: 0.99 } as const;

/** No foam of this trade keeps three quarters of its liquid so long, s: the unit is doubted first. From memory. */
export const STANDS_MOST = 4 * HOUR;
