import { demand } from '../domain-error.ts';
import { demandAmount } from '../extremes.ts';
import { MIX_WATER_DENSITY, SAND_DENSITY } from './densities.ts';

/** A batch, or one load of it, as `proportion` gave it: kg, m³, kg/m³. */
interface Planned {
  readonly cement: number;
  readonly water: number;
  readonly sand: number;
  readonly foamVolume: number;
  readonly foamDensity: number;
  readonly baseDensity: number;
  readonly wetDensity: number;
}

/**
 * Recovers from the amounts of a batch what it was proportioned with: the density of the cement's
 * particles, and the share of the foam's gas that survives until the blend is weighed. The inverse
 * of `proportion`:
 *
 *   1/ρc = ((C + W + S)/ρb − W/ρw − S/ρs) / C
 *   V = (C + W + S + ρf F)/ρ, and (V − (C + W + S)/ρb)/F = 1 − (1 − a)(1 − ρf/ρw)
 *
 * Assumes water of 1000 kg/m³, sand of 2650 kg/m³ and amounts that belong together. Without foam
 * the survival a is 1. No range is published.
 *
 * @throws {DomainError} for amounts and densities that are not positive, a foam not lighter than
 *   water, and a base mix lighter than its water and sand alone.
 * @source navedtra-14071 p. 17-7 (absolute volume); the balance is arithmetic
 */
export function plannedWith(plan: Planned): {
  readonly cementDensity: number;
  readonly survival: number;
} {
  const { cement, water, sand, foamVolume, foamDensity, baseDensity, wetDensity } = plan;
  demandAmount('cement', cement, 'mass');
  demandAmount('baseDensity', baseDensity, 'density');
  demandAmount('wetDensity', wetDensity, 'density');
  const base = cement + water + sand;
  const ofCement = base / baseDensity - water / MIX_WATER_DENSITY - sand / SAND_DENSITY;
  demandAmount('cementDensity', cement / ofCement, 'density');
  if (!(foamVolume > 0)) return { cementDensity: cement / ofCement, survival: 1 };
  const gas = 1 - foamDensity / MIX_WATER_DENSITY;
  demand('foamDensity', foamDensity, 'density', { min: 0, max: MIX_WATER_DENSITY, belowMax: true });
  const left = ((base + foamDensity * foamVolume) / wetDensity - base / baseDensity) / foamVolume;
  // Amounts stored as doubles may give a share one last digit above 1.
  return { cementDensity: cement / ofCement, survival: Math.min(1, 1 - (1 - left) / gas) };
}
