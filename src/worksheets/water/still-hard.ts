import { SOFT_ENOUGH, softEnoughForFoam } from '../../core/water/hardness-class.ts';
import type { Say } from '../../islands/engine/say.ts';

/** What is said of a water that comes out harder than foam wants, mol/m³, to stand behind a sentence; else nothing. */
export const stillHard = (total: number, say: Say): string =>
  softEnoughForFoam(total)
    ? ''
    : ` It is still hard for foam, which needs ${say(SOFT_ENOUGH, 'hardness')} or less (common practice, no source).`;
