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
