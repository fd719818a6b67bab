import type { Kind } from '../../core/quantity/kinds.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Units } from '../../islands/fields.ts';

/** Digits enough for any reading. */
const MOST = 10;
/** Nearer to a mark than this share of it lies on it, whatever the last digit of a reading in °F. */
const ON_IT = 1e-9;

/**
 * An amount as `say` has it, but never in the words of a mark that it does not lie on: then with as many more
 * digits as tell the two apart. `marks`: what it is held against, in SI.
 */
export function saidApart(
  si: number,
  kind: Kind,
  marks: readonly number[],
  say: Say,
  how: { readonly units?: Units; readonly decimals?: number } = {},
): string {
  const off = marks.filter((mark) => Math.abs(si - mark) > ON_IT * Math.abs(mark));
  const usual = say(si, kind, how);
  if (off.every((mark) => say(mark, kind, how) !== usual)) return usual;
  for (let significant = 3; significant < MOST; significant++) {
    const longer = { ...(how.units && { units: how.units }), plain: true, significant };
    const text = say(si, kind, longer);
    if (off.every((mark) => say(mark, kind, longer) !== text)) return text;
  }
  return usual;
}
