import { percent } from '~/components/prose/percent.ts';
import { PSI } from '~/core/quantity/constants.ts';
import { demoStrength } from '~/worksheets/demo-strength.ts';

/** What an American code once asked of structural concrete, Pa. */
const STRUCTURAL = 2500 * PSI;

/** How much of that is published of the demo’s mix. */
export const ofStructural = {
  low: percent(demoStrength.low / STRUCTURAL),
  high: percent(demoStrength.high / STRUCTURAL),
};
