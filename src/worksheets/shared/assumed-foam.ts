import { type KeptResults, keptValue } from '../../bench/entries.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { FOAM } from './amounts.ts';

/** Where the density of a foam that is only assumed lies on the bench, so that what takes it can say so. */
export const ASSUMED_FOAM = 'foam.assumed';

/** What is said of a foam, kg/m³, that lies on the bench as only assumed. */
export const assumedDoubt = (foam: number, kept: KeptResults, say: Say): Judgement | undefined =>
  keptValue(kept[ASSUMED_FOAM]) === foam
    ? {
        verdict: 'look',
        say: `Weigh the foam before the base mix is made: its ${say(foam, 'density', { units: FOAM })} is only assumed.`,
      }
    : undefined;
