import { demand } from '../domain-error.ts';
import { justOver, justUnder } from '../quantity/dust.ts';
import {
  CONSTITUENTS,
  type Constituent,
  LIMITS,
  type Limit,
  type Use,
} from './mixing-water-limits.ts';
import * as MOLAR_MASS from './molar-masses.ts';

export interface Judged {
  readonly limit: Limit;
  /** The value in the report; undefined if it does not state one. */
  readonly value: number | undefined;
  /** 'unknown' if the report does not state it. */
  readonly verdict: 'within' | 'beyond' | 'unknown';
}

/**
 * A water report compared with every limit that applies to a use, one row per limit, both
 * standards.
 *
 * `report` in kg/m³ (pH as it is); alkalies as Na₂O + 0.658 K₂O (`alkaliesOf`). A value equal to a
 * limit is within it. No verdict is a permission: passing the chemistry does not replace the
 * comparison test for a water of unknown origin. No range: a comparison.
 *
 * @throws {DomainError} for a negative value.
 * @source en-1008-lecture, en-1008-memory, pca-mixing-water
 */
export function judgeMixingWater(
  report: Readonly<Partial<Record<Constituent, number>>>,
  use: Use,
): readonly Judged[] {
  for (const name of CONSTITUENTS) {
    const value = report[name];
    if (value === undefined) continue;
    demand(name, value, name === 'pH' ? 'count' : 'concentration', { min: 0 });
  }
  return LIMITS.filter((limit) => limit.uses.includes(use)).map((limit) => {
    const value = report[limit.of];
    if (value === undefined) return { limit, value, verdict: 'unknown' };
    const { most = Infinity, least = -Infinity } = limit;
    const within = value <= justOver(most) && value >= justUnder(least);
    return { limit, value, verdict: within ? 'within' : 'beyond' };
  });
}

/**
 * Alkalies as sodium oxide, kg/m³, from `sodium` and `potassium` in kg/m³: Na₂O + 0.658 K₂O, with
 * Na₂O = 1.348 Na and K₂O = 1.205 K by molar mass. No range: arithmetic.
 *
 * @throws {DomainError} for a negative concentration.
 * @source pca-mixing-water
 */
export function alkaliesOf(water: { readonly sodium: number; readonly potassium: number }): number {
  demand('sodium', water.sodium, 'concentration', { min: 0 });
  demand('potassium', water.potassium, 'concentration', { min: 0 });
  const sodiumOxide = (water.sodium * MOLAR_MASS.sodiumOxide) / (2 * MOLAR_MASS.sodium);
  const potassiumOxide = (water.potassium * MOLAR_MASS.potassiumOxide) / (2 * MOLAR_MASS.potassium);
  return sodiumOxide + 0.658 * potassiumOxide;
}
