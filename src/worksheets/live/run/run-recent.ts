import { HOUR } from '../../../core/quantity/constants.ts';

/** How long work at the bench may go on, ms; it may run past midnight. */
export const RECENT = 12 * HOUR * 1000;

/**
 * Whether a time, ms, is no longer ago than that; also a future one, after a clock was set back.
 */
export const isRecent = (moment: number, now = Date.now()): boolean =>
  Math.abs(now - moment) < RECENT;
