import { demand } from '../domain-error.ts';
import { MIX_WATER_DENSITY } from '../mix/densities.ts';
import { outsideRange } from '../note.ts';
import { POSSIBLE_DENSITY } from './possible-density.ts';
import type { Conductivity } from './valore.ts';

/**
 * How steeply conductivity rises with moisture, per kg/kg, for autoclaved aerated concrete. From
 * memory.
 * @source iso-10456
 */
const MOISTURE_COEFFICIENT = 4;
/**
 * Equilibrium moisture of the same at 23 °C and 50 % / 80 % RH, kg/kg. From memory.
 * @source iso-10456
 */
export const EQUILIBRIUM_MOISTURE = { dryRoom: 0.026, dampRoom: 0.045 } as const;
/**
 * The highest moisture reported for walls in service, kg/kg of dry mass.
 * @source mag-civ-eng-2011
 */
export const SERVICE_MOISTURE_MOST = 0.06;

/**
 * The factor by which the conductivity of aerated concrete exceeds its dry value when saturated.
 * @source jerman-2013
 */
export const SATURATED_FACTOR = 6;

/**
 * The most water the pores of a piece can hold, kg per kg dry: 1000/ρ − 1000/2600; the second term
 * is the volume of the solids. No range is published; a soaked piece retains air and holds less.
 * @param of dryDensity oven-dry, kg/m³, above 0
 * @throws {DomainError} for a density not above 0
 * @source common-practice
 */
export function mostMoisture({ dryDensity }: { readonly dryDensity: number }): number {
  demand('dryDensity', dryDensity, 'density', { min: 0, aboveMin: true });
  return Math.max(0, MIX_WATER_DENSITY * (1 / dryDensity - 1 / POSSIBLE_DENSITY.max));
}

/**
 * Conductivity when moist, W/(m·K): dry · exp(4 u), u in kg water per kg dry, but at most six times
 * the dry value, as measured at saturation. The coefficient is that of autoclaved aerated concrete,
 * from memory; none was found for foamed concrete. Range: up to 6 %, the highest reported in
 * service; above it a note is given.
 * @param of dry conductivity W/(m·K), above 0; moisture kg/kg, 0 or more
 * @throws {DomainError} outside those
 * @source iso-10456
 * @source jerman-2013
 */
export function moistConductivity(of: {
  readonly dry: number;
  readonly moisture: number;
}): Conductivity {
  demand('dry', of.dry, 'conductivity', { min: 0, aboveMin: true });
  demand('moisture', of.moisture, 'ratio', { min: 0 });
  return {
    conductivity: of.dry * Math.min(Math.exp(MOISTURE_COEFFICIENT * of.moisture), SATURATED_FACTOR),
    notes: outsideRange('moisture', of.moisture, { max: SERVICE_MOISTURE_MOST }),
  };
}
