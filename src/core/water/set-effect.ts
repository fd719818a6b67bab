import { CHLORIDE_LIMIT, CHLORIDE_WARMTH } from '../curing/accelerator.ts';
import { thirdRuleFactor } from '../curing/third-rule.ts';
import { demand } from '../domain-error.ts';
import * as MOLAR_MASS from './molar-masses.ts';

/**
 * Calcium hydroxide that saturates water at room temperature, mol/m³: about 1.7 g/L.
 * @source lime-solubility (from memory)
 */
export const LIME_SATURATION = 1.7 / MOLAR_MASS.calciumHydroxide;

/**
 * Free lime of an ordinary cement, mass fraction: 1 %. Common practice, no source.
 * @source common-practice
 */
const FREE_LIME = 0.01;

/**
 * The hardness of the mixing water, read as if all of it were calcium chloride.
 *
 * `hardness` in mol/m³ (all of it counted as calcium, which is the most it can be), `waterCement`
 * by mass, water at 1000 kg/m³. `shareOfCement` of CaCl₂ by mass; `shareOfLimit` of the usual 2 %;
 * `warmth` in K, the rise in temperature that would quicken the set as much, 6.1 K (11 °F) a per
 * cent; `setFactor` what that does to the setting time, (3/4)^(warmth/5.56 K).
 *
 * This is arithmetic, not evidence: hard water carries bicarbonate and sulfate, not chloride, and
 * bicarbonate waters may retard or quicken. Range: linear in the dose, which holds below
 * about 2 %.
 *
 * @throws {DomainError} for a negative hardness or a water–cement ratio that is not positive.
 * @source jove-16919, concrete-construction-accelerators
 */
export function calciumChlorideEquivalent(mix: {
  readonly hardness: number;
  readonly waterCement: number;
}): {
  readonly shareOfCement: number;
  readonly shareOfLimit: number;
  readonly warmth: number;
  readonly setFactor: number;
} {
  demand('hardness', mix.hardness, 'hardness', { min: 0 });
  demand('waterCement', mix.waterCement, 'ratio', { min: 0, aboveMin: true });
  const shareOfCement = (mix.hardness * MOLAR_MASS.calciumChloride * mix.waterCement) / 1000;
  const warmth = shareOfCement * CHLORIDE_WARMTH;
  return {
    shareOfCement,
    shareOfLimit: shareOfCement / CHLORIDE_LIMIT,
    warmth,
    setFactor: thirdRuleFactor(warmth),
  };
}

/**
 * The calcium in the water compared with the calcium that cement gives it within minutes.
 *
 * Cement saturates its water with calcium hydroxide at once (`saturation`, mol/m³, default at room
 * temperature). `share` is the water's calcium in units of that; `limeNeeded` the CaO that
 * saturates the water, as a share of the cement, and `ofFreeLime` as a share of its free lime
 * (`freeLime`, mass fraction, FREE_LIME by default). No range is published.
 *
 * @throws {DomainError} for a negative calcium or a ratio, share or saturation that is not
 *   positive.
 * @source lime-solubility, common-practice
 */
export function besideCementWater(mix: {
  readonly calcium: number;
  readonly waterCement: number;
  readonly freeLime?: number;
  readonly saturation?: number;
}): { readonly share: number; readonly limeNeeded: number; readonly ofFreeLime: number } {
  const { calcium, waterCement, freeLime = FREE_LIME, saturation = LIME_SATURATION } = mix;
  const above = { min: 0, aboveMin: true };
  demand('calcium', calcium, 'hardness', { min: 0 });
  demand('waterCement', waterCement, 'ratio', above);
  demand('freeLime', freeLime, 'ratio', { ...above, max: 1 });
  demand('saturation', saturation, 'hardness', above);
  const limeNeeded = (saturation / 1000) * waterCement * MOLAR_MASS.calciumOxide;
  return { share: calcium / saturation, limeNeeded, ofFreeLime: limeNeeded / freeLime };
}
