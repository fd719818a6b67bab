import { HOURS } from './amounts.ts';

/** How long ago it was cast, wherever that is asked: temperatures are carried no further than two months. */
export const SINCE_CASTING = {
  example: '24 h',
  max: '60 d',
  units: HOURS,
  bench: 'part.sinceCasting',
} as const;
