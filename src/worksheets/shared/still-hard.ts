import { fromUnit } from '../../core/quantity/convert.ts';
import { softEnoughForFoam, USGS_CLASS_ENDS } from '../../core/water/hardness-class.ts';
import type { Say } from '../../islands/engine/say.ts';
import { HARDNESS } from './amounts.ts';

const ENOUGH = fromUnit(USGS_CLASS_ENDS[1][1], 'hardness', 'mg/L CaCO3');

/** What is said of a water that comes out harder than foam wants, mol/m³, to stand behind a sentence; else nothing. */
export const stillHard = (total: number, say: Say): string =>
  softEnoughForFoam(total)
    ? ''
    : ` It is still hard for foam, which wants ${say(ENOUGH, 'hardness', { units: HARDNESS })} or less (common practice, no source).`;
