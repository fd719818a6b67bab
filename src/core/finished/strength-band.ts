import { demand } from '../domain-error.ts';
import {
  aci229Classes,
  c869TestBatch,
  caltransClasses,
  is2185Blocks,
} from './strength-relations/class-minima.ts';
import { aci523NeatCement, bcaTable, kado2018 } from './strength-relations/ranges.ts';
import type { Standing, StrengthRelation } from './strength-relations/relation.ts';

/** Every published relation the band is drawn from. */
export const STRENGTH_RELATIONS: readonly StrengthRelation[] = [
  caltransClasses,
  c869TestBatch,
  kado2018,
  aci229Classes,
  bcaTable,
  aci523NeatCement,
  is2185Blocks,
];

/**
 * What one relation gives for a mix; strength in Pa, density (the one it is stated against) in
 * kg/m³.
 */
interface RelationBand {
  readonly key: string;
  readonly against: StrengthRelation['against'];
  readonly density: number;
  readonly low: number;
  /** Null if the relation states only a minimum. */
  readonly high: number | null;
  readonly standing: Standing;
  readonly source: string;
  readonly where: string;
}

export type StrengthBand =
  | {
      readonly known: true;
      /** Pa */
      readonly low: number;
      /** Pa; null where everything published at this density is a minimum. */
      readonly high: number | null;
      readonly relations: readonly RelationBand[];
    }
  | { readonly known: false; readonly relations: readonly [] };

/**
 * The highest published compressive strength at 28 days, Pa, for this density, wet or dry, or for
 * any lower one; undefined if nothing bounds it.
 *
 * `density` in kg/m³. Valid where `strengthBand` is; beyond it, the last relation continues. Throws
 * nothing.
 * @source kado-2018; from memory: bca-1994, aci-523-1r, is-2185-4
 */
export function mostPublished(density: number): number | undefined {
  const lighter = STRENGTH_RELATIONS.filter(({ range }) => range.min <= density).map((relation) =>
    relation.at(Math.min(density, relation.range.max)),
  );
  return lighter.some(({ high }) => high !== null)
    ? Math.max(...lighter.map(({ low, high }) => high ?? low))
    : undefined;
}

/**
 * The published compressive strengths at 28 days for this density: a band, never one number. Mixes
 * of equal density differ by more than a factor of two, depending on binder, sand, water, foam and
 * curing. So this says what to expect of the kind, not what a piece will carry, and it is no ground
 * for putting a load on it.
 *
 * `wetDensity` and `ovenDryDensity` in kg/m³; each relation is read against its own. `low` is the
 * lowest value of any relation that covers the density; `high` the highest, or the largest minimum
 * if that is more. If only minima are published, `high` is null. Outside every range: not known.
 *
 * @throws {DomainError} for a density that is not positive, or an oven-dry one above the wet.
 * @source caltrans-19-10, astm-c869, kado-2018; from memory: aci-229r-99, bca-1994, aci-523-1r,
 *   is-2185-4
 */
export function strengthBand(mix: {
  readonly wetDensity: number;
  readonly ovenDryDensity: number;
}): StrengthBand {
  const { wetDensity, ovenDryDensity } = mix;
  demand('wetDensity', wetDensity, 'density', { min: 0, aboveMin: true });
  demand('ovenDryDensity', ovenDryDensity, 'density', { min: 0, max: wetDensity, aboveMin: true });
  const relations = STRENGTH_RELATIONS.flatMap((relation) => {
    const { key, against, range, standing, source, where } = relation;
    const density = against === 'wet' ? wetDensity : ovenDryDensity;
    if (density < range.min || density > range.max) return [];
    return [{ key, against, density, ...relation.at(density), standing, source, where }];
  });
  if (relations.length === 0) return { known: false, relations: [] };
  const bounded = relations.some(({ high }) => high !== null);
  return {
    known: true,
    low: Math.min(...relations.map(({ low }) => low)),
    high: bounded ? Math.max(...relations.map(({ low, high }) => high ?? low)) : null,
    relations,
  };
}
