import { DAY } from '../../../core/quantity/constants.ts';
import { HOURS } from '../words/amounts.ts';

/** How far ahead temperatures are carried, s: what is not reached in two months is not waited for. */
export const AHEAD = 60 * DAY;

/** How long ago it was cast, wherever that is asked. */
export const SINCE_CASTING = {
  example: '24 h',
  max: `${AHEAD / DAY} d`,
  units: HOURS,
  bench: 'part.sinceCasting',
} as const;
