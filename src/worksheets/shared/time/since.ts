import { DAY } from '../../../core/quantity/constants.ts';
import { HOURS } from '../words/amounts.ts';

/**
 * How far ahead temperatures are continued, s. What is not reached in two months is not awaited.
 */
export const AHEAD = 60 * DAY;

/** Options that every field for the time since casting shares. */
export const SINCE_CASTING = {
  example: '24 h',
  max: `${AHEAD / DAY} d`,
  units: HOURS,
  bench: 'part.sinceCasting',
} as const;
