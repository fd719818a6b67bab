import { toFile } from '../../bench/records/file.ts';
import type { BatchRecord } from '../../bench/records/record.ts';
import { photosOf } from '../../bench/records/store.ts';
import { takeOut } from './take-out.ts';

/** Hands one batch to the reader as a file, whether it is stored or not. */
export async function takeBatchOut(record: BatchRecord): Promise<void> {
  const photos = await photosOf(record.id).catch(() => []);
  const name = record.name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'batch';
  takeOut(`${record.date}-${name}.json`, toFile({ batches: [record], photos }), 'application/json');
}
