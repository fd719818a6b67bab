import { notify } from '../../bench/notices.ts';
import type { BatchRecord } from '../../bench/records/record.ts';

/** Says that a batch was not stored, and hands it over as a file when asked to. */
export function tellRefused(record: BatchRecord, say: string): void {
  const take = async () => (await import('./take-batch.ts')).takeBatchOut(record);
  notify('refused', say, [{ label: 'Take it out as a file', run: take }]);
}
