import type { BatchRecord } from '../../../bench/records/record.ts';
import { nameOf } from '../records/record-words.ts';

/** A batch under a name that none of those has, where nobody gave it one: two of one day are told apart. */
export function named(record: BatchRecord, others: readonly BatchRecord[]): BatchRecord {
  if (record.name) return record;
  const taken = others.map(nameOf);
  for (let n = 1; ; n++) {
    const name = n === 1 ? nameOf(record) : `${nameOf(record)}, ${n}`;
    if (!taken.includes(name)) return { ...record, name };
  }
}

/** The name of a batch whose day was another until now: one that nobody gave it goes with the day. */
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
