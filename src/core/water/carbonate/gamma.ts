import { logGammaDavies, logGammaExtended, logGammaNeutral } from './activity.ts';
import { SPECIES } from './species.ts';
import type { System } from './system.ts';

/**
 * ln γ of every species at an ionic strength in mol/kg, in the order of SPECIES. Ranges as the formulas
 * of `activity.ts`.
 * @source wateq4f, davies-1962
 */
export function lnGammaOf({ debyeHueckel, activity }: System, strength: number): number[] {
  return SPECIES.map((s) => {
    if (s.charge === 0) return logGammaNeutral(strength) * Math.LN10;
    const log =
      activity === 'davies'
        ? logGammaDavies(debyeHueckel, s.charge, strength)
        : logGammaExtended(debyeHueckel, s, strength);
    return log * Math.LN10;
  });
}
