import { DAY } from '../../../core/quantity/constants.ts';
import { HOURS } from '../words/amounts.ts';
import { SinceCast } from './SinceCast.tsx';
import { AHEAD } from './since.ts';

/** How long ago it was cast, wherever that is asked. */
export const SINCE_CASTING = {
  example: '24 h',
  max: `${AHEAD / DAY} d`,
  units: HOURS,
  bench: 'part.sinceCasting',
  offers: SinceCast,
} as const;
