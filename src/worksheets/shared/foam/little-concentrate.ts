import type { FoamingSolution } from '../../../core/foam/solution.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { SMALL_MASS, SMALL_VOLUME } from '../words/amounts.ts';
import { WEIGHABLE } from '../words/weighable.ts';

/** A note on an amount of concentrate that is too small for a kitchen scale. */
export const littleConcentrate = (
  { concentrateMass, concentrateVolume }: FoamingSolution,
  say: Say,
): readonly string[] =>
  concentrateMass < WEIGHABLE
    ? [
        `A kitchen scale hardly shows ${say(concentrateMass, 'mass', { units: SMALL_MASS, significant: 2 })} of concentrate: measure ${say(concentrateVolume, 'volume', { units: SMALL_VOLUME, significant: 2 })} with a syringe, or mix solution for several batches of the day at once.`,
      ]
    : [];
