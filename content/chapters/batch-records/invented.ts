import { readingValue } from '~/bench/records/reading-value.ts';
import type { ReadingName } from '~/bench/records/readings.ts';
import type { BatchRecord } from '~/bench/records/record.ts';
import type { Lesson } from '~/core/records/priors.ts';
import { demoBatches } from '~/worksheets/live/records/demo-batches.ts';
import { type LessonLearned, learnFrom } from '~/worksheets/live/records/lessons.ts';

/** The six invented batches. */
export const invented = demoBatches();

function firstOf([first]: readonly BatchRecord[]): BatchRecord {
  if (!first) throw new Error('There is no invented batch.');
  return first;
}
export const firstBatch = firstOf(invented);

/** What was written down of the first of them, in SI. */
export function reading(name: ReadingName): number {
  const value = readingValue(firstBatch, name);
  if (value === undefined) throw new Error(`The first invented batch says nothing of ${name}.`);
  return value;
}

/** What the six teach of one quantity. */
export function lessonOf(lesson: Lesson): LessonLearned {
  const found = learnFrom(invented).lessons.find((each) => each.lesson === lesson);
  if (!found) throw new Error(`The invented batches teach nothing of ${lesson}.`);
  return found;
}
