import { EARLIEST_ADJUSTED_AGE } from '../../../core/curing/limits.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { HOURS } from '../words/amounts.ts';
import { saidApart } from '../words/said-apart.ts';

/**
 * The adjusted age of a part, in a sentence, if that makes it too young for an estimate; otherwise
 * an empty text. `age` and `since` casting by the clock, s.
 */
export function youngWords(
  { age, since }: { readonly age: number; readonly since: number | undefined },
  say: Say,
): string {
  if (age >= EARLIEST_ADJUSTED_AGE) return '';
  const how = { units: HOURS, significant: 2 };
  const counts = saidApart(age, 'time', [EARLIEST_ADJUSTED_AGE], say, how);
  return since !== undefined && since > age
    ? ` Its ${say(since, 'time', { units: HOURS, plain: true })} by the clock count as ${counts}.`
    : ` It counts as ${counts}.`;
}
