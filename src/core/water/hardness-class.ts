import { demand } from '../domain-error.ts';
import { MOLAR_MASS_CALCIUM_CARBONATE } from '../quantity/constants.ts';
import { justOver, justUnder } from '../quantity/dust.ts';

export type UsgsClass = 'soft' | 'moderately-hard' | 'hard' | 'very-hard';

/** Where the survey's "moderately hard" ends, mg/L as CaCO₃. @source usgs-hardness */
const MODERATELY_HARD = 120;

/**
 * Upper ends of the classes, mg/L as CaCO₃; above the last the water is very hard.
 * @source usgs-hardness
 */
export const USGS_CLASS_ENDS = [
  ['soft', 60],
  ['moderately-hard', MODERATELY_HARD],
  ['hard', 180],
] as const;

/**
 * The hardness up to which foam is made without looking for a softer water, mol/m³.
 * @source usgs-hardness, common-practice
 */
export const SOFT_ENOUGH = MODERATELY_HARD / MOLAR_MASS_CALCIUM_CARBONATE;

/** Where the trade's "extremely hard" begins, mg/L as CaCO₃. @source common-practice */
export const EXTREMELY_HARD = 700;

/**
 * The United States Geological Survey's class for a total hardness in mol/m³.
 *
 * The bands are printed in whole mg/L (0–60, 61–120, 121–180, more than 180), with a gap of one
 * between them. As the last row begins *above* 180, each upper end counts as part of its band and
 * anything above it as the next: 60.4 mg/L is moderately hard. The value is not rounded first.
 * Range: any hardness from 0.
 *
 * @throws {DomainError} for a negative hardness.
 * @source usgs-hardness
 */
export function usgsClass(total: number): UsgsClass {
  demand('total', total, 'hardness', { min: 0 });
  return USGS_CLASS_ENDS.find(([, end]) => !exceeds(total, end))?.[0] ?? 'very-hard';
}

/**
 * The same with the trade's own word for the far end: from about 700 mg/L as CaCO₃, where no
 * survey draws a line. `total` in mol/m³. Common practice, no source. Range: any hardness from 0.
 *
 * @throws {DomainError} for a negative hardness.
 * @source common-practice
 */
export function tradeClass(total: number): UsgsClass | 'extremely-hard' {
  const known = usgsClass(total);
  return asCarbonate(total) >= justUnder(EXTREMELY_HARD) ? 'extremely-hard' : known;
}

/**
 * Whether foam may be made with a water of this hardness, mol/m³, without looking for a softer one:
 * up to the end of the survey's "moderately hard". That limit for foam is common practice, no
 * source. Range: any hardness from 0.
 *
 * @throws {DomainError} for a negative hardness.
 * @source usgs-hardness, common-practice
 */
export function softEnoughForFoam(total: number): boolean {
  const known = usgsClass(total);
  return known === 'soft' || known === 'moderately-hard';
}

/** mol/m³ to mg/L as CaCO₃. */
const asCarbonate = (total: number) => total * MOLAR_MASS_CALCIUM_CARBONATE;

const exceeds = (total: number, end: number) => asCarbonate(total) > justOver(end);
