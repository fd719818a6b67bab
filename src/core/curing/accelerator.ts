import { demand } from '../domain-error.ts';
import type { Note } from '../note.ts';
import { FAHRENHEIT_DEGREE } from '../quantity/constants.ts';
import { demandNotNegative } from './bounds.ts';
import { thirdRuleFactor } from './third-rule.ts';

/**
 * Most calcium chloride a mix may have, as a share of the cement.
 * @source concrete-construction-accelerators
 */
export const CHLORIDE_LIMIT = 0.02;

/**
 * Warming that shortens set as much as anhydrous calcium chloride, K per share of the cement: 11 °F
 * per per cent.
 * @source jove-16919
 */
export const CHLORIDE_WARMTH = (11 * FAHRENHEIT_DEGREE) / 0.01;

/**
 * Shortest the limit dose was seen to make set, as a share of the plain time: two thirds off.
 * @source rapp-1934
 */
const CHLORIDE_SHORTEST = 1 / 3;

export interface ChlorideSet {
  /** The dose as an equivalent warming, K. */
  readonly warmth: number;
  /**
   * Set as a share of the plain set: from the warming, and the largest reduction seen at this dose.
   */
  readonly factor: number;
  readonly shortest: number;
}

/**
 * What calcium chloride does to set: the dose's equivalent warming by the rule of a third; and the
 * shortest set observed, on a straight line from none to the limit dose. `dose`: anhydrous, share
 * of the cement's mass, 0…0.02; `steel`: whether steel of any kind is or will be in the part. A
 * product's own sheet decides. Range: doses up to CHLORIDE_LIMIT.
 * @throws {DomainError} for a dose outside 0…2 %, and for any dose at all with steel ('steel').
 * @source jove-16919 for the warmth
 * @source rapp-1934 for the shortest
 * @source concrete-construction-accelerators for the limit
 */
export function chlorideSet(of: { readonly dose: number; readonly steel: boolean }): ChlorideSet {
  const { dose, steel } = of;
  demand('dose', dose, 'ratio', { min: 0, max: CHLORIDE_LIMIT });
  if (steel) demand('dose', dose, 'ratio', { min: 0, max: 0 }, 'steel');
  const warmth = dose * CHLORIDE_WARMTH;
  return {
    warmth,
    factor: thirdRuleFactor(warmth),
    shortest: 1 - (1 - CHLORIDE_SHORTEST) * (dose / CHLORIDE_LIMIT),
  };
}

/**
 * Set with another accelerator, as a share of the plain set: a straight line from 1 at no dose to
 * the value that the product's sheet claims at its highest dose. `dose`, `lowest` and `highest`:
 * share of the cement's mass; `claimed`: share of the plain set left at the highest. The sheet is
 * the source; the straight line is ours. No range is published; a dose below the sheet's lowest
 * carries the note 'outside-range'.
 * @throws {DomainError} for a dose above the sheet's highest, or a claim outside 0…1.
 * @source common-practice
 */
export function acceleratorFactor(of: {
  readonly dose: number;
  readonly lowest: number;
  readonly highest: number;
  readonly claimed: number;
}): { readonly factor: number; readonly notes: readonly Note[] } {
  const { dose, lowest, highest, claimed } = of;
  demandNotNegative('lowest', lowest, 'ratio');
  demand('highest', highest, 'ratio', { min: lowest, aboveMin: true });
  demand('dose', dose, 'ratio', { min: 0, max: highest });
  demand('claimed', claimed, 'ratio', { min: 0, aboveMin: true, max: 1 });
  return {
    factor: 1 - (1 - claimed) * (dose / highest),
    notes: dose > 0 && dose < lowest ? [{ code: 'outside-range', of: 'dose' }] : [],
  };
}
