import { toTenth } from '~/components/prose/percent.ts';
import { checkBase } from '~/core/mix/base-check.ts';
import { MIX_WATER_DENSITY } from '~/core/mix/densities.ts';
import { demo } from '~/worksheets/demo.ts';
import { demoLoad } from '~/worksheets/demo-worked.ts';

const ask = (measuredDensity: number, air = 0) =>
  checkBase({
    measuredDensity,
    air,
    recipe: { waterCement: demo.waterCement },
    cement: demoLoad.cement,
  });

/** What the jug shows, kg/m³; the demo base mix is meant to weigh less. */
export const jugShows = 1890;
export const found = ask(jugShows);
/** The same jug with a hundredth of whipped air in it. */
export const airy = ask(jugShows, 0.01);

/** The water that is too much in the demo’s load, kg. */
export const tooMuchWater = (found.waterCement - demo.waterCement) * demoLoad.cement;
/** How far a hundredth of w/c moves the density, kg/m³. */
export const perHundredth = 0.01 / Math.abs(found.perDensity);
export const perHundredthOfIt = toTenth(perHundredth / jugShows);

/** What two weighings to 5 g leave open of the jug's volume, m³. */
export const jugDoubt = (Math.SQRT2 * 0.005) / MIX_WATER_DENSITY;
