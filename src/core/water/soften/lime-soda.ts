import { demand } from '../../domain-error.ts';
import * as MOLAR_MASS from '../molar-masses.ts';

/**
 * Moles of lime and of soda ash that one mole of each requires, by the reactions of the lime-soda
 * process.
 * @source lime-soda-exercises
 */
export const LIME_SODA_DEMAND = {
  carbonDioxide: { lime: 1, soda: 0, molarMass: MOLAR_MASS.carbonDioxide },
  calciumBicarbonate: { lime: 1, soda: 0, molarMass: MOLAR_MASS.calciumBicarbonate },
  magnesiumBicarbonate: { lime: 2, soda: 0, molarMass: MOLAR_MASS.magnesiumBicarbonate },
  /** Calcium carbonate as analysed: it was present as bicarbonate. */
  calciumCarbonate: { lime: 1, soda: 0, molarMass: MOLAR_MASS.calciumCarbonate },
  magnesiumCarbonate: { lime: 2, soda: 0, molarMass: MOLAR_MASS.magnesiumCarbonate },
  calciumChloride: { lime: 0, soda: 1, molarMass: MOLAR_MASS.calciumChloride },
  calciumSulfate: { lime: 0, soda: 1, molarMass: MOLAR_MASS.calciumSulfate },
  magnesiumChloride: { lime: 1, soda: 1, molarMass: MOLAR_MASS.magnesiumChloride },
  magnesiumSulfate: { lime: 1, soda: 1, molarMass: MOLAR_MASS.magnesiumSulfate },
  hydrochloricAcid: { lime: 0.5, soda: 0.5, molarMass: MOLAR_MASS.hydrochloricAcid },
  sulfuricAcid: { lime: 1, soda: 1, molarMass: MOLAR_MASS.sulfuricAcid },
} as const;
export type Salt = keyof typeof LIME_SODA_DEMAND;

/**
 * Lime and soda ash to soften a water analysed as salts, kg/m³ (as Ca(OH)₂ and Na₂CO₃).
 *
 * `salts` in kg/m³ each. `limePurity` and `sodaPurity` are mass fractions. Complete reaction is
 * assumed, with no excess. This is arithmetic for checking exercises, not a recipe: lime at the
 * bench is caustic and leaves a pH near 11. No range is published.
 *
 * @throws {DomainError} for a negative salt or a purity outside (0, 1].
 * @source lime-soda-exercises
 */
export function limeSodaForSalts(water: {
  readonly salts: Readonly<Partial<Record<Salt, number>>>;
  readonly limePurity?: number;
  readonly sodaPurity?: number;
}): { readonly lime: number; readonly soda: number } {
  let [lime, soda] = [0, 0];
  for (const [name, given] of Object.entries(water.salts)) {
    demand(name, given, 'concentration', { min: 0 });
    const takes = LIME_SODA_DEMAND[name as Salt];
    lime += (given / takes.molarMass) * takes.lime;
    soda += (given / takes.molarMass) * takes.soda;
  }
  const { limePurity, sodaPurity } = purities(water);
  return {
    lime: (lime * MOLAR_MASS.calciumHydroxide) / limePurity,
    soda: (soda * MOLAR_MASS.sodiumCarbonate) / sodaPurity,
  };
}

/**
 * The same for a water analysed as ions: calcium, magnesium and carbon dioxide in mol/m³,
 * bicarbonate in eq/m³. Lime: CO₂ + HCO₃/2 + Mg; soda: Ca + Mg − HCO₃/2, none when negative. Range
 * as `limeSodaForSalts`.
 *
 * @throws {DomainError} for a negative concentration or a purity outside (0, 1].
 * @source lime-soda-exercises
 */
export function limeSodaForIons(water: {
  readonly calcium: number;
  readonly magnesium: number;
  readonly bicarbonate: number;
  readonly carbonDioxide?: number;
  readonly limePurity?: number;
  readonly sodaPurity?: number;
}): { readonly lime: number; readonly soda: number } {
  const { calcium, magnesium, bicarbonate, carbonDioxide = 0 } = water;
  demandIons({ calcium, magnesium, bicarbonate, carbonDioxide });
  const { limePurity, sodaPurity } = purities(water);
  const lime = carbonDioxide + bicarbonate / 2 + magnesium;
  const soda = Math.max(0, calcium + magnesium - bicarbonate / 2);
  return {
    lime: (lime * MOLAR_MASS.calciumHydroxide) / limePurity,
    soda: (soda * MOLAR_MASS.sodiumCarbonate) / sodaPurity,
  };
}

/**
 * Carbonate hardness that lime leaves in practice, mol/m³: 35 mg/L as CaCO₃.
 * @source awwa-asce-wtpd ch. 11
 */
const CARBONATE_LEFT = 0.035 / MOLAR_MASS.calciumCarbonate;
/**
 * Magnesium hydroxide that remains in practice, mol/m³: 10 mg/L as CaCO₃.
 * @source awwa-asce-wtpd ch. 11
 */
const MAGNESIUM_LEFT = 0.01 / MOLAR_MASS.calciumCarbonate;
/**
 * Magnesium that a softened water may keep without harm to heaters, mol/m³: 40 mg/L as CaCO₃.
 * @source davis-2010 ch. 7
 */
const MAGNESIUM_ALLOWED = 0.04 / MOLAR_MASS.calciumCarbonate;
/**
 * Least hardness lime-soda leaves in practice, mol/m³: 40 mg/L as CaCO₃. @source davis-2010 ch. 7
 */
const LIME_SODA_LEAST = 0.04 / MOLAR_MASS.calciumCarbonate;

/**
 * Least and most lime added in excess, mol/m³: 20 and 40 mg/L as CaCO₃. @source davis-2010 ch. 7
 */
const LEAST_EXCESS = 0.02 / MOLAR_MASS.calciumCarbonate;
const MOST_EXCESS = 0.04 / MOLAR_MASS.calciumCarbonate;

/**
 * A waterworks' doses to a target hardness, in mol/m³ of Ca(OH)₂ and Na₂CO₃.
 *
 * All in mol/m³ except bicarbonate (eq/m³). Magnesium above 40 mg/L as CaCO₃ is removed with lime,
 * and the same amount again is added in excess, between 20 and 40 mg/L. Of the non-carbonate
 * hardness target − 40 mg/L may stay; soda removes the rest. Range: targets from 40 mg/L as CaCO₃
 * up.
 *
 * @throws {DomainError} for a negative amount, or a target below what the process leaves.
 * @source davis-2010 ch. 7 (as in a solved exercise)
 */
export function limeSodaToTarget(water: {
  readonly calcium: number;
  readonly magnesium: number;
  readonly bicarbonate: number;
  readonly carbonDioxide: number;
  readonly target: number;
}): { readonly lime: number; readonly soda: number; readonly magnesiumRemoved: number } {
  const { calcium, magnesium, bicarbonate, carbonDioxide, target } = water;
  demandIons({ calcium, magnesium, bicarbonate, carbonDioxide });
  demand('target', target, 'hardness', { min: LIME_SODA_LEAST }, 'below-practical-limit');
  const carbonate = Math.min(calcium + magnesium, bicarbonate / 2);
  const magnesiumRemoved = Math.max(0, magnesium - MAGNESIUM_ALLOWED);
  const excess = Math.min(MOST_EXCESS, Math.max(LEAST_EXCESS, magnesiumRemoved));
  const nonCarbonate = calcium + magnesium - carbonate;
  return {
    lime: carbonDioxide + carbonate + magnesiumRemoved + excess,
    soda: Math.max(0, nonCarbonate - (target - LIME_SODA_LEAST)),
    magnesiumRemoved,
  };
}

/**
 * Hardness left, mol/m³, after lime (and soda that takes `sodaRemoves`, mol/m³).
 *
 * Straight lime leaves `carbonateLeft` (35 mg/L as CaCO₃ by default) and all the non-carbonate
 * hardness; excess lime leaves 10 mg/L of magnesium hydroxide besides. No range is published.
 *
 * @throws {DomainError} for a negative amount or soda that removes more than there is.
 * @source awwa-asce-wtpd Examples 11.1–11.4
 */
export function limeSodaResidual(water: {
  readonly nonCarbonate: number;
  readonly excessLime: boolean;
  readonly sodaRemoves?: number;
  readonly carbonateLeft?: number;
}): number {
  const { nonCarbonate, excessLime, sodaRemoves = 0 } = water;
  const { carbonateLeft = CARBONATE_LEFT } = water;
  demand('nonCarbonate', nonCarbonate, 'hardness', { min: 0 });
  demand('sodaRemoves', sodaRemoves, 'hardness', { min: 0, max: nonCarbonate });
  demand('carbonateLeft', carbonateLeft, 'hardness', { min: 0 });
  return nonCarbonate - sodaRemoves + carbonateLeft + (excessLime ? MAGNESIUM_LEFT : 0);
}

/**
 * The mass of quicklime for a dose of lime, kg/m³: dose × M(CaO)/purity. `dose` mol/m³ of lime;
 * `purity` the share of it that is calcium oxide. No range: arithmetic.
 *
 * @throws {DomainError} for a negative dose or a purity outside (0, 1].
 * @source awwa-asce-wtpd Example 11.1
 */
export function quicklimeMass(lime: { readonly dose: number; readonly purity: number }): number {
  demand('dose', lime.dose, 'hardness', { min: 0 });
  const { limePurity } = purities({ limePurity: lime.purity });
  return (lime.dose * MOLAR_MASS.calciumOxide) / limePurity;
}

/** Bicarbonate is refused as the equivalent calcium carbonate, half its eq/m³. */
function demandIons(ions: {
  readonly calcium: number;
  readonly magnesium: number;
  readonly bicarbonate: number;
  readonly carbonDioxide: number;
}): void {
  const asMoles = { ...ions, bicarbonate: ions.bicarbonate / 2 };
  for (const [name, given] of Object.entries(asMoles)) demand(name, given, 'hardness', { min: 0 });
}

function purities({
  limePurity = 1,
  sodaPurity = 1,
}: {
  readonly limePurity?: number;
  readonly sodaPurity?: number;
}) {
  const pure = { min: 0, aboveMin: true, max: 1 };
  demand('limePurity', limePurity, 'ratio', pure);
  demand('sodaPurity', sodaPurity, 'ratio', pure);
  return { limePurity, sodaPurity };
}
