import { demand } from '../domain-error.ts';
import { CEMENT_DENSITY, MIX_WATER_DENSITY } from './densities.ts';
import { MOST_WATER_CEMENT } from './most-water.ts';

/** Base mix with the most water it may have, per kilogram of cement: kg and m³. */
const THINNEST = {
  mass: 1 + MOST_WATER_CEMENT,
  volume: 1 / CEMENT_DENSITY + MOST_WATER_CEMENT / MIX_WATER_DENSITY,
};

/**
 * The lowest density a mix of this wet density can dry to, kg/m³: cement alone, with none of its
 * water bound. If it is lighter than the thinnest base mix, it consists of that and foam, C = (ρ −
 * ρf) / (m − ρf v); if denser, of cement and water without air, C = (ρ − ρw) / (1 − ρw/ρc). Sand
 * leaves more. 0 if it is no denser than the foam. No range is published.
 *
 * `wetDensity` and `foamDensity` in kg/m³; the foam's, its dead share counted as liquid.
 * @throws {DomainError} for a density that is not positive, or a foam no lighter than water.
 * @source kearsley-mostert-2005 (the two equations, from memory), common-practice (w/c to 2)
 */
export function leastOvenDryDensity(mix: {
  readonly wetDensity: number;
  readonly foamDensity: number;
}): number {
  const { wetDensity, foamDensity } = mix;
  demand('wetDensity', wetDensity, 'density', { min: 0, aboveMin: true });
  demand('foamDensity', foamDensity, 'density', {
    min: 0,
    aboveMin: true,
    max: MIX_WATER_DENSITY,
    belowMax: true,
  });
  const foamed = (wetDensity - foamDensity) / (THINNEST.mass - foamDensity * THINNEST.volume);
  const airless = (wetDensity - MIX_WATER_DENSITY) / (1 - MIX_WATER_DENSITY / CEMENT_DENSITY);
  return Math.max(0, foamed, airless);
}
