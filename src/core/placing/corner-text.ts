import { DomainError } from '../domain-error.ts';
import { parseQuantity } from '../quantity/parse.ts';
import type { Corner } from './polygon.ts';

/** More corners than anyone measures, and few enough to check for crossings at once. */
export const MOST_CORNERS = 60;

/**
 * Reads the corners of an outline from pasted text: a corner a line, or corners parted by
 * semicolons; two lengths to a corner, parted by a space, a tab or a comma: `0 0; 450 0; 450 300`.
 *
 * @param text as pasted
 * @param unit id of the unit of length the numbers are in; one typed behind a number wins
 * @returns the corners in m, in order
 * @throws {DomainError} 'not-two-lengths' for a line that is not two lengths, its number (from 1) in
 *   `value`; 'too-many-corners' above `MOST_CORNERS`
 * @source none: it reads a text
 */
export function readCorners(text: string, unit: string): readonly Corner[] {
  const lines = text.split(/[\n;]+/).filter((line) => line.trim() !== '');
  if (lines.length > MOST_CORNERS)
    throw new DomainError({
      quantity: 'corners',
      value: lines.length,
      kind: 'count',
      allowed: { min: 3, max: MOST_CORNERS },
      because: 'too-many-corners',
    });
  return lines.map((line, i) => {
    const pair = twoOf(line.trim().replace(/^\(|\)$/g, ''));
    const read = pair?.map((part) => parseQuantity(part, 'length', unit));
    const [x, y] = read ?? [];
    if (!x?.ok || !y?.ok)
      throw new DomainError({
        quantity: 'corners',
        value: i + 1,
        kind: 'count',
        allowed: {},
        because: 'not-two-lengths',
      });
    return [x.value, y.value] as const;
  });
}

/** The two numbers of a line, each with the unit behind it if there is one. */
function twoOf(line: string): readonly [string, string] | undefined {
  const number = String.raw`[-+\u2212]?\d*[.,]?\d+(?:\s*(?:mm|cm|m|in|ft))?`;
  // A comma followed by a space, or one that leaves two whole readings, parts; else it is decimal.
  const parted = line.match(new RegExp(`^(${number})(?:\\s*,\\s+|\\s+|\\t)(${number})$`));
  if (parted) return [parted[1]!, parted[2]!];
  const commas = line.split(',');
  return commas.length === 2 ? [commas[0]!, commas[1]!] : undefined;
}
