import { demand } from '../domain-error.ts';
import { concentrateShare } from './dilution.ts';

/** Density of a foam concentrate, kg/m³; its own sheet decides (1000–1200 is met). @source foam-concentrate-density (from memory) */
export const CONCENTRATE_DENSITY = 1100;
/** Density of glycerol at 20 °C, kg/m³. @source crc-handbook */
export const GLYCEROL_DENSITY = 1261;
/** Density of the water that is measured out, kg/m³ at 20 °C. @source tanaka-2001 */
export const MEASURED_WATER_DENSITY = 998.2;

/** Masses in kg, volumes in m³. */
export interface FoamingSolution {
  readonly solutionMass: number;
  readonly solutionVolume: number;
  readonly concentrateMass: number;
  readonly concentrateVolume: number;
  readonly glycerolMass: number;
  readonly glycerolVolume: number;
  readonly waterMass: number;
  readonly waterVolume: number;
}

/**
 * What to mix for a wanted volume of foam.
 *
 * `foamVolume` m³; `foamDensity` as the scale reads it, kg/m³ (see `foamDensity`: the air drops
 * out, so it is the solution held per volume); `partsWater` N of "1 : N", one volume of
 * concentrate to N volumes of water; `glycerolShare` of the solution's mass; `lanceLoss` what the
 * hose and lance keep, as a share on top.
 *
 * Solution S = foamVolume × foamDensity × (1 + lanceLoss). Glycerol g S. The rest is concentrate
 * of volume c and water of volume N c: c = (1 − g) S / (ρconcentrate + N ρwater). The solution's
 * volume is S over `solutionDensity`, or, when that is not given, the sum of the parts (water and
 * glycerol draw together by up to 1 % on mixing: less than that at a few percent). No range is
 * published; a glycerol share above one half is refused as no foaming solution.
 *
 * @throws {DomainError} for no foam, a foam denser than its solution, or shares outside 0–0.5 (glycerol), 0–2 (loss).
 * @source astm-c796 (40 : 1 as a start), crc-handbook (glycerol)
 */
export function foamingSolution(wanted: {
  readonly foamVolume: number;
  readonly foamDensity: number;
  readonly partsWater: number;
  readonly glycerolShare?: number;
  readonly lanceLoss?: number;
  readonly concentrateDensity?: number;
  readonly solutionDensity?: number;
  readonly glycerolDensity?: number;
  readonly waterDensity?: number;
}): FoamingSolution {
  const { foamVolume, foamDensity, partsWater, glycerolShare = 0, lanceLoss = 0 } = wanted;
  const { concentrateDensity = CONCENTRATE_DENSITY, glycerolDensity = GLYCEROL_DENSITY } = wanted;
  const { waterDensity = MEASURED_WATER_DENSITY } = wanted;
  demand('foamVolume', foamVolume, 'volume', { min: 0 });
  demand('foamDensity', foamDensity, 'density', {
    min: 0,
    max: 1000,
    aboveMin: true,
    belowMax: true,
  });
  demand('partsWater', partsWater, 'ratio', { min: 0, aboveMin: true });
  demand('glycerolShare', glycerolShare, 'ratio', { min: 0, max: 0.5 });
  demand('lanceLoss', lanceLoss, 'ratio', { min: 0, max: 2 });
  demand('concentrateDensity', concentrateDensity, 'density', { min: 800, max: 1600 });
  demand('glycerolDensity', glycerolDensity, 'density', { min: 1000, max: 1300 });
  demand('waterDensity', waterDensity, 'density', { min: 900, max: 1100 });

  const solutionMass = foamVolume * foamDensity * (1 + lanceLoss);
  const glycerolMass = glycerolShare * solutionMass;
  const concentrate = { concentrateDensity, waterDensity };
  const share = concentrateShare({ convention: 'parts-water', stated: partsWater, ...concentrate });
  const concentrateMass = (solutionMass - glycerolMass) * share.byMass;
  const waterMass = solutionMass - glycerolMass - concentrateMass;
  const concentrateVolume = concentrateMass / concentrateDensity;
  const waterVolume = waterMass / waterDensity;
  const glycerolVolume = glycerolMass / glycerolDensity;
  const { solutionDensity } = wanted;
  if (solutionDensity !== undefined)
    demand('solutionDensity', solutionDensity, 'density', { min: 900, max: 1300 });
  return {
    solutionMass,
    solutionVolume:
      solutionDensity === undefined
        ? concentrateVolume + waterVolume + glycerolVolume
        : solutionMass / solutionDensity,
    concentrateMass,
    concentrateVolume,
    glycerolMass,
    glycerolVolume,
    waterMass,
    waterVolume,
  };
}
