import type { LessonLearned } from './lessons.ts';

/** Number of latest batches, all outliers on one side, that count as a lasting change. A choice. */
const NO_CHANCE = 3;

/**
 * A lasting change: the number of latest batches that were all pulled in as outliers on the same
 * side, the first of them, and their mean, SI. The learned estimate is still that of the batches
 * before.
 */
export function lastingChange({ learned, from }: Pick<LessonLearned, 'learned' | 'from'>) {
  const apart = new Set(learned.moved);
  const above = (i: number) => from[i]!.value > learned.estimate;
  const last = from.length - 1;
  let first = from.length;
  while (apart.has(first - 1) && above(first - 1) === above(last)) first--;
  const since = from.slice(first);
  if (since.length < NO_CHANCE) return undefined;
  const mean = since.reduce((sum, { value }) => sum + value, 0) / since.length;
  return { count: since.length, first: since[0]!.record, mean };
}
