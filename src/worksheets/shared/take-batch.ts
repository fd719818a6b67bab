import type { SetAside } from '../../bench/records/database.ts';
import { asideToFile, toFile } from '../../bench/records/file.ts';
import type { BatchRecord } from '../../bench/records/record.ts';
import { allPhotos, photosOf } from '../../bench/records/store.ts';
import { takeOut } from '../../bench/take-out.ts';

/** Hands one batch to the reader as a file, whether it is stored or not. */
export async function takeBatchOut(record: BatchRecord): Promise<void> {
  const photos = await photosOf(record.id).catch(() => []);
  const name = record.name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'batch';
  takeOut(`${record.date}-${name}.json`, toFile({ batches: [record], photos }), 'application/json');
}

/** Hands over what could not be read, in a file that is brought in like any other: it leaves out of each batch only what spoils it. */
export async function takeDamagedOut(aside: readonly SetAside[]): Promise<void> {
  const photos = await allPhotos().catch(() => []);
  takeOut('damaged-batches.json', asideToFile(aside, photos), 'application/json');
}
