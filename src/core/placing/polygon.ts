import { DomainError, demand } from '../domain-error.ts';
import { EXTREMES } from '../extremes.ts';

/** A corner of a flat outline, m. */
export type Corner = readonly [x: number, y: number];

/** The maximum distance between two corners of a casting, m. */
const FARTHEST = { min: -EXTREMES.length.max, max: EXTREMES.length.max } as const;

/**
 * The area inside a straight-sided outline, m², by Gauss's shoelace:
 * A = ½ |Σ (xᵢ yᵢ₊₁ − xᵢ₊₁ yᵢ)|.
 *
 * The corners in order round the outline, either way; the last joins the first, and may repeat it.
 *
 * @throws {DomainError} 'too-few-corners' for fewer than three; 'crosses-itself' when it crosses
 *   its own path, at a side or a corner, or goes round twice, since then the sum is not the area;
 *   'no-area' when they lie on a line; a corner farther from the first, along or across, than
 *   EXTREMES.length.
 * @source none: it is geometry
 */
export function polygonArea(corners: readonly Corner[]): number {
  const outline = open(corners);
  demand('corners', outline.length, 'count', { min: 3 }, 'too-few-corners');
  // Relative to the first corner: coordinates far from the origin would lose digits.
  const [x0, y0] = outline[0]!;
  for (const [x, y] of outline) {
    demand('corner', x - x0, 'length', FARTHEST);
    demand('corner', y - y0, 'length', FARTHEST);
  }
  if (sidesCross(outline) || !goesRoundOnce(outline))
    throw new DomainError({
      quantity: 'corners',
      value: outline.length,
      kind: 'count',
      allowed: { min: 3 },
      because: 'crosses-itself',
    });
  let twice = 0;
  outline.forEach(([x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length]!;
    twice += (x - x0) * (nextY - y0) - (nextX - x0) * (y - y0);
  });
  const area = Math.abs(twice) / 2;
  demand('corners', area, 'area', { min: 0, aboveMin: true }, 'no-area');
  return area;
}

/** The outline without a last corner that repeats the first. */
function open(corners: readonly Corner[]): readonly Corner[] {
  const [first, last] = [corners[0], corners.at(-1)];
  const closed = corners.length > 1 && first![0] === last![0] && first![1] === last![1];
  return closed ? corners.slice(0, -1) : corners;
}

/** Whether two sides cross between their corners. */
function sidesCross(outline: readonly Corner[]): boolean {
  const size = outline.length;
  const side = (i: number) => [outline[i]!, outline[(i + 1) % size]!] as const;
  for (let i = 0; i < size; i++)
    for (let j = i + 2; j < size; j++) {
      const [[a, b], [c, d]] = [side(i), side(j)];
      if (turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0) return true;
    }
  return false;
}

/**
 * Intersections closer together than this share of the total width coincide: both directions along
 * a seam.
 */
const SAME = 1e-12;

/**
 * Whether the outline winds exactly once, in one direction, given that its sides do not cross
 * between corners. Between the heights of its corners, where no side begins or ends, a horizontal
 * line from left to right is then either outside, or inside with the same orientation. So
 * corners may touch sides, but nothing may cross.
 */
function goesRoundOnce(outline: readonly Corner[]): boolean {
  const heights = [...new Set(outline.map(([, y]) => y))].sort((a, b) => a - b);
  let [least, most] = [0, 0];
  for (const [i, top] of heights.slice(1).entries()) {
    const level = (heights[i]! + top) / 2;
    const under = (y: number) => y < top;
    const cuts = outline
      .flatMap(([x, y], k) => {
        const [nextX, nextY] = outline[(k + 1) % outline.length]!;
        if (under(y) === under(nextY)) return [];
        const along = (level - y) / (nextY - y);
        return [{ x: x + along * (nextX - x), hand: under(y) ? 1 : -1 }];
      })
      .sort((a, b) => a.x - b.x);
    const width = cuts.at(-1)!.x - cuts[0]!.x;
    let round = 0;
    for (const [k, { x, hand }] of cuts.entries()) {
      round += hand;
      if (k + 1 < cuts.length && cuts[k + 1]!.x - x <= SAME * width) continue;
      [least, most] = [Math.min(least, round), Math.max(most, round)];
    }
  }
  return most - least <= 1;
}

/** Direction of the turn at b from a to c: positive left, negative right. */
const turn = (a: Corner, b: Corner, c: Corner) =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
