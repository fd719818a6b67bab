import { LETTER, WIDTH } from '../plots/scale.ts';

/** Distance between two rows, and between two labels in one row. */
export const ROW = 21;
const APART = 8;
/** Distance from a line to its label, and how near another line may pass. */
const BESIDE = 6;
const CLEAR = 3;

interface Mark {
  readonly x: number;
  readonly text: string;
}

interface Label {
  readonly textX: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Where the label stands: below its mark (0), or to the left (−1) or right (1) of its line. */
  readonly side: -1 | 0 | 1;
  readonly from: number;
  readonly to: number;
}

/**
 * Lays the labels of marks on a scale out in rows below it, each at the end of its mark's line. A
 * label goes below its mark if no other line crosses it there. Otherwise labels go beside their
 * lines, as many as possible to one side. If crossings cannot be avoided, each label gets its own
 * row.
 */
export function inRows<T extends Mark>(marks: readonly T[]) {
  const sorted = marks.toSorted((a, b) => a.x - b.x);
  const below = sorted.map((mark) => ({ ...mark, ...under(mark) }));
  for (let right = -1; right <= sorted.length; right++) {
    const labels =
      right < 0 ? below : sorted.map((mark, i) => ({ ...mark, ...beside(mark, i < right) }));
    const rows = labels.every(({ from, to }) => from >= 0 && to <= WIDTH) && stacked(labels);
    if (rows) return labels.map((label, i) => ({ ...label, row: rows[i]! }));
  }
  return below.map((label, row) => ({ ...label, row }));
}

/** Below its mark, clamped to the edges of the picture. */
function under({ x, text }: Mark): Label {
  const half = (text.length * LETTER) / 2;
  const middle = Math.min(WIDTH - half, Math.max(half, x));
  const anchor = middle > x ? 'start' : middle < x ? 'end' : 'middle';
  const textX = { start: 0, middle, end: WIDTH }[anchor];
  return { textX, anchor, side: 0, from: middle - half, to: middle + half };
}

function beside({ x, text }: Mark, right: boolean): Label {
  const wide = text.length * LETTER;
  const textX = right ? x + BESIDE : x - BESIDE;
  return right
    ? { textX, anchor: 'start', side: 1, from: textX, to: textX + wide }
    : { textX, anchor: 'end', side: -1, from: textX - wide, to: textX };
}

/**
 * The row of each label, below all labels that its line would cross; undefined if that is
 * impossible.
 */
function stacked(labels: readonly (Mark & Label)[]): number[] | undefined {
  const rows: number[] = [];
  const over = labels.map(({ from, to }, i) =>
    labels.flatMap(({ x }, j) => (j !== i && x > from - CLEAR && x < to + CLEAR ? [j] : [])),
  );
  const left = labels.map((_, i) => i);
  while (left.length > 0) {
    const ready = left.findIndex((i) => over[i]!.every((j) => rows[j] !== undefined));
    if (ready < 0) return undefined;
    const i = left.splice(ready, 1)[0]!;
    const { from, to } = labels[i]!;
    const touches = (row: number) =>
      rows.some(
        (r, j) => r === row && labels[j]!.from < to + APART && labels[j]!.to > from - APART,
      );
    let row = Math.max(0, ...over[i]!.map((j) => rows[j]! + 1));
    while (touches(row)) row++;
    rows[i] = row;
  }
  return rows;
}

/** The line from a mark, on a scale that ends at `foot`, to its label. */
export const leaderOf = (
  { x, row, side }: { readonly x: number; readonly row: number; readonly side: number },
  foot: number,
): string =>
  `M${x} ${foot}V${foot + (side === 0 ? 8 : 17) + row * ROW}${side === 0 ? '' : `h${3 * side}`}`;
