import { demand } from '../domain-error.ts';
import * as MOLAR_MASS from './molar-masses.ts';

/** Molar masses of the fatty-acid soaps, kg/mol. @source iupac-atomic-weights (from memory) */
export const SOAPS = {
  sodiumLaurate: MOLAR_MASS.sodiumLaurate,
  sodiumPalmitate: MOLAR_MASS.sodiumPalmitate,
  sodiumStearate: MOLAR_MASS.sodiumStearate,
  sodiumOleate: MOLAR_MASS.sodiumOleate,
  potassiumOleate: MOLAR_MASS.potassiumOleate,
} as const;
export type Soap = keyof typeof SOAPS;

/**
 * The household figure: some 12 kg of soap wasted for each kg of CaCO₃, about twice the
 * stoichiometry. Commercial soap contains water, and a lather needs an excess.
 * @source frankland (from memory), utah-soap-item (11.9)
 */
export const EMPIRICAL_SOAP_LOSS = 12;

/**
 * Soap that hardness turns to curd, kg per m³ of water.
 *
 * Two moles of soap per mole of calcium or magnesium: 2 c M. `hardness` in mol/m³. `empirical` is
 * the household figure for commercial soap, 12 kg per kg as CaCO₃, kept apart from the chemistry.
 * Range: fatty-acid soaps only. Synthetic surfactants and hydrolysed protein do not precipitate in
 * this ratio, and no figure for them is known here.
 *
 * @throws {DomainError} for a negative hardness.
 * @source soap-stoichiometry; frankland (from memory), utah-soap-item
 */
export function soapLost(water: { readonly hardness: number; readonly soap: Soap }): {
  readonly stoichiometric: number;
  readonly empirical: number;
} {
  demand('hardness', water.hardness, 'hardness', { min: 0 });
  return {
    stoichiometric: 2 * water.hardness * SOAPS[water.soap],
    empirical: water.hardness * MOLAR_MASS.calciumCarbonate * EMPIRICAL_SOAP_LOSS,
  };
}

/**
 * How much of a dose of soap remains for making foam, and what the dose must become.
 *
 * `dose` is soap (dry, not the liquid it comes in) in kg per m³ of water, `lost` the kg/m³ from
 * `soapLost`. `share` of the dose lost, at most 1; `left` kg/m³; `needed` kg/m³, the dose that
 * leaves as much as intended.
 *
 * @throws {DomainError} for a dose that is not positive or a negative loss.
 * @source definition
 */
export function soapLeft(solution: { readonly dose: number; readonly lost: number }): {
  readonly share: number;
  readonly left: number;
  readonly needed: number;
} {
  const { dose, lost } = solution;
  demand('dose', dose, 'concentration', { min: 0, aboveMin: true });
  demand('lost', lost, 'concentration', { min: 0 });
  return { share: Math.min(1, lost / dose), left: Math.max(0, dose - lost), needed: dose + lost };
}

/** mL of Clark's soap solution, from 0.4 by 0.2, and °dH × 100 for a 20 mL sample. */
const CLARK_FROM = 0.4;
const CLARK_STEP = 0.2;
const CLARK = [
  15, 40, 65, 90, 115, 140, 165, 190, 216, 242, 268, 294, 320, 346, 372, 398, 425, 452, 479, 506,
  533, 560, 587, 615, 643, 671, 699, 727, 755, 783, 812, 841, 870, 899, 928, 957, 987, 1017, 1047,
  1077, 1107, 1138, 1169, 1200,
];

/**
 * Hardness by Clark's soap test in mol/m³, from the volume of his solution (m³) that gives a
 * lasting lather with 20 mL of water.
 *
 * His table, interpolated; range 0.4–9.0 mL (dilute a harder water). At 8.8 mL the printing at hand
 * has 11.79, which breaks the run of its neighbours (11.38, 12.00); 11.69 is used.
 *
 * @throws {DomainError} outside the table.
 * @source clark-table
 */
export function clarkHardness({ soap }: { readonly soap: number }): number {
  const last = CLARK_FROM + CLARK_STEP * (CLARK.length - 1);
  demand('soap', soap, 'volume', { min: CLARK_FROM * 1e-6 - UNREAD, max: last * 1e-6 + UNREAD });
  const at = (soap * 1e6 - CLARK_FROM) / CLARK_STEP;
  const i = Math.min(CLARK.length - 2, Math.max(0, Math.floor(at)));
  const degrees = (CLARK[i]! + (at - i) * (CLARK[i + 1]! - CLARK[i]!)) / 100;
  return degrees * GERMAN_DEGREE;
}

/** Tolerance at the ends of the table, m³: a nanolitre, less than any burette shows. */
const UNREAD = 1e-12;

/** One °dH, 10 mg/L of CaO, in mol/m³. @source karrasch-2009 */
const GERMAN_DEGREE = 0.01 / MOLAR_MASS.calciumOxide;
