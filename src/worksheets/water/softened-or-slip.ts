import { fromUnit } from '../../core/quantity/convert.ts';
import { softEnoughForFoam } from '../../core/water/hardness-class.ts';
import type { Say } from '../../islands/engine/say.ts';
import { ALKALINITY } from '../shared/words/amounts.ts';

/** Few natural waters have more times the alkalinity to their hardness, both as CaCO₃. From memory. */
const MOST_ALKALINITY = 3;
/** Below it nothing is told by that, as of rain: the survey's soft, mol/m³. A choice. */
const LITTLE = fromUnit(60, 'hardness', 'mg/L CaCO3');

/**
 * The sentence on a soft water with the alkalinity of a hard one, whose hardness may be degrees or
 * grains typed as mg/L; undefined for others. `alkalinity`: the reader's own, as CaCO₃; `then`: what to
 * do if the water is as soft as it reads.
 */
export const softenedOrSlip = (
  total: number,
  alkalinity: number | undefined,
  then: string,
  say: Say,
): string | undefined =>
  softEnoughForFoam(total) &&
  alkalinity !== undefined &&
  alkalinity > Math.max(LITTLE, MOST_ALKALINITY * total)
    ? `Look at the unit of the hardness: beside an alkalinity of ${say(alkalinity, 'hardness', { units: ALKALINITY })} hardly any but softened or soda water has as little as ${say(total, 'hardness')} (from memory). If yours is one, ${then}; if not, the number is a slip, or one in °dH, gpg or g/L.`
    : undefined;
