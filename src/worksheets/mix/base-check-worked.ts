import { demand } from '../../core/domain-error.ts';
import { checkBase } from '../../core/mix/base-check.ts';
import { baseMix } from '../../core/mix/base-mix.ts';
import { plannedWith } from '../../core/mix/planned-with.ts';
import { BASE_WATER_CEMENT, ROBS_FOAM_BELOW } from '../../core/mix/water-cement-limits.ts';
import { wetDensity } from '../../core/mix/weigh.ts';
import type { Values } from '../../islands/fields.ts';
import type { PlusMinus } from '../../islands/worksheet.ts';
import { densityDoubt } from '../shared/mix/density-doubt.ts';
import { pasteWaterCement } from '../shared/mix/paste-water.ts';
import type { baseCheckFields } from './base-check-fields.ts';

/** The error of the w/c that is worth correcting, and the ± within which it must be known. Common practice, no source. */
export const NEAR = 0.02;
/** Whether a w/c is off by more than a jug can tell; half a thousandth is in its last digit. */
export const worthIt = (off: number) => Math.abs(off) > NEAR + 5e-4;

/** More than this share of the cement is no correction but a slip. A line of our own, no source. */
const MOST_ADDED = 0.5;

/** What makes the w/c surer, by what most of its ± comes from. */
const SURER = {
  jug: 'Weigh the jug’s volume with water on a finer scale, or take a larger jug',
  cement: 'Find the cement’s own density',
  plan: 'Look at the base mix density by the plan',
} as const;

/** Two densities of cement that differ by less than this share are the same. */
const SAME_CEMENT = 1e-3;

/**
 * The densities that cement may have with the other additions counted as part of it, kg/m³. Beyond
 * these a jug does not tell the water. A choice.
 */
const CEMENT = { min: 2000, max: 4000 } as const;

/**
 * The density of cement with which these ratios give the plan's base mix, kg/m³. Everything else in
 * that mix counts as part of the cement. This is exact if the w/c is as meant; if it is some
 * hundredths off, its error is understated by a few per cent.
 */
function cementBy(plan: number, ratios: { waterCement: number; sandCement: number }): number {
  const least = baseMix({ ...ratios, cementDensity: CEMENT.min }).density;
  const most = baseMix({ ...ratios, cementDensity: CEMENT.max }).density;
  demand('plan', plan, 'density', { min: least, max: most }, 'another-base-mix');
  const { waterCement: water, sandCement: sand } = ratios;
  const neat = { foamVolume: 0, foamDensity: 0, wetDensity: plan, baseDensity: plan };
  return plannedWith({ cement: 1, water, sand, ...neat }).cementDensity;
}

/** The w/c that a jug of the base mix tells, how sure that is, and what it is worth adding. */
export function baseCheckWorked(
  v: Values<typeof baseCheckFields>,
  pm: PlusMinus<typeof baseCheckFields>,
) {
  const measured = wetDensity({ tare: v.tare, full: v.full, vessel: v.jug });
  const wanted = pasteWaterCement(v);
  const ratios = { waterCement: wanted, sandCement: v.sandCement };
  const cementDensity = v.plan === undefined ? v.cementDensity : cementBy(v.plan, ratios);
  // Every amount leads to this w/c, or one would undo the other; no drier paste should meet foam.
  const aim = Math.max(wanted, ROBS_FOAM_BELOW);
  const check = checkBase({
    measuredDensity: measured,
    recipe: { ...ratios, waterCement: aim, cementDensity },
    cement: v.cement,
    air: v.air,
  });
  const off = check.waterCement - aim;
  const fromMeant = check.waterCement - wanted;
  // The ± of the cement’s own volume, m³/kg: by its density, or by that of the planned base mix.
  const space =
    v.plan === undefined
      ? pm.cementDensity / cementDensity ** 2
      : ((1 + wanted + v.sandCement) * pm.plan) / v.plan ** 2;
  const weighing = densityDoubt(
    { ...v, vessel: v.jug },
    { full: pm.full, tare: pm.tare, vessel: pm.jug },
  );
  const [byJug, bySpace] = [check.perDensity * weighing, check.perSpace * space].map(Math.abs);
  const doubt = Math.hypot(byJug!, bySpace!);
  // An error above the ± is reported; up to twice the ± the jug is to be weighed once more first.
  const doubtful = doubt > NEAR && Math.abs(off) <= doubt;
  const knowSpace = v.plan === undefined ? SURER.cement : SURER.plan;
  const surer = bySpace! <= byJug! ? SURER.jug : knowSpace;
  const slip =
    check.waterCement < BASE_WATER_CEMENT.min ||
    Math.max(check.addCement, check.addWater) > MOST_ADDED * v.cement;
  // Whether it is too dry because of its recipe. If the recipe itself is not too dry, or was corrected
  // since, it counts as too dry only by more than the ±.
  const asMeant = !worthIt(fromMeant);
  const dryBelow = ROBS_FOAM_BELOW - (wanted < ROBS_FOAM_BELOW && asMeant ? 0 : doubt);
  const dryAsMeant = check.waterCement < dryBelow && (fromMeant > 0 || asMeant);
  // All of the base mix, m³: a jug that holds more cannot have been full of it.
  const all = ((1 + wanted + v.sandCement) * v.cement) / measured;
  const short = v.jug > all;
  // Only a correction that should be made is shown as an amount.
  const add = worthIt(off) && !slip && !doubtful && !dryAsMeant && !short ? check : undefined;
  const plain = Math.abs(cementDensity / v.cementDensity - 1) < SAME_CEMENT;
  return {
    measured,
    check,
    wanted,
    aim,
    off,
    slip,
    all,
    short,
    doubt,
    doubtful,
    surer,
    dryAsMeant,
    add,
    /** Whether the plan has nothing but plain cement in the place of cement. */
    plain,
  };
}
