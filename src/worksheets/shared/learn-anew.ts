import { $learned, learnedBehind } from '../../bench/learned.ts';
import { listRecords } from '../../bench/records/store.ts';
import { refreshLearned } from './lessons.ts';
import { tellDamaged } from './use-records.ts';

/** Learns from all batches anew where they have changed since; one that changes meanwhile leaves it to the next page. */
export async function learnAnew(): Promise<void> {
  const { behind, ...learned } = $learned.get();
  if (!behind) return;
  $learned.set(learned);
  try {
    const listed = await listRecords();
    tellDamaged(listed);
    if (!$learned.get().behind) refreshLearned(listed.records);
  } catch {
    learnedBehind();
  }
}
