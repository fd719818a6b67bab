import { demand } from '../domain-error.ts';
import { justOver } from '../quantity/dust.ts';

export interface ChordBin {
  /** Edges, m; a chord on the upper edge goes to the next bin. */
  readonly from: number;
  readonly to: number;
  readonly count: number;
  /** Share of all the chord length, 0–1. */
  readonly share: number;
}

/**
 * How are the chords spread? Counts and shares of length in bins of one width, from 0 to past the
 * longest. No range: counting.
 * @param chords lengths across voids, m, each above 0
 * @param width of a bin, m, above 0
 * @throws {DomainError} for no chord, a chord or width not above 0, or more than 200 bins
 * @source astm-c457
 */
export function chordHistogram(chords: readonly number[], width: number): readonly ChordBin[] {
  demandChords(chords);
  demand('width', width, 'length', { min: 0, aboveMin: true });
  const bins = binOf(Math.max(...chords), width) + 1;
  demand('bins', bins, 'count', { max: 200 });
  const total = sum(chords);
  return Array.from({ length: bins }, (_, i) => {
    const inside = chords.filter((c) => binOf(c, width) === i);
    return {
      from: i * width,
      to: (i + 1) * width,
      count: inside.length,
      share: sum(inside) / total,
    };
  });
}

/** For a chord on an edge, the quotient of two decimals may be off by rounding error. */
const binOf = (chord: number, width: number) => Math.floor(justOver(chord / width));

/**
 * (standard deviation ÷ mean)² of the chords across equal spheres, where no chord list is given.
 * Derived.
 * @source chord-statistics
 */
export const EQUAL_SPHERE_CHORD_VARIATION = 1 / 8;

/**
 * (standard deviation ÷ mean)² of measured chords, all in one unit: a pure number. No range: a
 * statistic.
 * @throws {DomainError} for fewer than two chords, or one not above 0
 * @source chord-statistics
 */
export function chordVariation(chords: readonly number[]): number {
  demandChords(chords);
  demand('chords', chords.length, 'count', { min: 2 });
  const mean = sum(chords) / chords.length;
  return sum(chords.map((c) => (c - mean) ** 2)) / (chords.length - 1) / mean ** 2;
}

/**
 * How sure is the air found along a line, as a share of the volume? u = A (1 − A) √((1 + v)/N):
 * voids met at random, the gaps between them exponential, v the variation of the chords. It covers
 * chance only, not smeared edges, filled voids or bubbles too small to see. No range is published.
 * @param found airContent A 0–1; voids N; variation v
 * @throws {DomainError} outside those
 * @source chord-statistics
 */
export function traverseUncertainty(found: {
  readonly airContent: number;
  readonly voids: number;
  readonly variation: number;
}): number {
  demand('airContent', found.airContent, 'ratio', { min: 0, max: 1 });
  demand('voids', found.voids, 'count', { min: 1 });
  demand('variation', found.variation, 'ratio', { min: 0 });
  const { airContent: a } = found;
  return a * (1 - a) * Math.sqrt((1 + found.variation) / found.voids);
}

/**
 * How sure is the air found by points, as a share of the volume? u = √(A (1 − A)/S). Range: stops
 * further apart than the bubbles are wide; closer stops are not independent and the true u is
 * larger.
 * @param found airContent A 0–1; stops S
 * @throws {DomainError} outside those
 * @source chord-statistics
 */
export function pointUncertainty(found: {
  readonly airContent: number;
  readonly stops: number;
}): number {
  demand('airContent', found.airContent, 'ratio', { min: 0, max: 1 });
  demand('stops', found.stops, 'count', { min: 1 });
  return Math.sqrt((found.airContent * (1 - found.airContent)) / found.stops);
}

/**
 * Is it the air the mix was designed for? The difference, found minus designed, and the number of
 * standard uncertainties it is. No range: a comparison.
 * @param compared found and designed air 0–1; uncertainty of the count, above 0
 * @throws {DomainError} outside those
 * @source jcgm-100
 */
export function againstDesign(compared: {
  readonly found: number;
  readonly designed: number;
  readonly uncertainty: number;
}): { readonly difference: number; readonly inUncertainties: number } {
  demand('found', compared.found, 'ratio', { min: 0, max: 1 });
  demand('designed', compared.designed, 'ratio', { min: 0, max: 1 });
  demand('uncertainty', compared.uncertainty, 'ratio', { min: 0, aboveMin: true });
  const difference = compared.found - compared.designed;
  return { difference, inUncertainties: difference / compared.uncertainty };
}

function demandChords(chords: readonly number[]): void {
  demand('chords', chords.length, 'count', { min: 1 });
  for (const chord of chords) demand('chord', chord, 'length', { min: 0, aboveMin: true });
}

function sum(xs: readonly number[]): number {
  return xs.reduce((total, x) => total + x, 0);
}
