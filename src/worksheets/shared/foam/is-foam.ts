import { STANDARD_FOAM_BAND } from '../../../core/foam/standard-band.ts';
import { WET_FOAM } from '../../../core/foam/wet-foam.ts';

/**
 * The range of densities that can be a foam, kg/m³. A lighter one is probably a slip in a reading;
 * a denser one is less than three quarters gas. A choice: no source gives these limits.
 */
export const ANY_FOAM = { min: STANDARD_FOAM_BAND.min / 2, max: 250 } as const;

/**
 * Foam lighter than this, kg/m³, is fragile under a drill mixer; one maker works at about 80.
 * Common practice, no source.
 */
export const LIGHT_FOAM = 70;

/**
 * The ± of an assumed foam density, kg/m³. A weighing with a wider ± tells no more than the
 * assumption. Common practice, no source.
 */
export const AS_ASSUMED = 15;

/** Whether a density, kg/m³, can be that of a foam. */
export const isFoam = (density: number): boolean =>
  density >= ANY_FOAM.min && density <= ANY_FOAM.max;

/** What is wrong with a foam of this density, kg/m³, and the verdict; undefined if nothing is. */
export function foamFault(density: number) {
  if (!isFoam(density)) return { is: 'hardly', verdict: 'stop' } as const;
  if (density < STANDARD_FOAM_BAND.min) return { is: 'thin', verdict: 'stop' } as const;
  return density > WET_FOAM ? ({ is: 'wet', verdict: 'look' } as const) : undefined;
}
