import { DAY } from '../../../core/quantity/constants.ts';

/**
 * How far ahead temperatures are continued, s. What is not reached in two months is not awaited.
 */
export const AHEAD = 60 * DAY;
