import type { BatchRecord } from '../../../bench/records/record.ts';
import { nameOf } from '../records/record-words.ts';

/** An unnamed batch with a name that no other has, to distinguish batches of one day. */
export function named(record: BatchRecord, others: readonly BatchRecord[]): BatchRecord {
  if (record.name) return record;
  const taken = others.map(nameOf);
  for (let n = 1; ; n++) {
    const name = n === 1 ? nameOf(record) : `${nameOf(record)}, ${n}`;
    if (!taken.includes(name)) return { ...record, name };
  }
}

/**
 * The name of a batch whose date is changed: an automatic name follows the date, a given one stays.
 */
export function nameMoved(
  record: BatchRecord,
  was: string,
  others: readonly BatchRecord[],
): string {
  const [before, unnamed] = [nameOf({ ...record, name: '', date: was }), { ...record, name: '' }];
  if (!record.name.startsWith(before) || !/^(, \d+)?$/.test(record.name.slice(before.length)))
    return record.name;
  return named(
    unnamed,
    others.filter(({ id }) => id !== record.id),
  ).name;
}
