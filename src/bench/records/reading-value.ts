import { fromUnit } from '../../core/quantity/convert.ts';
import type { Entry } from '../entries.ts';
import { canBe, type NumberReading, type ReadingName, readingOf, readTyped } from './readings.ts';
import { type BatchRecord, filled } from './record.ts';

/** A reading in SI, as parsed; undefined when it is empty, a choice, or cannot be read. */
function readAmount(entry: Entry | undefined, spec: NumberReading): number | undefined {
  if (entry?.t === undefined || entry.t.trim() === '') return undefined;
  const { kind } = spec;
  const unit = entry.u ?? spec.unit;
  // Most are plain numbers. This fast path matters in a list of hundreds of batches.
  if (/^\d{1,9}(\.\d{1,9})?$/.test(entry.t)) return fromUnit(Number(entry.t), kind, unit);
  const read = readTyped(entry.t, spec, unit);
  return read.ok ? read.value : undefined;
}

/**
 * The value of a reading, in SI; undefined when it is empty, a choice, cannot be read, or is
 * impossible.
 */
export function readingValue(
  record: Pick<BatchRecord, 'readings'>,
  name: ReadingName,
): number | undefined {
  const spec = readingOf(name);
  if ('options' in spec) return undefined;
  const value = readAmount(record.readings[name], spec);
  return value !== undefined && canBe(spec, value) ? value : undefined;
}

/** Whether a reading has a text that counts nowhere: it cannot be read, or is impossible. */
export const isRefused = (record: BatchRecord, name: ReadingName) =>
  filled(record.readings[name]) &&
  (readingValue(record, name) ?? readingChoice(record, name)) === undefined;

/** A choice made in a record. */
export function readingChoice(record: BatchRecord, name: ReadingName): string | undefined {
  const spec = readingOf(name);
  const text = record.readings[name]?.t;
  return 'options' in spec && text !== undefined && spec.options.includes(text) ? text : undefined;
}
