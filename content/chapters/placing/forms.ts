import { MIX_WATER_DENSITY } from '~/core/mix/densities.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoPlan } from '~/worksheets/demo-worked.ts';
import { pot } from './how-much.ts';

/** How many times as hard as the mix water presses. */
export const waterPresses = MIX_WATER_DENSITY / demo.wetDensity;

/** How much higher than the part its edge stands, and the form is filled, m. */
export const proud = {
  slab: demoPlan.settling * demo.slab.thickness,
  pot: demoPlan.settling * pot.height,
};
