import { readingValue } from '../../bench/records/csv.ts';
import type { BatchRecord } from '../../bench/records/record.ts';
import type { Landed } from './LandingChart.tsx';
import { contradicts, reckon } from './record-numbers.ts';
import { landedDensity, nameOf } from './record-words.ts';

/**
 * The batches that were planned and weighed, in the order given. Invented ones are left out once a batch
 * of the reader's own has a plan: what is said of them is nothing to correct a plan by.
 */
export function landedOf(records: readonly BatchRecord[]): {
  readonly invented: boolean;
  readonly landed: readonly Landed[];
} {
  const planned = records.flatMap((record) => {
    const plan = readingValue(record, 'planned');
    return plan ? [{ record, plan }] : [];
  });
  const own = planned.filter(({ record }) => !record.invented);
  const invented = own.length === 0 && planned.length > 0;
  const landed = (invented ? planned : own).flatMap(({ record, plan }): Landed[] => {
    const weighed = landedDensity(record);
    if (!weighed) return [];
    const wrong = contradicts(reckon(record));
    return [{ name: nameOf(record), planned: plan, weighed, ...(wrong && { wrong }) }];
  });
  return { invented, landed };
}
