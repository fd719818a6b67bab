import {
  type Conductivity,
  moistConductivity,
  valoreConductivity,
} from '../../finished/conductivity.ts';
import { demandNotNegative, demandPositive } from '../bounds.ts';

/**
 * Specific heats of what goes in, J/(kg·K).
 *
 * The report prints 1140 for cement, but beside a term for what has hydrated that is 507 at 20 °C, so
 * that the cement of a run falls from the one to the other; held at 1140 throughout it would make the
 * part too hard to warm. Dry cement is 750, from memory, and its oxides' own specific heats sum to that.
 * @source brown-2022 for sand and water
 * @source bentz-2007 for cement, from memory
 */
export const SPECIFIC_HEAT = { cement: 750, sand: 770, water: 4187 } as const;

/** Specific heat of oven-dry concrete, J/(kg·K): the design value. @source iso-10456 Table 3, from memory */
const DRY_SPECIFIC_HEAT = 1000;

/**
 * Heat to warm a cubic metre of fresh mix by a kelvin, J/(m³·K): the sum of mass × specific heat.
 * `cement`, `water`, `sand` kg/m³ (foam's water among the water; the air counts for nothing);
 * `cementSpecificHeat` J/(kg·K). Water that the cement binds holds less heat than free water, which is
 * left out. No range is published.
 * @throws {DomainError} for a negative mass, or nothing at all.
 * @source brown-2022
 */
export function freshHeatCapacity(mix: {
  readonly cement: number;
  readonly water: number;
  readonly sand?: number;
  readonly cementSpecificHeat?: number;
}): number {
  const { cement, water, sand = 0, cementSpecificHeat = SPECIFIC_HEAT.cement } = mix;
  demandPositive('cementSpecificHeat', cementSpecificHeat, 'specificHeat');
  for (const [name, mass] of Object.entries({ cement, water, sand }))
    demandNotNegative(name, mass, 'density');
  const sum = cement * cementSpecificHeat + water * SPECIFIC_HEAT.water + sand * SPECIFIC_HEAT.sand;
  demandPositive('heatCapacity', sum, 'energy');
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
  demandPositive('dryDensity', dryDensity, 'density');
  demandNotNegative('moisture', moisture, 'ratio');
  demandPositive('specificHeat', specificHeat, 'specificHeat');
  return dryDensity * (specificHeat + moisture * SPECIFIC_HEAT.water);
}

/**
 * Conductivity of fresh or damp foamed concrete, W/(m·K): the dry relation raised with moisture, but to
 * no more than six times its dry figure, which is what saturation was seen to do.
 * `dryDensity` kg/m³; `moisture` kg water per kg dry; ranges and notes as the two relations it uses.
 * Measured figures for foamed binders run from half as much again to twice the dry relation.
 * @throws {DomainError} for a density not above zero or a negative moisture.
 * @source aci-122r from memory
 * @source iso-10456 Table 4, from memory
 * @source jerman-2013 for the ceiling
 */
export function wetConductivity(of: {
  readonly dryDensity: number;
  readonly moisture: number;
}): Conductivity {
  const dry = valoreConductivity(of);
  const moist = moistConductivity({ dry: dry.conductivity, moisture: of.moisture });
  return { conductivity: moist.conductivity, notes: [...dry.notes, ...moist.notes] };
}
