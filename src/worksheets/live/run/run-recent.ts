import { HOUR } from '../../../core/quantity/constants.ts';

/** For so long, ms, work at the bench may still be going on: it may run past midnight. */
export const RECENT = 12 * HOUR * 1000;

/** Whether a moment, ms, is no longer ago, or on a clock set back to come. */
export const isRecent = (moment: number, now = Date.now()): boolean =>
  Math.abs(now - moment) < RECENT;
