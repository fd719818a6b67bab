import { demand } from '../domain-error.ts';
import { demandAmount, EXTREMES } from '../extremes.ts';
import { CEMENT_DENSITY, MIX_WATER_DENSITY, SAND_DENSITY } from './densities.ts';

/** What goes into a base mix, by mass of cement, and the particle densities in kg/m³. */
export interface BaseRecipe {
  readonly waterCement: number;
  /** Sand, saturated and surface dry, to cement; 0 for neat cement. */
  readonly sandCement?: number;
  readonly cementDensity?: number;
  readonly sandDensity?: number;
  readonly waterDensity?: number;
}

export interface BaseMix {
  /** kg/m³, with no air entrained. */
  readonly density: number;
  /** m³ of base mix per kilogram of cement. */
  readonly volumePerCement: number;
  /** kg of base mix per kilogram of cement. */
  readonly massPerCement: number;
}

/**
 * Density and yield of a base mix by absolute volumes: the sum of each part's mass over its
 * particle density.
 *
 * massPerCement = 1 + w/c + s/c; volumePerCement = 1/ρc + (w/c)/ρw + (s/c)/ρs; density is their
 * quotient. Entrained air is not counted. No range is published for the sum itself.
 *
 * @throws {DomainError} for a negative ratio or a density no such material has.
 * @source navedtra-14071 p. 17-7 (absolute volume)
 */
export function baseMix(recipe: BaseRecipe): BaseMix {
  const { waterCement, sandCement = 0 } = recipe;
  const { cementDensity, sandDensity, waterDensity } = withDensities(recipe);
  demand('waterCement', waterCement, 'ratio', { min: 0, max: 100 });
  demand('sandCement', sandCement, 'ratio', { min: 0, max: 100 });
  const massPerCement = 1 + waterCement + sandCement;
  const volumePerCement = 1 / cementDensity + waterCement / waterDensity + sandCement / sandDensity;
  return { density: massPerCement / volumePerCement, volumePerCement, massPerCement };
}

/**
 * The water-cement ratio of a batch whose water was measured by volume.
 *
 * `cement` in kg, `water` in m³; ratio = ρw V / C. Any amounts.
 *
 * @throws {DomainError} for no cement or a negative volume.
 * @source definition (mass of water over mass of cement)
 */
export function waterCementRatio(batch: {
  readonly cement: number;
  readonly water: number;
  readonly waterDensity?: number;
}): number {
  const { cement, water, waterDensity = MIX_WATER_DENSITY } = batch;
  demandAmount('cement', cement, 'mass');
  demand('water', water, 'volume', { min: 0, max: EXTREMES.volume.max });
  demand('waterDensity', waterDensity, 'density', { min: 900, max: 1200 });
  return (waterDensity * water) / cement;
}

/**
 * The particle densities of a recipe, kg/m³, validated, with the named defaults for those it omits.
 * @throws {DomainError} for a density no such material has.
 * @source none: the defaults name their own
 */
export function withDensities(recipe: BaseRecipe): {
  readonly cementDensity: number;
  readonly sandDensity: number;
  readonly waterDensity: number;
} {
  const { cementDensity = CEMENT_DENSITY, sandDensity = SAND_DENSITY } = recipe;
  const { waterDensity = MIX_WATER_DENSITY } = recipe;
  demand('cementDensity', cementDensity, 'density', { min: 1000, max: 5000 });
  demand('sandDensity', sandDensity, 'density', { min: 100, max: 5000 });
  demand('waterDensity', waterDensity, 'density', { min: 900, max: 1200 });
  return { cementDensity, sandDensity, waterDensity };
}
