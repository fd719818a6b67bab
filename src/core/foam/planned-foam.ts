import { demand } from '../domain-error.ts';
import { leftOfFoam } from '../mix/left-of-foam.ts';
import { SOLUTION_DENSITY } from './density.ts';

/** A batch given by its densities, kg/m³, as the scale reads them. */
export interface PlannedBlend {
  /** Wet density the batch is planned for. */
  readonly wetDensity: number;
  readonly baseDensity: number;
  readonly foamDensity: number;
  /** Density of the liquid in the foam; `SOLUTION_DENSITY` by default. */
  readonly solutionDensity?: number;
  /**
   * Share of the foam's gas that the plan expects to survive until the blend is weighed, 0–1; 1 by
   * default.
   */
  readonly survival?: number;
}

export interface PlannedFoam {
  /** Foam to make for the batch, m³, including what dies. */
  readonly foamVolume: number;
  /** Mass of its base mix, kg. */
  readonly baseMass: number;
}

/**
 * How much foam and base mix make up a mass of blend of a planned density?
 *
 * A volume V = mass/ρ takes (ρb − ρ)/(ρb λ − ρf) of foam, as a share. λ is how much of the foam's
 * volume is left: 1, or what `leftOfFoam` gives for the share of its gas that survives. The base
 * mix takes the rest.
 *
 * @param mass of the blend, kg
 * @param blend wet, base-mix, foam and solution density, kg/m³, and the share of the gas that lives
 * @returns foam in m³, base mix in kg. No range is published: a balance of mass and volume.
 * @throws {DomainError} mass or foam density not positive; a foam not lighter than its solution; a
 *   survival not above 0 or above 1; a wet density not above that of what is left of the foam
 *   ('lighter-than-foam') or not below the base mix's ('heavier-than-base-mix')
 * @source navedtra-14071 absolute volume
 */
export function plannedFoam({
  mass,
  ...blend
}: PlannedBlend & { readonly mass: number }): PlannedFoam {
  demand('mass', mass, 'mass', { min: 0, aboveMin: true });
  const { made, left } = foamShare(blend);
  const volume = mass / blend.wetDensity;
  return { foamVolume: made * volume, baseMass: (1 - left) * volume * blend.baseDensity };
}

/**
 * How dense would the blend be if every bubble broke?
 *
 * The same mass in the volume of its base mix and the foam's liquid: ρ/((1 − λ f) + f ρf/ρs), with
 * f the foam made over the volume and λ what is left of it, as in `plannedFoam`.
 *
 * @param blend wet, base-mix, foam and solution density, kg/m³, and the share of the gas that lives
 * @returns density without gas, kg/m³. No range is published.
 * @throws {DomainError} as `plannedFoam`, the mass aside
 * @source navedtra-14071 absolute volume
 */
export function gaslessDensity(blend: PlannedBlend): number {
  const { made, left } = foamShare(blend);
  const { wetDensity, foamDensity, solutionDensity = SOLUTION_DENSITY } = blend;
  return wetDensity / (1 - left + (made * foamDensity) / solutionDensity);
}

/** Relative to the blend's volume: the foam made for it, and what is left of that. */
function foamShare(blend: PlannedBlend): { readonly made: number; readonly left: number } {
  const { wetDensity, baseDensity, foamDensity } = blend;
  const { solutionDensity = SOLUTION_DENSITY, survival = 1 } = blend;
  const lighter = { min: 0, max: solutionDensity, aboveMin: true, belowMax: true };
  demand('foamDensity', foamDensity, 'density', lighter);
  demand('survival', survival, 'ratio', { min: 0, max: 1, aboveMin: true });
  const left = leftOfFoam({ survival, liquid: foamDensity / solutionDensity });
  const above = { min: foamDensity / left, aboveMin: true };
  demand('wetDensity', wetDensity, 'density', above, 'lighter-than-foam');
  const below = { max: baseDensity, belowMax: true };
  demand('wetDensity', wetDensity, 'density', below, 'heavier-than-base-mix');
  const made = (baseDensity - wetDensity) / (baseDensity * left - foamDensity);
  return { made, left: made * left };
}
