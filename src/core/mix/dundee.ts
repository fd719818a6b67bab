import { demand } from '../domain-error.ts';
import { demandAmount } from '../extremes.ts';

/** The w/c the rule is usually used with. @source jones-mccarthy-2005 (from memory) */
const DUNDEE_WATER_CEMENT = 0.5;

/**
 * Water and fine aggregate of a sanded mix by the Dundee rule, kg per m³.
 *
 * Plastic density D = C + W + F, W = (w/c) C: the foam's mass is ignored, so the mix comes out
 * heavier than D by foam density × foam share. `density` and `cement` in kg/m³. Used for
 * foamed concrete of about 1000–1400 kg/m³; no range is published for the sum itself.
 *
 * @throws {DomainError} when cement and water alone outweigh the density ('heavier-than-target').
 * @source jones-mccarthy-2005 (from memory)
 */
export function dundeeRule(mix: {
  readonly density: number;
  readonly cement: number;
  readonly waterCement?: number;
}): { readonly water: number; readonly fine: number } {
  const { density, cement, waterCement = DUNDEE_WATER_CEMENT } = mix;
  demandAmount('cement', cement, 'density');
  demand('waterCement', waterCement, 'ratio', { min: 0, max: 100 });
  const water = waterCement * cement;
  demand('density', density, 'density', { min: cement + water }, 'heavier-than-target');
  return { water, fine: density - cement - water };
}
