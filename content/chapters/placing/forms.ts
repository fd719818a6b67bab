import { MIX_WATER_DENSITY } from '~/core/mix/densities.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoPlan } from '~/worksheets/demo-worked.ts';

/** How many times as hard as the mix water presses. */
export const waterPresses = MIX_WATER_DENSITY / demo.wetDensity;

/** m. */
export const potDepth = 0.25;
/** How much higher than the part the edge stands, m. */
export const proud = {
  slab: demoPlan.settling * demo.slab.thickness,
  pot: demoPlan.settling * potDepth,
};
