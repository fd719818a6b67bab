import { demand } from '../domain-error.ts';
import { demandAmount } from '../extremes.ts';
import { CEMENT_DENSITY, MIX_WATER_DENSITY } from '../mix/densities.ts';
import { HYDRATE_WATER } from '../mix/oven-dry.ts';
import { DAY } from '../quantity/constants.ts';

/**
 * The extremes of the constants fitted to Hoff's form: strength without pores (Pa) and exponent.
 * @source hoff-1972 (from memory)
 */
export const HOFF_LOW = { intrinsic: 115.3e6, exponent: 2.7 } as const;
export const HOFF_HIGH = { intrinsic: 290e6, exponent: 3 } as const;

/**
 * Strength of hydrated neat-cement cellular concrete by Hoff's power law of its solids, Pa.
 *
 * f = s₀ [d (1 + 0.2 ρc/ρw) / ((1 + w/c) ρc)]ᵇ. `wetDensity` d and `cementDensity` in kg/m³;
 * `intrinsic` s₀ in Pa, `exponent` b. Two fits of the constants differ by half as much again; no
 * range is published with what is recalled here, so it is no part of the strength band.
 *
 * @throws {DomainError} for amounts that are not positive, or solids that overfill the volume.
 * @source hoff-1972 (form and constants from memory)
 */
export function hoff1972(mix: {
  readonly wetDensity: number;
  readonly waterCement: number;
  readonly cementDensity?: number;
  readonly intrinsic: number;
  readonly exponent: number;
}): number {
  const { wetDensity, waterCement, cementDensity = CEMENT_DENSITY, intrinsic, exponent } = mix;
  demandAmount('wetDensity', wetDensity, 'density');
  demandAmount('cementDensity', cementDensity, 'density');
  demand('waterCement', waterCement, 'ratio', { min: 0, max: 100 });
  demand('intrinsic', intrinsic, 'stress', { min: 0, max: 1e9 });
  demand('exponent', exponent, 'ratio', { min: 0, max: 10 });
  const cement = wetDensity / (1 + waterCement);
  const solids = cement / cementDensity + (HYDRATE_WATER * cement) / MIX_WATER_DENSITY;
  demand('wetDensity', wetDensity, 'density', { max: wetDensity / solids }, 'no-room');
  return intrinsic * solids ** exponent;
}

/**
 * Strength from age and porosity after Kearsley and Wainwright, Pa.
 *
 * f = 39.6 (ln t)^1.174 (1 − p)^3.6 MPa, `age` t read in days (given here in s), `porosity` p a
 * share. No range is published with what is recalled here, so it is no part of the strength band.
 *
 * @throws {DomainError} for an age under a day or over 100 years, or a porosity outside 0–1.
 * @source kearsley-wainwright-2002 (from memory)
 */
export function kearsleyWainwright2002(piece: {
  readonly age: number;
  readonly porosity: number;
}): number {
  demand('age', piece.age, 'time', { min: DAY, max: 36_525 * DAY });
  demand('porosity', piece.porosity, 'ratio', { min: 0, max: 1 });
  return 39.6e6 * Math.log(piece.age / DAY) ** 1.174 * (1 - piece.porosity) ** 3.6;
}
