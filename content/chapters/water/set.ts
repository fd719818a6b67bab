import { CHLORIDE_WARMTH } from '~/core/curing/accelerator.ts';
import { thirdRuleFactor } from '~/core/curing/third-rule.ts';
import { HOUR } from '~/core/quantity/constants.ts';
import * as MOLAR_MASS from '~/core/water/molar-masses.ts';
import {
  besideCementWater,
  calciumChlorideEquivalent,
  LIME_SATURATION,
} from '~/core/water/set-effect.ts';
import { demo } from '~/worksheets/demo.ts';
import { asCarbonate, mainsHardness } from './demo-waters.ts';

const { waterCement } = demo;
/** The warmth that one per cent of calcium chloride is worth, K. */
export const warmthPerCent = CHLORIDE_WARMTH / 100;

/** The water’s hardness, mol/m³, as if it were calcium chloride; and how much sooner that sets, as a share. */
function asChloride(hardness: number) {
  const found = calciumChlorideEquivalent({ hardness, waterCement });
  return { ...found, sooner: 1 - found.setFactor };
}
export const byMains = asChloride(mainsHardness.total);
/** By how much the mains shortens two hours, s. */
export const soonerInTwoHours = byMains.sooner * 2 * HOUR;
export const byVeryHard = asChloride(asCarbonate(700));

/** Calcium in water full of lime, kg/m³, and what that is to the cement and to the mains. */
export const saturatedCalcium = LIME_SATURATION * MOLAR_MASS.calcium;
export const beside = besideCementWater({ calcium: mainsHardness.total, waterCement });

/** The alkalinity of the mains as calcium bicarbonate, kg/m³. */
export const bicarbonate = (demo.mains.alkalinity / 2) * MOLAR_MASS.calciumBicarbonate;

/** How much sooner it sets for five degrees, as a share. */
export const soonerFiveWarmer = 1 - thirdRuleFactor(5);
