import { demand } from '../../domain-error.ts';
import { type Note, outsideRange } from '../../note.ts';

/** Specific heats of what goes in, J/(kg·K). @source brown-2022 */
export const SPECIFIC_HEAT = { cement: 1140, sand: 770, water: 4187 } as const;

/** Specific heat of oven-dry concrete, J/(kg·K): the design value. @source iso-10456 Table 3, from memory */
export const DRY_SPECIFIC_HEAT = 1000;

/** Moisture conversion coefficient of autoclaved aerated concrete, kg/kg. @source iso-10456 Table 4, from memory */
export const MOISTURE_COEFFICIENT = 4;

/** How many times its dry figure the conductivity of aerated concrete rises to when saturated. @source jerman-2013 */
export const SATURATED_FACTOR = 6;

/**
 * Heat to warm a cubic metre of fresh mix by a kelvin, J/(m³·K): the sum of mass × specific heat.
 * `cement`, `water`, `sand` kg/m³ (foam's water among the water; the air counts for nothing). No range
 * is published.
 * @throws {DomainError} for a negative mass, or nothing at all.
 * @source brown-2022
 */
export function freshHeatCapacity(mix: {
  readonly cement: number;
  readonly water: number;
  readonly sand?: number;
}): number {
  const { cement, water, sand = 0 } = mix;
  for (const [name, mass] of Object.entries({ cement, water, sand }))
    demand(name, mass, 'density', { min: 0 });
  const sum =
    cement * SPECIFIC_HEAT.cement + water * SPECIFIC_HEAT.water + sand * SPECIFIC_HEAT.sand;
  demand('heatCapacity', sum, 'energy', { min: 0, aboveMin: true });
  return sum;
}

/**
 * Heat to warm a cubic metre of hardened concrete by a kelvin, J/(m³·K): ρ·(c + u·4187).
 * `dryDensity` kg/m³; `moisture` u, kg water per kg dry; `specificHeat` dry, J/(kg·K). No range is
 * published.
 * @throws {DomainError} for a density not above zero or a negative moisture.
 * @source iso-10456 from memory
 */
export function moistHeatCapacity(of: {
  readonly dryDensity: number;
  readonly moisture: number;
  readonly specificHeat?: number;
}): number {
  const { dryDensity, moisture, specificHeat = DRY_SPECIFIC_HEAT } = of;
  demand('dryDensity', dryDensity, 'density', { min: 0, aboveMin: true });
  demand('moisture', moisture, 'ratio', { min: 0 });
  demand('specificHeat', specificHeat, 'energy', { min: 0, aboveMin: true });
  return dryDensity * (specificHeat + moisture * SPECIFIC_HEAT.water);
}

/** Densities the conductivity relation is used over, kg/m³. @source aci-122r from memory */
export const CONDUCTIVITY_RANGE = { min: 320, max: 1600 } as const;

/** Moistures the exponential form covers, kg/kg. @source iso-10456 Table 4, from memory */
export const MOISTURE_RANGE = { min: 0, max: 0.25 } as const;

export interface Conductivity {
  /** W/(m·K) */
  readonly conductivity: number;
  readonly notes: readonly Note[];
}

/**
 * Conductivity of foamed concrete at a moisture, W/(m·K): 0.072·exp(0.00125·ρ)·exp(fu·u), and never
 * more than six times its dry figure, which is what saturation was seen to do.
 * `dryDensity` ρ, 320…1600 kg/m³; `moisture` u, 0…0.25 kg/kg; `moistureCoefficient` fu. Measured
 * figures for foamed binders run from half as much again to twice the dry relation.
 * @throws {DomainError} for a density not above zero or a negative moisture.
 * @source aci-122r from memory
 * @source iso-10456 Table 4, from memory
 * @source jerman-2013 for the ceiling
 */
export function moistConductivity(of: {
  readonly dryDensity: number;
  readonly moisture: number;
  readonly moistureCoefficient?: number;
}): Conductivity {
  const { dryDensity, moisture, moistureCoefficient = MOISTURE_COEFFICIENT } = of;
  demand('dryDensity', dryDensity, 'density', { min: 0, aboveMin: true });
  demand('moisture', moisture, 'ratio', { min: 0 });
  demand('moistureCoefficient', moistureCoefficient, 'ratio', { min: 0 });
  const wetter = Math.min(Math.exp(moistureCoefficient * moisture), SATURATED_FACTOR);
  return {
    conductivity: 0.072 * Math.exp(0.00125 * dryDensity) * wetter,
    notes: [
      ...outsideRange('dryDensity', dryDensity, CONDUCTIVITY_RANGE),
      ...outsideRange('moisture', moisture, MOISTURE_RANGE),
    ],
  };
}
