import { DAY, MINUTE } from '~/core/quantity/constants.ts';
import { formatNumber } from '~/core/quantity/format.ts';
import {
  CHROMIUM_VI_LIMIT,
  EYE_RINSE,
  EYE_RINSE_ALKALI,
  REDUCER_KEEPS,
} from '~/core/safety/exposure.ts';
import { freeHydroxide } from '~/core/safety/washout.ts';
import { demoSlabMix, waterIn } from '~/worksheets/demo-worked.ts';

/** How long to rinse an eye: what this handbook asks for, and what the standard does. */
export const rinseMinutes = EYE_RINSE_ALKALI / MINUTE;
export const standardRinseMinutes = EYE_RINSE / MINUTE;

/** How many times the hydroxide of pure water that of cement paste is. */
export const timesPureWater = formatNumber(freeHydroxide({ pH: 13 }) / freeHydroxide({ pH: 7 }), {
  significant: 1,
});
/** The lye in one demo slab, kg. */
export const caustic = waterIn(demoSlabMix);

/** The most that is allowed, mg to the kilogram of dry cement. */
export const chromium = CHROMIUM_VI_LIMIT * 1e6;
const months = (seconds: number) => seconds / (30 * DAY);
export const reducerMonths = {
  bagged: months(REDUCER_KEEPS.bagged),
  opened: months(REDUCER_KEEPS.opened),
};
