import { reportFault } from '../../../bench/records/database.ts';
import { listRecords } from '../../../bench/records/store.ts';
import { $unlearned } from '../../../bench/store.ts';
import { learnFrom, storeLearned } from './lessons.ts';
import { tellDamaged } from './use-records.ts';

/**
 * Learns from all batches again; if one changes meanwhile, or this page is left, the next page does
 * it.
 */
export async function learnAnew(): Promise<void> {
  const mark = $unlearned.get();
  try {
    const listed = await listRecords();
    tellDamaged(listed);
    if ($unlearned.get() === mark) storeLearned(learnFrom(listed.records));
  } catch (error) {
    // Nothing was learned: the mark stays set.
    reportFault(error);
  }
}
