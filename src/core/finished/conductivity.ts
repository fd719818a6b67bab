import { demand } from '../domain-error.ts';
import { MIX_WATER_DENSITY } from '../mix/densities.ts';
import { type Note, outsideRange } from '../note.ts';
import { POUND_PER_CUBIC_FOOT } from '../quantity/constants.ts';
import {
  ASHRAE_CONDUCTIVITY,
  BCA_CONDUCTIVITY,
  BTU_INCH,
  type ConductivityTable,
} from './conductivity-data.ts';
import { POSSIBLE_DENSITY } from './possible-density.ts';

export interface Conductivity {
  /** W/(m·K) */
  readonly conductivity: number;
  readonly notes: readonly Note[];
}

/** Oven-dry densities the exponential relation is used for, kg/m³ (20–120 lb/ft³). From memory. @source aci-122r */
const VALORE_RANGE = { min: 320, max: 1920 } as const;

/**
 * Conductivity of oven-dry concrete from its density, W/(m·K): 0.072 exp(0.00125 d), d in kg/m³.
 * Range 320–1920 kg/m³, outside which a note is given. All from memory.
 * @param of dryDensity oven-dry, kg/m³, above 0
 * @throws {DomainError} for a density not above 0
 * @source aci-122r
 */
export function valoreConductivity({ dryDensity }: { readonly dryDensity: number }): Conductivity {
  demand('dryDensity', dryDensity, 'density', { min: 0, aboveMin: true });
  return {
    conductivity: 0.072 * Math.exp(0.00125 * dryDensity),
    notes: outsideRange('dryDensity', dryDensity, VALORE_RANGE),
  };
}

/**
 * The same relation as first printed in US units, W/(m·K): 0.5 exp(0.02 w) Btu·in/(h·ft²·°F), w in lb/ft³.
 * Range as the SI form, from which it is within 0.4 % up to 1920 kg/m³. From memory.
 * @param of dryDensity oven-dry, kg/m³, above 0
 * @throws {DomainError} for a density not above 0
 * @source valore-1980
 */
export function valoreUsConductivity({
  dryDensity,
}: {
  readonly dryDensity: number;
}): Conductivity {
  demand('dryDensity', dryDensity, 'density', { min: 0, aboveMin: true });
  return {
    conductivity: 0.5 * Math.exp((0.02 * dryDensity) / POUND_PER_CUBIC_FOOT) * BTU_INCH,
    notes: outsideRange('dryDensity', dryDensity, VALORE_RANGE),
  };
}

/**
 * What a published table says at a density, W/(m·K), straight between its rows. Range: its rows; undefined
 * outside them.
 * @param table a table of `conductivity-data.ts`
 * @param dryDensity oven-dry, kg/m³, above 0
 * @throws {DomainError} for a density not above 0
 * @source bca-1994
 * @source ashrae-materials
 */
export function tabledConductivity(
  table: ConductivityTable,
  dryDensity: number,
): { readonly low: number; readonly high: number } | undefined {
  demand('dryDensity', dryDensity, 'density', { min: 0, aboveMin: true });
  const { points } = table;
  const above = points.findIndex((p) => p.density >= dryDensity);
  if (above === -1 || (above === 0 && points[0]!.density > dryDensity)) return undefined;
  const [p, q] = [points[Math.max(0, above - 1)]!, points[above]!];
  const t = q.density === p.density ? 0 : (dryDensity - p.density) / (q.density - p.density);
  return { low: p.low + t * (q.low - p.low), high: p.high + t * (q.high - p.high) };
}

/**
 * How well does it conduct when dry? The least and the most that the relation and both tables say,
 * W/(m·K). Measured points of other binders lie well above all three (see the strength chapter's data).
 * @param of dryDensity oven-dry, kg/m³, above 0
 * @returns W/(m·K); a note when the density is outside the relation's range
 * @throws {DomainError} for a density not above 0
 * @source aci-122r
 * @source bca-1994
 * @source ashrae-materials
 */
export function dryConductivityBand({ dryDensity }: { readonly dryDensity: number }): {
  readonly low: number;
  readonly high: number;
  readonly notes: readonly Note[];
} {
  const { conductivity, notes } = valoreConductivity({ dryDensity });
  const tables = [BCA_CONDUCTIVITY, ASHRAE_CONDUCTIVITY].flatMap(
    (table) => tabledConductivity(table, dryDensity) ?? [],
  );
  return {
    low: Math.min(conductivity, ...tables.map((t) => t.low)),
    high: Math.max(conductivity, ...tables.map((t) => t.high)),
    notes,
  };
}

/** How steeply conductivity rises with moisture, per kg/kg, for autoclaved aerated concrete. From memory. @source iso-10456 */
const MOISTURE_COEFFICIENT = 4;
/** Equilibrium moisture of the same at 23 °C and 50 % / 80 % RH, kg/kg. From memory. @source iso-10456 */
export const EQUILIBRIUM_MOISTURE = { dryRoom: 0.026, dampRoom: 0.045 } as const;
/** The most moisture read of in walls in service, kg/kg of dry mass. @source mag-civ-eng-2011 */
export const SERVICE_MOISTURE_MOST = 0.06;

/** How many times its dry figure the conductivity of aerated concrete rises to when saturated. @source jerman-2013 */
export const SATURATED_FACTOR = 6;

/**
 * The most water the pores of a piece can hold, kg per kg dry: 1000/ρ − 1000/2600, the latter being what
 * is left of it without pores. No range is published; a soaked piece keeps air and holds less.
 * @param of dryDensity oven-dry, kg/m³, above 0
 * @throws {DomainError} for a density not above 0
 * @source common-practice
 */
export function mostMoisture({ dryDensity }: { readonly dryDensity: number }): number {
  demand('dryDensity', dryDensity, 'density', { min: 0, aboveMin: true });
  return Math.max(0, MIX_WATER_DENSITY * (1 / dryDensity - 1 / POSSIBLE_DENSITY.max));
}

/**
 * Conductivity when moist, W/(m·K): dry · exp(4 u), u in kg water per kg dry, but no more than six times
 * the dry figure, which is what saturation was seen to do. The coefficient is that of autoclaved aerated
 * concrete, from memory; none was seen for foamed concrete. Range: up to 6 %, the most read of in service;
 * above it a note is given.
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
