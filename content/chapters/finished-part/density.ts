import { percent, toTenth } from '~/components/prose/percent.ts';
import {
  CONSTANT_MASS_SHARE,
  type ConstantMass,
  constantMass,
  moistureByMass,
} from '~/core/finished/drying.ts';
import { blockDensity } from '~/core/finished/piece-density.ts';
import { HYDRATE_WATER } from '~/core/mix/oven-dry.ts';
import { DAY } from '~/core/quantity/constants.ts';
import { demo } from '~/worksheets/demo.ts';
import { taped } from '~/worksheets/demo-tools.ts';
import { demoCube, demoPlan } from '~/worksheets/demo-worked.ts';

/** A block cut from a slab of the demo: its mass as it was, and after each day in the oven, kg. */
export const moistMass = 0.705;
export const dryMass = 0.628;
const MASSES = [moistMass, 0.641, 0.629, dryMass];

const weighing = (mass: number) =>
  blockDensity({
    length: taped(0.15),
    width: taped(0.15),
    height: taped(demo.slab.thickness),
    mass: { value: mass, uncertainty: 0.001 },
  });
export const moist = weighing(moistMass);
export const dry = weighing(dryMass);
/** How much water it had held, of its dry mass. */
export const moisture = percent(moistureByMass({ moist: moistMass, dry: dryMass }));

function lastDay({ constant, change }: ConstantMass): string {
  if (!constant || change === undefined)
    throw new Error('The demo’s block was not dry by its last day in the oven.');
  return percent(change, { decimals: 2 });
}
/** What the last day took, of its mass. */
export const lastDayTook = lastDay(
  constantMass(MASSES.map((mass, day) => ({ time: day * DAY, mass }))),
);
export const constantWithin = toTenth(CONSTANT_MASS_SHARE);

/** What the mix was to dry to, kg/m³, and what a part does that sank as much as is allowed for. */
export const planned = demoCube.ovenDryDensity;
export const plannedSunk = planned * (1 + demoPlan.settling);
export const sinking = percent(demoPlan.settling);

/** How much lighter than computed neat cement dries that has bound so much water, a share of its mass. */
const lighter = (bound: number) => percent(1 - (1 + bound) / (1 + HYDRATE_WATER));
/** What has bound a fifth of its mass has reacted so far, as the page on drying says; what is young, less. */
const RECKONED = 0.87;
const YOUNG = 0.6;
export const reacted = percent(YOUNG);
export const youngLighter = lighter((YOUNG / RECKONED) * HYDRATE_WATER);
/** The same of a cement a third of which is limestone, the rest reacted as assumed. */
export const limestoneLighter = lighter((2 / 3) * HYDRATE_WATER);
