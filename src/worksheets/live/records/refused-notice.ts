import { notify } from '../../../bench/notices.ts';
import type { SetAside } from '../../../bench/records/database.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import { allPhotos, photosOf } from '../../../bench/records/store.ts';
import { asideToFile, toFile } from '../../../bench/records/to-file.ts';
import { takeOut } from '../../../bench/take-out.ts';

// The code that makes these files is part of the page: unsaved data must not depend on the network.

/** Downloads one batch as a file, whether it is stored or not. */
export async function takeBatch(record: BatchRecord): Promise<void> {
  const photos = await photosOf(record.id).catch(() => []);
  const name = record.name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'batch';
  takeOut(`${record.date}-${name}.json`, toFile({ batches: [record], photos }), 'application/json');
}

/**
 * Downloads the batches that could not be read, as a file that can be imported like any other:
 * importing leaves out only the damaged parts.
 */
export async function takeDamaged(aside: readonly SetAside[]): Promise<void> {
  const photos = await allPhotos().catch(() => []);
  takeOut('damaged-batches.json', asideToFile(aside, photos), 'application/json');
}

/** Tells that a batch was not stored, and offers it as a file. */
export const tellRefused = (record: BatchRecord, say: string): void =>
  notify('refused', say, [{ label: 'Take it out as a file', run: () => takeBatch(record) }]);
