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
 * Set of one of Sabin's cements at a water content, s: straight lines between his rows, whose range is
 * 0.267…0.4 (A) and 0.24…0.36 (B). Outside it the end row holds and a note says so.
 * `waterCement` by mass. The cements are a century old: read the slope, not the minutes.
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
  const held = Math.min(Math.max(w, first[0]), last[0]);
  const after = Math.max(
    1,
    rows.findIndex(([water]) => water >= held),
  );
  const [w0, i0, f0] = rows[after - 1]!;
  const [w1, i1, f1] = rows[after]!;
  const share = (held - w0) / (w1 - w0);
  return { initial: (i0 + share * (i1 - i0)) * 60, final: (f0 + share * (f1 - f0)) * 60, notes };
}

/**
 * How many times longer set takes when the water goes from one ratio to another, for both of Sabin's
 * cements. `from` and `to` water over cement by mass. Foamed mixes are usually wetter than his rows;
 * the note 'outside-range' then says the factor is only what the rows still show.
 * @throws {DomainError} for a ratio not above zero.
 * @source sabin Table 20
 */
export function sabinFactors(of: { readonly from: number; readonly to: number }): {
  readonly initial: readonly [low: number, high: number];
  readonly final: readonly [low: number, high: number];
  readonly notes: readonly Note[];
} {
  const pairs = (['A', 'B'] as const).map((cement) => ({
    from: sabinSet({ cement, waterCement: of.from }),
    to: sabinSet({ cement, waterCement: of.to }),
  }));
  const span = (which: 'initial' | 'final'): readonly [number, number] => {
    const [a, b] = pairs.map(({ from, to }) => to[which] / from[which]) as [number, number];
    return [Math.min(a, b), Math.max(a, b)];
  };
  const outside = pairs.some(({ from, to }) => from.notes.length + to.notes.length > 0);
  return {
    initial: span('initial'),
    final: span('final'),
    notes: outside ? [{ code: 'outside-range', of: 'waterCement' }] : [],
  };
}
