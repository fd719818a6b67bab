import { STANDARD_FOAM_BAND } from '../../../core/foam/standard-band.ts';
import { WET_FOAM } from '../../../core/foam/wet-foam.ts';

/**
 * What may be foam at all, kg/m³. Lighter is sooner a slip in a reading; denser has less than three quarters
 * of gas in it. A choice: no source draws these lines.
 */
export const ANY_FOAM = { min: STANDARD_FOAM_BAND.min / 2, max: 250 } as const;

/** Foam lighter than this, kg/m³, is thin for a drill: one maker’s working point is about 80. Common practice, no source. */
export const LIGHT_FOAM = 70;

/** The ± of a foam that is only assumed, kg/m³: a weighing no surer tells no more. Common practice, no source. */
export const AS_ASSUMED = 15;

/** Whether it is a foam at all that is weighed so, kg/m³. */
export const isFoam = (density: number): boolean =>
  density >= ANY_FOAM.min && density <= ANY_FOAM.max;

/** What is wrong with a foam of that density, kg/m³, and how much that says, whichever worksheet asks. */
export function foamFault(density: number) {
  if (!isFoam(density)) return { is: 'hardly', verdict: 'stop' } as const;
  if (density < STANDARD_FOAM_BAND.min) return { is: 'thin', verdict: 'stop' } as const;
  return density > WET_FOAM ? ({ is: 'wet', verdict: 'look' } as const) : undefined;
}
