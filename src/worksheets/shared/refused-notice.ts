import { notify } from '../../bench/notices.ts';
import type { SetAside } from '../../bench/records/database.ts';
import type { BatchRecord } from '../../bench/records/record.ts';

/** Hands one batch to the reader as a file; what makes the file is fetched only then. */
export const takeBatch = async (record: BatchRecord): Promise<void> =>
  (await import('./take-batch.ts')).takeBatchOut(record);

/** Hands over the batches that could not be read. */
export const takeDamaged = async (aside: readonly SetAside[]): Promise<void> =>
  (await import('./take-batch.ts')).takeDamagedOut(aside);

/** Says that a batch was not stored, and hands it over as a file when asked to. */
export const tellRefused = (record: BatchRecord, say: string): void =>
  notify('refused', say, [{ label: 'Take it out as a file', run: () => takeBatch(record) }]);
