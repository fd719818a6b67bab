import { demand } from '../../domain-error.ts';
import type { ActivityModel } from './activity.ts';

/**
 * Totals of what is dissolved besides carbonate, in mol per kg of water (not of solution). An ion
 * that is omitted is absent, except chloride.
 */
export interface Solutes {
  /** K. */
  readonly temperature: number;
  readonly calcium?: number | undefined;
  readonly magnesium?: number | undefined;
  readonly sodium?: number | undefined;
  readonly sulfate?: number | undefined;
  /**
   * If omitted, as much as balances the charges (or an inert cation, if anions are in excess). If
   * given, it is kept and the imbalance is reported.
   */
  readonly chloride?: number | undefined;
  /** Singly charged ions that form no pairs here: potassium; nitrate. mol/kg. */
  readonly otherCations?: number | undefined;
  readonly otherAnions?: number | undefined;
  /** The activity model; the extended Debye–Hückel equation by default. */
  readonly activity?: ActivityModel | undefined;
}

/** A water given by conserved totals. */
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
 * @source none: bounds of what the solver takes
 */
export function demandSolutes(water: Solutes): void {
  for (const name of DISSOLVED) demand(name, water[name] ?? 0, 'count', { min: 0, max: 10 });
}
