import { DAY } from '../../../core/quantity/constants.ts';
import { HOURS } from '../words/amounts.ts';
import { SinceCast } from './SinceCast.tsx';
import { AHEAD } from './since.ts';

/** Options that every field for the time since casting shares. */
export const SINCE_CASTING = {
  example: '24 h',
  max: `${AHEAD / DAY} d`,
  units: HOURS,
  bench: 'part.sinceCasting',
  offers: SinceCast,
} as const;
