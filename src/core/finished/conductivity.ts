import { demand } from '../domain-error.ts';
import { interpolate } from '../interpolate.ts';
import { type Note, outsideRange } from '../note.ts';
import { POUND_PER_CUBIC_FOOT } from '../quantity/constants.ts';
import {
  ASHRAE_CONDUCTIVITY,
  BCA_CONDUCTIVITY,
  BTU_INCH,
  type ConductivityTable,
} from './conductivity-data.ts';
import { type Conductivity, VALORE_RANGE, valoreConductivity } from './valore.ts';

/**
 * The relation of `valore.ts` as first printed in US units, W/(m·K): 0.5 exp(0.02 w)
 * Btu·in/(h·ft²·°F), w in lb/ft³. Range as the SI form, from which it is within 0.4 % up to 1920
 * kg/m³. From memory.
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
 * What a published table says at a density, W/(m·K), straight between its rows. Range: its rows;
 * undefined outside them.
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
  const densities = points.map(({ density }) => density);
  if (dryDensity < densities[0]! || dryDensity > densities.at(-1)!) return undefined;
  const at = (end: 'low' | 'high') =>
    interpolate(
      densities,
      points.map((point) => point[end]),
      dryDensity,
    );
  return { low: at('low'), high: at('high') };
}

/**
 * How well does it conduct when dry? The lowest and highest value of the relation and both tables,
 * W/(m·K). Measured points of other binders lie well above all three (see the strength chapter's
 * data).
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
