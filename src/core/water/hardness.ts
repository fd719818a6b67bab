import { demand } from '../domain-error.ts';
import { demandAmount, EXTREMES } from '../extremes.ts';
import * as MOLAR_MASS from './molar-masses.ts';

/**
 * Hardness from the two ions that make it.
 *
 * `calcium` and `magnesium` in kg/m³ (1 mg/L is 0.001 kg/m³); results in mol/m³ of each and of
 * both. Formula: c = ρ / M. Range: any concentration; strontium, barium, iron and the like are not
 * counted, as in every method the trade uses.
 *
 * @throws {DomainError} for a negative concentration.
 * @source standard-methods-2340b (the factors 2.497 and 4.118 to mg/L as CaCO₃ are the same sum)
 */
export function hardnessFromIons(ions: { readonly calcium: number; readonly magnesium: number }): {
  readonly calcium: number;
  readonly magnesium: number;
  readonly total: number;
} {
  demand('calcium', ions.calcium, 'concentration', { min: 0, max: EXTREMES.concentration.max });
  demand('magnesium', ions.magnesium, 'concentration', { min: 0, max: EXTREMES.concentration.max });
  const calcium = ions.calcium / MOLAR_MASS.calcium;
  const magnesium = ions.magnesium / MOLAR_MASS.magnesium;
  return { calcium, magnesium, total: calcium + magnesium };
}

/**
 * Hardness from a titration with EDTA, mol/m³.
 *
 * One mole of EDTA binds one mole of calcium or magnesium: c = titre (titrant − blank) / sample.
 * `titrant`, `blank` (what distilled water takes, 0 when not run) and `sample` are volumes in m³,
 * `titre` is the EDTA's strength in mol/m³. No range is published beyond the burette's own.
 *
 * @throws {DomainError} for an empty sample, a titre of nothing, or a blank above the titrant.
 * @source edta-procedure (0.01 mol/L: 1 mL is 1 mg as CaCO₃)
 */
export function hardnessFromTitration(run: {
  readonly titrant: number;
  readonly titre: number;
  readonly sample: number;
  readonly blank?: number;
}): number {
  const { titrant, titre, sample, blank = 0 } = run;
  demandAmount('titre', titre, 'amountConcentration');
  demandAmount('sample', sample, 'volume');
  demand('titrant', titrant, 'volume', { min: 0, max: EXTREMES.volume.max });
  demand('blank', blank, 'volume', { min: 0, max: titrant });
  return (titre * (titrant - blank)) / sample;
}

/**
 * The strength of an EDTA solution, mol/m³, from titrating water of known hardness.
 *
 * `standard` is that hardness in mol/m³, `sample` and `titrant` the volumes in m³:
 * titre = standard × sample / titrant. No range: arithmetic.
 *
 * @throws {DomainError} for a standard, sample or titrant of nothing.
 * @source fossee-2966
 */
export function titreFromStandard(run: {
  readonly standard: number;
  readonly sample: number;
  readonly titrant: number;
}): number {
  demandAmount('standard', run.standard, 'hardness');
  demandAmount('sample', run.sample, 'volume');
  demandAmount('titrant', run.titrant, 'volume');
  return (run.standard * run.sample) / run.titrant;
}

/**
 * Hardness from a drop kit, mol/m³: the number of drops to the colour change times the hardness per
 * drop on the kit's sheet (`perDrop`, mol/m³; often 1 °dH). Accurate to one drop at best. No range
 * is published: the kit's own sheet has it.
 *
 * @throws {DomainError} for a negative count or a drop that stands for nothing.
 * @source common-practice (the kit's own sheet decides)
 */
export function hardnessFromDrops(kit: {
  readonly drops: number;
  readonly perDrop: number;
}): number {
  demand('drops', kit.drops, 'count', { min: 0, max: 1e6 });
  demandAmount('perDrop', kit.perDrop, 'hardness');
  return kit.drops * kit.perDrop;
}

/**
 * The part of the hardness that boiling can precipitate, and the part it cannot, mol/m³.
 *
 * Carbonate hardness is the smaller of the total and what the alkalinity can balance. A mole of
 * calcium needs two equivalents: carbonate = min(total, alkalinity / 2). `total` in mol/m³,
 * `alkalinity` in eq/m³ (50.04 mg/L as CaCO₃ is 1 eq/m³). Range: any water.
 *
 * @throws {DomainError} for a negative total or alkalinity.
 * @source davis-2010 Example 7-1
 */
export function hardnessParts(water: { readonly total: number; readonly alkalinity: number }): {
  readonly carbonate: number;
  readonly nonCarbonate: number;
} {
  demand('total', water.total, 'hardness', { min: 0, max: EXTREMES.hardness.max });
  demand('alkalinity', water.alkalinity, 'amountConcentration', { min: 0 });
  const carbonate = Math.min(water.total, water.alkalinity / 2);
  return { carbonate, nonCarbonate: water.total - carbonate };
}
