import { MIX_WATER_DENSITY } from '~/core/mix/densities.ts';
import { demoBatch } from '~/worksheets/demo-worked.ts';

/** What the batch takes into its base mix, m³. */
export const baseWater = demoBatch.water / MIX_WATER_DENSITY;
