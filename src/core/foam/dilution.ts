import { demand } from '../domain-error.ts';

/** The ways a label or a recipe states how much concentrate goes into the foaming solution. */
export const DILUTIONS = ['parts-water', 'one-in', 'percent-volume', 'percent-mass'] as const;

/**
 * All are of concentrate and water, before any glycerol.
 * - `parts-water`: "1 : N", one part of concentrate to N parts of water, by volume.
 * - `one-in`: "1 in N", one part of concentrate in N parts of both, by volume.
 * - `percent-volume`: concentrate as a share of both, by volume.
 * - `percent-mass`: concentrate as a share of both, by mass.
 */
export type Dilution = (typeof DILUTIONS)[number];

export interface DilutionStated {
  readonly convention: Dilution;
  /** The N of "1 : N" or "1 in N", or the share (0.025 for 2.5 %). */
  readonly stated: number;
  /** Density of the concentrate, kg/m³. */
  readonly concentrateDensity: number;
  /** Density of the water it is put into, kg/m³. */
  readonly waterDensity: number;
}

export interface ConcentrateShare {
  /** Concentrate as a share of the volume of concentrate and water, 0–1. */
  readonly byVolume: number;
  /** Concentrate as a share of the mass of concentrate and water, 0–1. */
  readonly byMass: number;
  /** The N of "1 : N parts water" by volume that means the same. */
  readonly partsWater: number;
  /** Density of concentrate and water mixed, kg/m³. */
  readonly density: number;
}

/**
 * How much concentrate does a stated dilution mean?
 *
 * Share by volume: 1/(N + 1) for "1 : N", 1/N for "1 in N", the share itself for percent by volume,
 * and w/ρc / (w/ρc + (1 − w)/ρw) for percent by mass. Volumes are taken to add. "1 : 40" is 2.44 %,
 * "1 in 40" is 2.50 %; both are called "1 to 40" and "2.5 %" in practice. No range is published.
 *
 * @returns shares by volume and by mass, the equal "1 : N", and the density in kg/m³
 * @throws {DomainError} "1 : N" with N ≤ 0, "1 in N" with N ≤ 1, a share outside 0–1, or a density
 *   that is not positive.
 * @source common-practice the meaning of the four conventions
 */
export function concentrateShare(dilution: DilutionStated): ConcentrateShare {
  const { concentrateDensity, waterDensity } = dilution;
  demand('concentrateDensity', concentrateDensity, 'density', { min: 0, aboveMin: true });
  demand('waterDensity', waterDensity, 'density', { min: 0, aboveMin: true });
  const byVolume = shareByVolume(dilution);
  const density = byVolume * concentrateDensity + (1 - byVolume) * waterDensity;
  return {
    byVolume,
    byMass: (byVolume * concentrateDensity) / density,
    partsWater: 1 / byVolume - 1,
    density,
  };
}

function shareByVolume(dilution: DilutionStated): number {
  const { convention, stated, concentrateDensity, waterDensity } = dilution;
  if (convention === 'parts-water') {
    demand('stated', stated, 'ratio', { min: 0, aboveMin: true });
    return 1 / (stated + 1);
  }
  if (convention === 'one-in') {
    demand('stated', stated, 'ratio', { min: 1, aboveMin: true });
    return 1 / stated;
  }
  demand('stated', stated, 'ratio', { min: 0, max: 1, aboveMin: true, belowMax: true });
  if (convention === 'percent-volume') return stated;
  const concentrate = stated / concentrateDensity;
  return concentrate / (concentrate + (1 - stated) / waterDensity);
}
