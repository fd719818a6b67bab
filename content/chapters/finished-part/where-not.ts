import { percent } from '~/components/prose/percent.ts';
import { PSI } from '~/core/quantity/constants.ts';
import { demoStrength } from '~/worksheets/demo-worked.ts';

/** What an American code once asked of structural concrete, Pa. */
const STRUCTURAL = 2500 * PSI;

const { low, high } = demoStrength();
/** Pa */
export const strength = [low, high] as const;
export const ofStructural = { low: percent(low / STRUCTURAL), high: percent(high / STRUCTURAL) };
