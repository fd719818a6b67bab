import { READING_NAMES, type ReadingName } from '../../bench/records/readings.ts';
import type { BatchRecord } from '../../bench/records/record.ts';

/** What may be written down of a batch before any of it is in the mixer. */
const BEFORE_MIXING: readonly ReadingName[] = ['planned', 'foamDensity', 'tare', 'vessel'];
/** More would push “Begin” off a phone’s screen. */
const MOST_OFFERED = 3;

const filled = (record: BatchRecord, name: ReadingName) =>
  (record.readings[name]?.t ?? '').trim() !== '';

/** The batches of a day of which nothing is mixed yet, the latest saved first. */
export function unmixedOf(records: readonly BatchRecord[], day: string): readonly BatchRecord[] {
  return records
    .filter(
      (record) =>
        record.date === day &&
        !record.invented &&
        record.foamMade === undefined &&
        record.log === undefined &&
        READING_NAMES.every((name) => BEFORE_MIXING.includes(name) || !filled(record, name)),
    )
    .sort((a, b) => b.changed.localeCompare(a.changed))
    .slice(0, MOST_OFFERED);
}
