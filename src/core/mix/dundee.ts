import { demand } from '../domain-error.ts';
import { demandAmount } from '../extremes.ts';
import { type Note, outsideRange } from '../note.ts';

/** The w/c the rule is usually used with. @source jones-mccarthy-2005 (from memory) */
const DUNDEE_WATER_CEMENT = 0.5;

/** The plastic densities the rule is used for, kg/m³. @source jones-mccarthy-2005 (from memory) */
const DUNDEE_RANGE = { min: 1000, max: 1400 } as const;

/**
 * Water and fine aggregate of a sanded mix by the Dundee rule, kg per m³.
 *
 * Plastic density D = C + W + F, W = (w/c) C, w/c 0.5 unless given: the foam's mass is ignored, so
 * the mix comes out heavier than D by foam density × foam share. `density` and `cement` in kg/m³.
 * Used for foamed concrete of about 1000–1400 kg/m³, beyond which comes the note 'outside-range';
 * no range is published for the sum itself.
 *
 * @throws {DomainError} when cement and water alone outweigh the density ('heavier-than-target').
 * @source jones-mccarthy-2005 (from memory)
 */
export function dundeeRule(mix: {
  readonly density: number;
  readonly cement: number;
  readonly waterCement?: number;
}): { readonly water: number; readonly fine: number; readonly notes: readonly Note[] } {
  const { density, cement, waterCement = DUNDEE_WATER_CEMENT } = mix;
  demandAmount('cement', cement, 'density');
  demand('waterCement', waterCement, 'ratio', { min: 0, max: 100 });
  const water = waterCement * cement;
  demand('density', density, 'density', { min: cement + water }, 'heavier-than-target');
  return {
    water,
    fine: density - cement - water,
    notes: outsideRange('density', density, DUNDEE_RANGE),
  };
}
