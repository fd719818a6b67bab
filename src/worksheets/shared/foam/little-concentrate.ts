import type { FoamingSolution } from '../../../core/foam/solution.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { SMALL_MASS, SMALL_VOLUME } from '../words/amounts.ts';

/** Of less than this, kg, a gram is more than a twentieth. A choice: no source. */
const LITTLE = 0.02;

/** So little concentrate that a kitchen scale misses the dose. */
export const littleConcentrate = (
  { concentrateMass, concentrateVolume }: FoamingSolution,
  say: Say,
): readonly string[] =>
  concentrateMass < LITTLE
    ? [
        `${say(concentrateMass, 'mass', { units: SMALL_MASS, significant: 2 })} of concentrate is too little for a kitchen scale: measure ${say(concentrateVolume, 'volume', { units: SMALL_VOLUME, significant: 2 })} with a syringe, or mix solution for several batches of the day at once.`,
      ]
    : [];
