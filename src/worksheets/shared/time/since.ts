import { DAY } from '../../../core/quantity/constants.ts';

/** How far ahead temperatures are carried, s: what is not reached in two months is not waited for. */
export const AHEAD = 60 * DAY;
