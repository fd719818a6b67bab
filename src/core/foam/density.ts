import { demand } from '../domain-error.ts';
import { demandAmount, EXTREMES } from '../extremes.ts';
import { type Note, outsideRange } from '../note.ts';
import { STANDARD_FOAM_BAND } from './standard-band.ts';

/**
 * Density of workshop air, kg/m³: 20 °C, 50 % humidity, sea level gives 1.199.
 * @source spieweck-bettin
 */
export const AIR_DENSITY = 1.2;

/**
 * Density of a foaming solution, kg/m³: water with a few percent of concentrate.
 * @source common-practice
 */
export const SOLUTION_DENSITY = 1000;

export interface FoamDensity {
  /** The scale reading over the vessel's volume, kg/m³: the number every bench balance uses. */
  readonly apparent: number;
  /** Solution held in the foam of the vessel, kg and m³. */
  readonly liquidMass: number;
  readonly liquidVolume: number;
  /** Share of the foam's volume that is gas. */
  readonly gasFraction: number;
  /** Volume of foam per volume of solution. */
  readonly expansion: number;
  readonly notes: readonly Note[];
}

/**
 * Density, gas fraction and expansion of a foam from weighing a vessel of it.
 *
 * `tare` (vessel alone) and `full` in kg, `vessel` its volume in m³; densities in kg/m³.
 *
 * A scale in air reads the mass on it less the mass of the air it pushes aside. Foam of volume V
 * holds liquid Vₗ at density ρₗ and air V − Vₗ at ρₐ (the bubbles' own pressure, a few hundred Pa,
 * changes that by under 0.5 %). The net reading is therefore R = ρₗ Vₗ + ρₐ (V − Vₗ) − ρₐ V = (ρₗ −
 * ρₐ) Vₗ: the air drops out but for what the liquid displaces. So Vₗ = R / (ρₗ − ρₐ), gas fraction
 * 1 − Vₗ / V, expansion V / Vₗ; the apparent density R / V is the liquid in a volume of foam to
 * 0.12 %, and the true density is R / V + ρₐ, 1.2 kg/m³ more: 1.5 % at 80 kg/m³. A bucket of wet
 * mix is weighed in the same air, so balances are kept in apparent masses throughout. The scale's
 * own calibration weights (0.015 %) are left out.
 *
 * Note 'outside-range' of 'apparent' outside the standards' 32–64 kg/m³.
 *
 * @throws {DomainError} for a full vessel not heavier than its tare, or a foam as dense as its
 *   solution ('no-gas').
 * @source imo-foam-test 3.7.2 (expansion by weighing), aci-523-1r (band, from memory)
 */
export function foamDensity(reading: {
  readonly tare: number;
  readonly full: number;
  readonly vessel: number;
  readonly solutionDensity?: number;
  readonly airDensity?: number;
}): FoamDensity {
  const { tare, full, vessel } = reading;
  const { solutionDensity = SOLUTION_DENSITY, airDensity = AIR_DENSITY } = reading;
  demand('tare', tare, 'mass', { min: 0, max: EXTREMES.mass.max });
  demand('full', full, 'mass', { min: tare, max: EXTREMES.mass.max, aboveMin: true });
  demandAmount('full', full - tare, 'mass');
  demandAmount('vessel', vessel, 'volume');
  demand('airDensity', airDensity, 'density', { min: 0, max: 2 });
  demand('solutionDensity', solutionDensity, 'density', { min: 900, max: 1300 });
  const net = full - tare;
  const solid = (solutionDensity - airDensity) * vessel;
  demand('full', full, 'mass', { min: tare, max: tare + solid, belowMax: true }, 'no-gas');
  const apparent = net / vessel;
  const liquidVolume = net / (solutionDensity - airDensity);
  return {
    apparent,
    liquidMass: liquidVolume * solutionDensity,
    liquidVolume,
    gasFraction: 1 - liquidVolume / vessel,
    expansion: vessel / liquidVolume,
    notes: outsideRange('apparent', apparent, STANDARD_FOAM_BAND),
  };
}
