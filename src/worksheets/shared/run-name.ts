import type { BatchRecord } from '../../bench/records/record.ts';
import { nameOf } from './record-words.ts';

/** A batch under a name that none of those has, where nobody gave it one: two of one day are told apart. */
export function named(record: BatchRecord, others: readonly BatchRecord[]): BatchRecord {
  if (record.name) return record;
  const taken = others.map(nameOf);
  for (let n = 1; ; n++) {
    const name = n === 1 ? nameOf(record) : `${nameOf(record)}, ${n}`;
    if (!taken.includes(name)) return { ...record, name };
  }
}
