import { SLIVER } from '../../../core/quantity/dust.ts';
import type { Kind } from '../../../core/quantity/kinds.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Units } from '../../../islands/fields.ts';

/** Digits to tell it from a mark, the fewest first: enough for any reading. */
const DIGITS = [3, 4, 5, 6, 7, 8, 9];

/**
 * An amount as `say` has it, but never in the words of a mark that it does not lie on, dust aside: then with as many more
 * digits as tell the two apart. `marks`: what it is held against, in SI.
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
