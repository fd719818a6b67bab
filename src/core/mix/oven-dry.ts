import { demand } from '../domain-error.ts';
import { demandAmount, EXTREMES } from '../extremes.ts';

/**
 * Water bound in hydrate that oven drying leaves, as a share of the cement's mass.
 * @source astm-c869 Table 1 note
 */
export const HYDRATE_WATER = 0.2;

/**
 * Expected oven-dry density, kg/m³: D = (1.2 C + A) / V.
 *
 * `cement` and `aggregate` (dry) in kg, `volume` in m³ as cast. It counts a fifth of the cement's
 * mass as bound water, whatever the age; a young or badly cured piece holds less. The foam's solids
 * (some 0.1 %) are left out. Range: stated for cellular concrete of 320–1920 kg/m³.
 *
 * @throws {DomainError} for a negative mass or no volume.
 * @source astm-c869 Table 1, aci-523-1r (aggregate term, from memory)
 */
export function ovenDryDensity(cast: {
  readonly cement: number;
  readonly aggregate: number;
  readonly volume: number;
}): number {
  demand('cement', cast.cement, 'mass', { min: 0, max: EXTREMES.mass.max });
  demand('aggregate', cast.aggregate, 'mass', { min: 0, max: EXTREMES.mass.max });
  demandAmount('volume', cast.volume, 'volume');
  return ((1 + HYDRATE_WATER) * cast.cement + cast.aggregate) / cast.volume;
}
