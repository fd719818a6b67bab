import type { Stage } from '../../../bench/records/readings.ts';
import { type BatchRecord, filled, stageOf, today } from '../../../bench/records/record.ts';
import { isRecent, RECENT } from './run-recent.ts';

/** More would push “Begin” off the screen of a phone. */
const MOST_OFFERED = 3;

const AT_THE_BENCH: readonly (Stage | undefined)[] = [undefined, 'mixed', 'cast'];

/** Whether nothing is in the mixer yet. */
export const isUnmixed = (record: BatchRecord): boolean => stageOf(record) === undefined;

/** Whether a batch is of today, or of the evening before and recently worked on. */
export const isOfNow = ({ date, foamMade, changed }: BatchRecord, now: number): boolean =>
  date === today(new Date(now)) ||
  (date === today(new Date(now - RECENT)) && isRecent(Date.parse(foamMade ?? changed), now));

/** The recent batches that are not placed yet, the latest saved first. */
export function unfinishedOf(
  records: readonly BatchRecord[],
  now = Date.now(),
): readonly BatchRecord[] {
  return records
    .filter(
      (record) =>
        isOfNow(record, now) &&
        !record.invented &&
        !filled(record.readings.placed) &&
        AT_THE_BENCH.includes(stageOf(record)),
    )
    .sort((a, b) => b.changed.localeCompare(a.changed))
    .slice(0, MOST_OFFERED);
}
