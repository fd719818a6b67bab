import { demand } from '../domain-error.ts';
import { demandAmount, EXTREMES } from '../extremes.ts';
import { concentrateShare, type DilutionStated } from './dilution.ts';

/**
 * Density of a foam concentrate, kg/m³; its own sheet decides (1000–1200 is typical).
 * @source foam-concentrate-density (from memory)
 */
export const CONCENTRATE_DENSITY = 1100;
/** Density of glycerol at 20 °C, kg/m³. @source crc-handbook */
export const GLYCEROL_DENSITY = 1261;
/** Density of the measured water, kg/m³ at 20 °C. @source tanaka-2001 */
export const MEASURED_WATER_DENSITY = 998.2;

/** Masses in kg, volumes in m³. */
export interface FoamingSolution {
  readonly solutionMass: number;
  readonly solutionVolume: number;
  readonly concentrateMass: number;
  readonly concentrateVolume: number;
  /** The part of `concentrateMass` that only replaces soap lost to curd. */
  readonly soapMakeUp: number;
  readonly glycerolMass: number;
  readonly glycerolVolume: number;
  readonly waterMass: number;
  readonly waterVolume: number;
}

/** A dilution as "1 : N" parts of water, or in any other stated form. */
type StatedDilution =
  | { readonly partsWater: number; readonly dilution?: never }
  | {
      readonly dilution: Pick<DilutionStated, 'convention' | 'stated'>;
      readonly partsWater?: never;
    };

export interface SoapInConcentrate {
  /**
   * Dry soap that the water turns to curd, kg per m³ of water (`soapLost` of the water chapter).
   */
  readonly lost: number;
  /** Dry soap in the concentrate, as a share of its mass. */
  readonly content: number;
}

/**
 * What to mix for a wanted volume of foam.
 *
 * `foamVolume` m³; `foamDensity` as the scale reads it, kg/m³ (see `foamDensity`: the air drops
 * out, so it is the solution held per volume); `partsWater` N of "1 : N", one volume of
 * concentrate to N volumes of water, or `dilution` in another convention; `glycerolShare` of the
 * solution's mass; `lanceLoss` waste, as a share on top; `priming` solution that fills hose and
 * lance and makes no foam, m³; `soap` only when the concentrate is a soap.
 *
 * Solution S = foamVolume × foamDensity × (1 + lanceLoss) + priming × its density. Glycerol g S.
 * The rest is water W and concentrate (k + x) W: k by the dilution, x = lost/(content × ρwater) to
 * make up for soap, so W = (1 − g) S/(1 + k + x). The solution's density is `solutionDensity`, or,
 * when that is not given, its mass over the sum of the parts (water and glycerol draw together by
 * up to 1 % on mixing: less than that at a few percent). No range is published; a glycerol share
 * above one half is refused as no foaming solution.
 *
 * @throws {DomainError} for no foam, a foam denser than its solution, shares outside 0–0.5
 *   (glycerol), 0–2 (loss), a negative priming, a dilution `concentrateShare` refuses, a negative
 *   loss of soap or a content outside 0–1.
 * @source astm-c796 (40 : 1 as a start), crc-handbook (glycerol), soap-stoichiometry (the make-up)
 */
export function foamingSolution(
  wanted: StatedDilution & {
    readonly foamVolume: number;
    readonly foamDensity: number;
    readonly glycerolShare?: number;
    readonly lanceLoss?: number;
    readonly priming?: number;
    readonly soap?: SoapInConcentrate;
    readonly concentrateDensity?: number;
    readonly solutionDensity?: number;
    readonly glycerolDensity?: number;
    readonly waterDensity?: number;
  },
): FoamingSolution {
  const { foamVolume, foamDensity, glycerolShare = 0, lanceLoss = 0, priming = 0, soap } = wanted;
  const { concentrateDensity = CONCENTRATE_DENSITY, glycerolDensity = GLYCEROL_DENSITY } = wanted;
  const { waterDensity = MEASURED_WATER_DENSITY } = wanted;
  demand('foamVolume', foamVolume, 'volume', { min: 0, max: EXTREMES.volume.max });
  demandAmount('foamDensity', foamDensity, 'density');
  demand('foamDensity', foamDensity, 'density', { max: 1000, belowMax: true });
  if (wanted.partsWater !== undefined)
    demand('partsWater', wanted.partsWater, 'ratio', { min: 0, aboveMin: true });
  demand('glycerolShare', glycerolShare, 'ratio', { min: 0, max: 0.5 });
  demand('lanceLoss', lanceLoss, 'ratio', { min: 0, max: 2 });
  demand('priming', priming, 'volume', { min: 0, max: EXTREMES.volume.max });
  demand('concentrateDensity', concentrateDensity, 'density', { min: 800, max: 1600 });
  demand('glycerolDensity', glycerolDensity, 'density', { min: 1000, max: 1300 });
  demand('waterDensity', waterDensity, 'density', { min: 900, max: 1100 });
  const { solutionDensity } = wanted;
  if (solutionDensity !== undefined)
    demand('solutionDensity', solutionDensity, 'density', { min: 900, max: 1300 });

  const stated = wanted.dilution ?? { convention: 'parts-water', stated: wanted.partsWater };
  const { byMass } = concentrateShare({ ...stated, concentrateDensity, waterDensity });
  const makeUp = soap ? makeUpPerWater(soap, waterDensity) : 0;
  const water = (1 - glycerolShare) / (1 + byMass / (1 - byMass) + makeUp);
  const concentrate = 1 - glycerolShare - water;
  const density =
    solutionDensity ??
    1 / (water / waterDensity + concentrate / concentrateDensity + glycerolShare / glycerolDensity);
  const solutionMass = foamVolume * foamDensity * (1 + lanceLoss) + priming * density;
  return {
    solutionMass,
    solutionVolume: solutionMass / density,
    concentrateMass: concentrate * solutionMass,
    concentrateVolume: (concentrate * solutionMass) / concentrateDensity,
    soapMakeUp: makeUp * water * solutionMass,
    glycerolMass: glycerolShare * solutionMass,
    glycerolVolume: (glycerolShare * solutionMass) / glycerolDensity,
    waterMass: water * solutionMass,
    waterVolume: (water * solutionMass) / waterDensity,
  };
}

/** Concentrate that replaces the soap lost to curd, per mass of water. */
function makeUpPerWater({ lost, content }: SoapInConcentrate, waterDensity: number): number {
  demand('lost', lost, 'concentration', { min: 0, max: EXTREMES.concentration.max });
  demand('content', content, 'ratio', { min: 0, max: 1, aboveMin: true });
  return lost / (content * waterDensity);
}
