import { demand } from '../domain-error.ts';

/** A batch told by its densities, kg/m³, as the scale reads them. */
export interface PlannedBlend {
  /** Wet density the batch is planned for. */
  readonly wetDensity: number;
  readonly baseDensity: number;
  readonly foamDensity: number;
}

export interface PlannedFoam {
  /** Foam the batch is reckoned with, m³. */
  readonly foamVolume: number;
  /** Mass of its base mix, kg. */
  readonly baseMass: number;
}

/**
 * How much foam and base mix make up a mass of blend of a planned density?
 *
 * Of a volume V = mass/ρ the foam takes (ρb − ρ)/(ρb − ρf), the base mix the rest.
 *
 * @param mass of the blend, kg
 * @param blend wet, base-mix and foam density, kg/m³
 * @returns foam in m³, base mix in kg. No range is published: a balance of mass and volume.
 * @throws {DomainError} mass or foam density not positive; a wet density not above the foam's
 *   ('lighter-than-foam') or not below the base mix's ('heavier-than-base-mix')
 * @source navedtra-14071 absolute volume
 */
export function plannedFoam({
  mass,
  ...blend
}: PlannedBlend & { readonly mass: number }): PlannedFoam {
  demand('mass', mass, 'mass', { min: 0, aboveMin: true });
  const share = foamShare(blend);
  const volume = mass / blend.wetDensity;
  return { foamVolume: share * volume, baseMass: (1 - share) * volume * blend.baseDensity };
}

/**
 * What would the blend weigh if every bubble broke?
 *
 * The same mass in the volume of its base mix and the foam's liquid: ρ/((1 − f) + f ρf/ρs), with f
 * the foam's share of the volume.
 *
 * @param blend wet, base-mix and foam density, kg/m³
 * @param solutionDensity of the liquid in the foam, kg/m³
 * @returns density without gas, kg/m³. No range is published.
 * @throws {DomainError} as `plannedFoam`; a foam not lighter than its solution
 * @source navedtra-14071 absolute volume
 */
export function gaslessDensity({
  solutionDensity,
  ...blend
}: PlannedBlend & { readonly solutionDensity: number }): number {
  const share = foamShare(blend);
  const { foamDensity } = blend;
  demand('foamDensity', foamDensity, 'density', { max: solutionDensity, belowMax: true });
  return blend.wetDensity / (1 - share + (share * foamDensity) / solutionDensity);
}

function foamShare({ wetDensity, baseDensity, foamDensity }: PlannedBlend): number {
  demand('foamDensity', foamDensity, 'density', { min: 0, aboveMin: true });
  const above = { min: foamDensity, aboveMin: true };
  demand('wetDensity', wetDensity, 'density', above, 'lighter-than-foam');
  const below = { max: baseDensity, belowMax: true };
  demand('wetDensity', wetDensity, 'density', below, 'heavier-than-base-mix');
  return (baseDensity - wetDensity) / (baseDensity - foamDensity);
}
