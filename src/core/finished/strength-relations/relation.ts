import { interpolate } from '../../interpolate.ts';
/** How far a figure can be trusted: seen in the source, or recalled. */
export type Standing = 'published' | 'from memory';

/** Which density a relation is stated against. */
type Against = 'wet' | 'oven-dry';

/** One published relation between density and compressive strength at 28 days. */
export interface StrengthRelation {
  readonly key: string;
  readonly against: Against;
  /** Densities it covers, kg/m³. */
  readonly range: { readonly min: number; readonly max: number };
  /** Strength at a density inside the range, Pa; `high` is null where only a minimum is stated. */
  readonly at: (density: number) => { readonly low: number; readonly high: number | null };
  readonly standing: Standing;
  /** A key of content/sources, and the place in it. */
  readonly source: string;
  readonly where: string;
}

/** One megapascal in Pa. @source definition */
export const MPA = 1e6;

/**
 * The highest strength of any relation, at any density, Pa: sanded mixes of one study.
 * @source kado-2018 abstract
 */
export const MOST_OF_ALL = 39 * MPA;

/**
 * A class of a specification: from this density, kg/m³, on, at least this strength, Pa, until the
 * next class.
 */
export type Step = readonly [from: number, minimum: number];

/**
 * The minimum, Pa, of the class a density, kg/m³, falls in: the last step at or below it.
 * @source none: it looks up a table that names its own source
 */
export function classMinimum(
  steps: readonly Step[],
): (density: number) => { readonly low: number; readonly high: null } {
  return (density) => ({
    low: steps.reduce((found, [from, minimum]) => (density >= from ? minimum : found), 0),
    high: null,
  });
}

/** A table of ranges at densities. */
export type RangePoint = readonly [density: number, low: number, high: number];

/**
 * Both ends of the range, each on a straight line between the table's densities.
 * @source none: it looks up a table that names its own source
 */
export function between(
  points: readonly RangePoint[],
): (density: number) => { readonly low: number; readonly high: number } {
  const [densities, lows, highs] = ([0, 1, 2] as const).map((column) =>
    points.map((point) => point[column]),
  );
  return (density) => ({
    low: interpolate(densities!, lows!, density),
    high: interpolate(densities!, highs!, density),
  });
}
