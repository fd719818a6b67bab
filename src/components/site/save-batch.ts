import { notify } from '../../bench/notices.ts';
import { batchAt } from '../../bench/page-at.ts';
import { recordFromBench } from '../../bench/records/from-bench.ts';
import { askToPersist } from '../../bench/records/room.ts';
import { listRecords, saveRecord } from '../../bench/records/store.ts';
import { tellRefused } from '../../worksheets/shared/refused-notice.ts';
import { named } from '../../worksheets/shared/run-name.ts';

/** Saves the bench as a new batch, from any page, and offers the way to its record; whether it is saved. */
export async function saveBench(name: string): Promise<boolean> {
  // Where the others cannot be read, saving says why.
  const others = await listRecords().catch(() => ({ records: [] }));
  const record = named(recordFromBench(name), others.records);
  const saved = await saveRecord(record);
  if (!saved.ok) {
    tellRefused(record, saved.because === 'refused' ? saved.say : 'The batch was not saved.');
    return false;
  }
  // Asked here because the reader has just shown that it matters; most browsers answer by themselves.
  askToPersist().catch(() => {});
  notify('saved-batch', `“${record.name}” is saved in this browser.`, [
    { label: 'Open its record', run: () => location.assign(batchAt(record.id)) },
  ]);
  return true;
}
