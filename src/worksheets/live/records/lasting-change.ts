import type { LessonLearned } from './lessons.ts';

/** So many of the latest, all apart on one side, are no chance. A choice. */
const NO_CHANCE = 3;

/**
 * Since when batches differ from all before, where the latest were pulled in one after another, and their mean, SI: the
 * average is still of those before.
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
