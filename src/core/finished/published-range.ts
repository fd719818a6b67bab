/** One published range of a property, for the densities it was found at. */
export interface PublishedRange {
  readonly id: string;
  readonly source: string;
  readonly where: string;
  readonly standing: 'published' | 'from memory';
  /** Densities it covers, kg/m³; equal ends for a single density; absent where none is given. */
  readonly density?: { readonly min: number; readonly max: number };
  readonly low: number;
  readonly high: number;
  /** Age at the measurement, s, where given. */
  readonly age?: number;
  /** What it was found on, as a short code. */
  readonly of: string;
  /** The source itself stands apart from the others. */
  readonly outlier?: boolean;
}

/**
 * The ranges that cover a density, kg/m³. Rows without a density always do.
 * @source none: a search through rows that carry their own sources
 */
export function rangesAt(
  ranges: readonly PublishedRange[],
  density: number,
): readonly PublishedRange[] {
  return ranges.filter(({ density: d }) => !d || (density >= d.min && density <= d.max));
}

/**
 * The least and most of the ranges that cover a density, kg/m³, in the ranges' own unit, outliers left out;
 * undefined when none does.
 * @source none: a search through rows that carry their own sources
 */
export function spreadAt(
  ranges: readonly PublishedRange[],
  density: number,
): { readonly low: number; readonly high: number } | undefined {
  const found = rangesAt(ranges, density).filter((r) => r.density && !r.outlier);
  if (found.length === 0) return undefined;
  return { low: Math.min(...found.map((r) => r.low)), high: Math.max(...found.map((r) => r.high)) };
}
