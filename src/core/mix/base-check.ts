import { demand } from '../domain-error.ts';
import { type BaseRecipe, baseMix, withDensities } from './base-mix.ts';

export interface BaseCheckInput {
  /** Density of the base mix as weighed in the jug, kg/m³. */
  readonly measuredDensity: number;
  /** The intended recipe: wanted w/c, sand and densities. */
  readonly recipe: BaseRecipe;
  /** Cement that went into the base mix in hand, kg. */
  readonly cement: number;
  /** Share of air stirred into it; 0 by default. */
  readonly air?: number;
}

export interface BaseCheck {
  /** The w/c that was mixed. */
  readonly waterCement: number;
  /** What the intended base mix would read in the jug, with as much air in it, kg/m³. */
  readonly wantedDensity: number;
  /** To add, kg; one of the two is 0. Sand goes with added cement. */
  readonly addWater: number;
  readonly addCement: number;
  readonly addSand: number;
  /** Change of the w/c per 1 kg/m³ of density error. */
  readonly perDensity: number;
  /** Change of it per 1 m³/kg of error in the volume of a kilogram of cement. */
  readonly perSpace: number;
}

/**
 * The w/c actually mixed, from the density of the base mix, and what corrects it.
 *
 * With the air taken out, ρ = measured/(1 − a). The density of a base mix is (1 + w + s)/(1/ρc +
 * w/ρw + s/ρs), so w = (1 + s − ρ (1/ρc + s/ρs))/(ρ/ρw − 1). Too little water: add (w₀ − w) C; too
 * much: add cement (w/w₀ − 1) C and its sand. Sand is assumed to be as in the recipe; a deviation
 * in it is read as one in water. No range is published.
 *
 * @param measuredDensity kg/m³; @param cement kg; @param air share, 0–0.3
 * @returns ratios, kg/m³, kg
 * @throws {DomainError} 'thinner-than-water' when the density is not above that of water,
 *   'drier-than-no-water' when it is above that of cement and sand without water; no cement
 * @source navedtra-14071 (absolute volume), astm-c138 (density by weighing)
 */
export function checkBase({ measuredDensity, recipe, cement, air = 0 }: BaseCheckInput): BaseCheck {
  const { cementDensity, sandDensity, waterDensity } = withDensities(recipe);
  const { waterCement: wanted, sandCement: s = 0 } = recipe;
  demand('waterCement', wanted, 'ratio', { min: 0, aboveMin: true });
  demand('cement', cement, 'mass', { min: 0, aboveMin: true });
  demand('air', air, 'ratio', { min: 0, max: 0.3 });
  const solid = 1 - air;
  const density = measuredDensity / solid;
  const solids = 1 / cementDensity + s / sandDensity;
  const driest = (1 + s) / solids;
  const below = density <= waterDensity;
  demand(
    'measuredDensity',
    measuredDensity,
    'density',
    { min: waterDensity * solid, max: driest * solid, aboveMin: true },
    below ? 'thinner-than-water' : 'drier-than-no-water',
  );
  const waterCement = (1 + s - density * solids) / (density / waterDensity - 1);
  const slope = (1 + s) / waterDensity - solids;
  const addCement = Math.max(0, (waterCement / wanted - 1) * cement);
  return {
    waterCement,
    wantedDensity: baseMix(recipe).density * solid,
    addWater: Math.max(0, (wanted - waterCement) * cement),
    addCement,
    addSand: addCement * s,
    perDensity: -slope / solid / (density / waterDensity - 1) ** 2,
    perSpace: -density / (density / waterDensity - 1),
  };
}
