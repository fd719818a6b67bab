import { notify } from '../../../bench/notices.ts';
import type { SetAside } from '../../../bench/records/database.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import { allPhotos, photosOf } from '../../../bench/records/store.ts';
import { asideToFile, toFile } from '../../../bench/records/to-file.ts';
import { takeOut } from '../../../bench/take-out.ts';

// What makes these files comes with the page: what is stored nowhere may not wait for the network.

/** Hands one batch to the reader as a file, whether it is stored or not. */
export async function takeBatch(record: BatchRecord): Promise<void> {
  const photos = await photosOf(record.id).catch(() => []);
  const name = record.name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'batch';
  takeOut(`${record.date}-${name}.json`, toFile({ batches: [record], photos }), 'application/json');
}

/** Hands over the batches that could not be read, in a file that is brought in like any other: it leaves out of each only what spoils it. */
export async function takeDamaged(aside: readonly SetAside[]): Promise<void> {
  const photos = await allPhotos().catch(() => []);
  takeOut('damaged-batches.json', asideToFile(aside, photos), 'application/json');
}

/** Says that a batch was not stored, and hands it over as a file when asked to. */
export const tellRefused = (record: BatchRecord, say: string): void =>
  notify('refused', say, [{ label: 'Take it out as a file', run: () => takeBatch(record) }]);
