import { demand } from '../../domain-error.ts';
import type { ActivityModel } from './activity.ts';

/**
 * What is dissolved besides carbonate, as totals, per kg of water (not of solution).
 * Ions in mol/kg. An ion left out is absent.
 */
export interface Solutes {
  /** K. */
  readonly temperature: number;
  readonly calcium?: number | undefined;
  readonly magnesium?: number | undefined;
  readonly sodium?: number | undefined;
  readonly sulfate?: number | undefined;
  /**
   * Left out: as much as balances the charges (an inert cation instead, when anions are in excess).
   * Given: taken as it is, and the imbalance is reported.
   */
  readonly chloride?: number | undefined;
  /** Singly charged ions that pair with nothing here: potassium; nitrate. mol/kg. */
  readonly otherCations?: number | undefined;
  readonly otherAnions?: number | undefined;
  /** How activities are reckoned; the extended Debye–Hückel equation unless said otherwise. */
  readonly activity?: ActivityModel | undefined;
}

/** A water by what a reaction cannot change but by its own stoichiometry. */
export interface CarbonateWater extends Solutes {
  /** Total alkalinity with every pair and OH⁻ counted, eq/kg. May be negative (acid). */
  readonly alkalinity: number;
  /** Total dissolved carbonate carbon, mol/kg. */
  readonly carbon: number;
}

const DISSOLVED = [
  'calcium',
  'magnesium',
  'sodium',
  'sulfate',
  'chloride',
  'otherCations',
  'otherAnions',
] as const;

/**
 * Refuses negative amounts and more than 10 mol/kg of anything.
 *
 * @throws {DomainError} naming the ion.
 * @source none: bounds of what can be reckoned with
 */
export function demandSolutes(water: Solutes): void {
  for (const name of DISSOLVED) demand(name, water[name] ?? 0, 'count', { min: 0, max: 10 });
}
