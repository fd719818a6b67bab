import { interpolate } from '../interpolate.ts';
import { type Note, outsideRange } from '../note.ts';
import { demandPositive } from './bounds.ts';
import type { SetTimes } from './set.ts';

export type SabinCement = 'A' | 'B';

/**
 * Set of two natural-age cements against water, as tabled: water over cement by mass, then initial
 * and final set in minutes.
 * @source sabin Table 20
 */
const SABIN: Readonly<Record<SabinCement, readonly (readonly [number, number, number])[]>> = {
  A: [
    [0.267, 20, 28],
    [0.286, 23, 41],
    [0.308, 30, 57],
    [0.333, 42, 76],
    [0.364, 46, 78],
    [0.4, 55, 85],
  ],
  B: [
    [0.24, 2, 160],
    [0.26, 2, 188],
    [0.28, 3, 279],
    [0.3, 7, 289],
    [0.32, 21, 371],
    [0.34, 28, 403],
    [0.36, 38, 583],
  ],
};

export interface SabinSet extends SetTimes {
  readonly notes: readonly Note[];
}

/**
 * Set of one of Sabin's cements at a water content, s: straight lines between his rows, whose range
 * is 0.267…0.4 (A) and 0.24…0.36 (B). Outside it the end row holds, and a note says so.
 * `waterCement` by mass. The cements are a century old: use the slope, not the minutes.
 * @throws {DomainError} for a ratio not above zero.
 * @source sabin Table 20
 */
export function sabinSet(of: {
  readonly cement: SabinCement;
  readonly waterCement: number;
}): SabinSet {
  const { cement, waterCement: w } = of;
  demandPositive('waterCement', w, 'ratio');
  const rows = SABIN[cement];
  const first = rows[0]!;
  const last = rows[rows.length - 1]!;
  const notes = outsideRange('waterCement', w, { min: first[0], max: last[0] });
  const at = (column: 1 | 2) =>
    60 *
    interpolate(
      rows.map(([water]) => water),
      rows.map((row) => row[column]),
      w,
    );
  return { initial: at(1), final: at(2), notes };
}

/** From the first to the last of one cement's rows, w/c. */
export interface SabinRows {
  readonly from: number;
  readonly to: number;
}

const rowsOf = (cement: SabinCement): SabinRows => {
  const rows = SABIN[cement];
  return { from: rows[0]![0], to: rows[rows.length - 1]![0] };
};

/** What the table covers of each cement. @source sabin Table 20 */
export const SABIN_ROWS: readonly SabinRows[] = [rowsOf('A'), rowsOf('B')];

/**
 * A shorter part of the interval than this, in w/c, tells nothing: a w/c is stated to the
 * hundredth. A choice.
 */
const LEAST_COVERED = 0.01;

export interface SabinFactors {
  readonly initial: readonly [low: number, high: number];
  readonly final: readonly [low: number, high: number];
  /** The part of the table used for each cement. */
  readonly covers: readonly SabinRows[];
}

/**
 * How many times longer set takes when the water goes from one ratio to another, for those of
 * Sabin's cements whose rows cover part of the interval. `from` and `to`: water over cement by
 * mass; range: `SABIN_ROWS`. Foamed mixes are usually wetter: the factor covers only the rows there
 * are, and `covers` says which. A cement whose rows cover less than 0.01 of a longer interval is
 * left out.
 * @returns undefined where no row shows any of the way
 * @throws {DomainError} for a ratio not above zero.
 * @source sabin Table 20
 */
export function sabinFactors(of: {
  readonly from: number;
  readonly to: number;
}): SabinFactors | undefined {
  demandPositive('from', of.from, 'ratio');
  demandPositive('to', of.to, 'ratio');
  const [driest, wettest] = [Math.min(of.from, of.to), Math.max(of.from, of.to)];
  const counted = (['A', 'B'] as const).filter((cement) => {
    const { from, to } = rowsOf(cement);
    const covered = Math.min(wettest, to) - Math.max(driest, from);
    return covered >= Math.min(LEAST_COVERED, wettest - driest);
  });
  if (counted.length === 0) return;
  const span = (which: 'initial' | 'final'): readonly [number, number] => {
    const factors = counted.map((cement) => {
      const [from, to] = [of.from, of.to].map(
        (waterCement) => sabinSet({ cement, waterCement })[which],
      ) as [number, number];
      return to / from;
    });
    return [Math.min(...factors), Math.max(...factors)];
  };
  return { initial: span('initial'), final: span('final'), covers: counted.map(rowsOf) };
}
