import { SOFT_ENOUGH, softEnoughForFoam } from '../../core/water/hardness-class.ts';
import type { Say } from '../../islands/engine/say.ts';

/** A sentence to append for a water, mol/m³, that is still too hard for foam; empty for others. */
export const stillHard = (total: number, say: Say): string =>
  softEnoughForFoam(total)
    ? ''
    : ` It is still hard for foam, which needs ${say(SOFT_ENOUGH, 'hardness')} or less (common practice, no source).`;
