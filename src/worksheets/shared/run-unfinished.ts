import type { Stage } from '../../bench/records/readings.ts';
import { type BatchRecord, stageOf } from '../../bench/records/record.ts';

/** More would push “Begin” off a phone’s screen. */
const MOST_OFFERED = 3;

const AT_THE_BENCH: readonly (Stage | undefined)[] = [undefined, 'mixed', 'cast'];

/** Whether nothing is in the mixer yet. */
export const isUnmixed = (record: BatchRecord): boolean => stageOf(record) === undefined;

/** The batches of a day that are not placed yet, the latest saved first. */
export function unfinishedOf(records: readonly BatchRecord[], day: string): readonly BatchRecord[] {
  return records
    .filter(
      (record) =>
        record.date === day &&
        !record.invented &&
        !record.readings.placed &&
        AT_THE_BENCH.includes(stageOf(record)),
    )
    .sort((a, b) => b.changed.localeCompare(a.changed))
    .slice(0, MOST_OFFERED);
}
