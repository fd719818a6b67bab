import { type BatchRecord, stageOf } from '../../bench/records/record.ts';

/** More would push “Begin” off a phone’s screen. */
const MOST_OFFERED = 3;

/** The batches of a day of which nothing is mixed yet, the latest saved first. */
export function unmixedOf(records: readonly BatchRecord[], day: string): readonly BatchRecord[] {
  return records
    .filter((record) => record.date === day && !record.invented && stageOf(record) === undefined)
    .sort((a, b) => b.changed.localeCompare(a.changed))
    .slice(0, MOST_OFFERED);
}
