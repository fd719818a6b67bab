import { listRecords } from '../../bench/records/store.ts';
import { $unlearned } from '../../bench/store.ts';
import { refreshLearned } from './lessons.ts';
import { tellDamaged } from './use-records.ts';

/** Learns from all batches anew; where one changes meanwhile, the next page does. */
export async function learnAnew(): Promise<void> {
  $unlearned.set(undefined);
  try {
    const listed = await listRecords();
    tellDamaged(listed);
    if (!$unlearned.get()) refreshLearned(listed.records);
  } catch {
    $unlearned.set('yes');
  }
}
