import { demand } from '../domain-error.ts';
import { type Note, outsideRange } from '../note.ts';
import { POUND_PER_CUBIC_FOOT, PSI } from '../quantity/constants.ts';

export interface Modulus {
  /** Young's modulus, Pa. */
  readonly modulus: number;
  readonly notes: readonly Note[];
}

/**
 * E of sanded foamed concrete, Pa: 0.42 fc^1.18 (GPa, MPa). From memory; no range is recalled.
 * @param of compressive strength Pa, above 0
 * @throws {DomainError} for a strength not above 0
 * @source jones-mccarthy-2005
 */
export function sandModulus({ compressive }: { readonly compressive: number }): Modulus {
  demand('compressive', compressive, 'stress', { min: 0, aboveMin: true });
  return { modulus: 0.42e9 * (compressive / 1e6) ** 1.18, notes: [] };
}

/**
 * E of foamed concrete with coarse fly ash for sand, Pa: 0.99 fc^0.67 (GPa, MPa). From memory; no
 * range is recalled.
 * @param of compressive strength Pa, above 0
 * @throws {DomainError} for a strength not above 0
 * @source jones-mccarthy-2005
 */
export function flyAshModulus({ compressive }: { readonly compressive: number }): Modulus {
  demand('compressive', compressive, 'stress', { min: 0, aboveMin: true });
  return { modulus: 0.99e9 * (compressive / 1e6) ** 0.67, notes: [] };
}

/**
 * Densities of the square-root relation, kg/m³ (90–155 lb/ft³): foamed concrete lies below. From
 * memory.
 * @source pauw-1960
 */
const PAUW_RANGE = { min: 1440, max: 2480 } as const;

/**
 * E from density and strength, Pa: 33 w^1.5 √fc (psi, lb/ft³). From memory; range 1440–2480 kg/m³.
 * A note is given outside it, where foamed concrete nearly always lies.
 * @param of density kg/m³ and compressive strength Pa, above 0
 * @throws {DomainError} outside those
 * @source pauw-1960
 */
export function pauwModulus(of: {
  readonly density: number;
  readonly compressive: number;
}): Modulus {
  demand('density', of.density, 'density', { min: 0, aboveMin: true });
  demand('compressive', of.compressive, 'stress', { min: 0, aboveMin: true });
  const [w, fc] = [of.density / POUND_PER_CUBIC_FOOT, of.compressive / PSI];
  return {
    modulus: 33 * w ** 1.5 * Math.sqrt(fc) * PSI,
    notes: outsideRange('density', of.density, PAUW_RANGE),
  };
}

/**
 * E from density alone, Pa: 5.31 w − 853 (MPa, kg/m³). From memory; zero or less below 161 kg/m³,
 * which is refused. No range is recalled.
 * @param of density kg/m³
 * @throws {DomainError} at or below the density where the line reaches zero
 * @source tada-1986
 */
export function tadaModulus({ density }: { readonly density: number }): Modulus {
  demand('density', density, 'density', { min: 853 / 5.31, aboveMin: true });
  return { modulus: (5.31 * density - 853) * 1e6, notes: [] };
}

/**
 * E and Poisson's ratio reported of cellular concrete of 400–600 kg/m³, Pa.
 * @source ni-2018 abstract
 */
export const CELLULAR_MODULUS = {
  density: { min: 400, max: 600 },
  modulus: { low: 850e6, high: 1100e6 },
  poisson: { low: 0.19, high: 0.26 },
} as const;
