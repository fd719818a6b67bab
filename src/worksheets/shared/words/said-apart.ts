import { SLIVER } from '../../../core/quantity/dust.ts';
import type { Kind } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Units } from '../../../islands/fields.ts';

/**
 * Significant digits to try, fewest first, until the text differs from a mark's: enough for any
 * reading.
 */
const DIGITS = [3, 4, 5, 6, 7, 8, 9];

/**
 * An amount as `say` shows it, but never with the same text as a mark that it does not equal,
 * within rounding error. It gets as many digits as it takes to tell the two apart. `marks`: what it
 * is compared with, in SI.
 */
export function saidApart(
  si: number,
  kind: Kind,
  marks: readonly number[],
  say: Say,
  usual: {
    readonly decimals?: number;
    readonly significant?: number;
    readonly plain?: boolean;
    readonly toward?: 'up' | 'down';
    readonly units?: Units;
  } = {},
): string {
  const off = marks.filter((mark) => Math.abs(si - mark) > SLIVER * mark);
  const { units, toward } = usual;
  const more = DIGITS.map((significant) => ({
    significant,
    ...(toward ? { toward } : { plain: true }),
    ...(units && { units }),
  }));
  const apart = [usual, ...more].find((how) =>
    off.every((mark) => say(mark, kind, how) !== say(si, kind, how)),
  );
  return say(si, kind, apart ?? usual);
}
