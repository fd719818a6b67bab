import type { ReadingName } from '../../../bench/records/readings.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import { doubtAbout } from '../../../islands/engine/doubt.ts';
import type { FieldReading } from '../../../islands/engine/reading.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { cementDensityOf } from '../records/cement-density.ts';
import { readFields } from '../records/RecordFields.tsx';

/** The readings of a batch as its fields read them. */
export interface RunReadings {
  /** In SI; undefined if it is empty, unreadable or out of bounds. */
  readonly at: (name: ReadingName) => number | undefined;
  /** Its ±, in SI: as typed, else its instrument's; infinite if the typed one is refused. */
  readonly pm: (name: ReadingName) => number;
  /** What is wrong with it, in a sentence. */
  readonly problem: (name: ReadingName) => string | undefined;
  /**
   * The particle density of its cement, kg/m³, as saved with the batch; undefined for the default.
   */
  readonly cementDensity: number | undefined;
  readonly corrections: BatchRecord['corrections'];
  /** The results kept on the bench it was saved from. */
  readonly kept: BatchRecord['kept'];
}

/** The ± of a field; infinite if it is refused, rather than 0. */
export const pmOf = (reading: FieldReading): number =>
  reading.type === 'number' && reading.pmProblem ? Number.POSITIVE_INFINITY : doubtAbout(reading);

export function runReadings(record: BatchRecord, say: Say): RunReadings {
  const fields = readFields(record, say);
  return {
    cementDensity: cementDensityOf(record),
    corrections: record.corrections,
    kept: record.kept,
    at: (name) => {
      const reading = fields[name];
      return reading?.type === 'number' && !reading.problem ? reading.value : undefined;
    },
    pm: (name) => {
      const reading = fields[name];
      return reading ? pmOf(reading) : 0;
    },
    problem: (name) => {
      const reading = fields[name];
      return reading?.type === 'number' ? reading.problem : undefined;
    },
  };
}
