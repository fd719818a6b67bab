import { EARLIEST_ADJUSTED_AGE } from '../../../core/curing/limits.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { HOURS } from '../words/amounts.ts';
import { saidApart } from '../words/said-apart.ts';

/** What a part too young for an estimate counts as, where not the clock but its adjusted age makes it so; else nothing. */
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
