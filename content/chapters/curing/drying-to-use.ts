import { percent, toTenth } from '~/components/prose/percent.ts';
import {
  DRY_ENOUGH_MOISTURE,
  diffusionDryingTime,
  MOISTURE_DIFFUSIVITY,
  screedDryingTime,
} from '~/core/curing/drying.ts';
import { EQUILIBRIUM_MOISTURE } from '~/core/finished/moisture.ts';
import { HYDRATE_WATER } from '~/core/mix/oven-dry.ts';
import { DAY } from '~/core/quantity/constants.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoCube, waterIn } from '~/worksheets/demo-worked.ts';

/** What cement does not bind of the water in a cubic metre of the demo’s mix, kg. */
const freeWater = waterIn(demoCube) - HYDRATE_WATER * demoCube.cement;

/** Of the dry mass; the target as the worksheet has it. */
const shares = {
  initial: freeWater / demoCube.ovenDryDensity,
  resting: EQUILIBRIUM_MOISTURE.dryRoom,
  target: Number(DRY_ENOUGH_MOISTURE.toFixed(3)),
};
export const moisture = {
  initial: percent(shares.initial),
  dryRoom: toTenth(EQUILIBRIUM_MOISTURE.dryRoom),
  dampRoom: toTenth(EQUILIBRIUM_MOISTURE.dampRoom),
  target: toTenth(shares.target),
};

const { thickness } = demo.slab;
const inDays = (seconds: number) => Number((seconds / DAY).toPrecision(2));
const byDiffusion = (faces: 1 | 2) =>
  inDays(diffusionDryingTime({ thickness, faces, ...shares }).time);

/** Days until the demo slab is dry enough. On edge it dries from two faces, each half of it. */
export const daysByRule = {
  lying: inDays(screedDryingTime({ thickness })),
  onEdge: inDays(screedDryingTime({ thickness: thickness / 2 })),
};
export const daysByDiffusion = { lying: byDiffusion(1), onEdge: byDiffusion(2) };

/** How fast moisture wanders, 10⁻¹⁰ m²/s. */
export const diffusivity = MOISTURE_DIFFUSIVITY * 1e10;
