import { formatPlain } from '../../core/quantity/format.ts';
import type { Entry } from '../entries.ts';
import { $entries, $kept } from '../store.ts';
import { carriedReadings } from './carried.ts';
import { isDay } from './day.ts';
import { readingValue } from './reading-value.ts';
import type { ReadingName } from './readings.ts';
import { type BatchRecord, blankRecord, today } from './record.ts';

/**
 * A new batch from the present bench: all of its entries, and the readings a record has a place
 * for.
 */
export function recordFromBench(name: string): BatchRecord {
  const bench = { ...$entries.get() };
  const kept = { ...$kept.get() };
  const cast = bench['curing.castAt']?.t?.slice(0, 10) ?? '';
  return blankRecord({
    name,
    bench,
    kept,
    readings: carriedReadings({ bench, kept }),
    ...(isDay(cast) && { date: cast }),
  });
}

/**
 * What is known about a batch before it is weighed. Everything else on the bench belongs to an
 * earlier one.
 */
const KNOWN_BEFORE = ['tare', 'vessel', 'planned'] as const;

/** A batch about to be weighed: of the weighings, only those that the batch cannot change. */
function onlyKnown(record: BatchRecord): BatchRecord {
  const readings: Partial<Record<ReadingName, Entry>> = {};
  for (const known of KNOWN_BEFORE) {
    const entry = record.readings[known];
    if (entry) readings[known] = entry;
  }
  return { ...record, readings, corrections: [] };
}

/**
 * A new batch about to be weighed, from the bench. A casting time there belongs to an earlier
 * batch.
 */
export const recordToWeigh = (name: string): BatchRecord =>
  onlyKnown({ ...recordFromBench(name), date: today() });

/**
 * A saved batch about to be weighed. Foam weighed earlier is not its foam, and goes into the notes.
 */
export function weighedAnew(record: BatchRecord): BatchRecord {
  const anew = onlyKnown(record);
  const foam = readingValue(record, 'foamDensity');
  const typed = record.readings.foamDensity?.t?.trim();
  if (foam === undefined && !typed) return anew;
  // What cannot be read is noted as typed.
  const before = foam === undefined ? typed : `${formatPlain(foam, 'density', 'kg/m3', 4)} kg/m³`;
  const line = `Foam tried before: ${before}.`;
  return { ...anew, notes: `${record.notes}${record.notes && '\n'}${line}` };
}

/** Whether the bench has no entries of the reader's. */
export const benchIsEmpty = (): boolean => Object.keys($entries.get()).length === 0;
