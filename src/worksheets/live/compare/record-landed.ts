import { readingValue } from '../../../bench/records/reading-value.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import { balanceOf, contradicts, plannedAlike, sharePlanned } from '../records/record-numbers.ts';
import { landedDensity, nameOf } from '../records/record-words.ts';
import type { Landed } from './LandingChart.tsx';

/**
 * The batches that were planned and weighed, in the order given. Invented ones are left out once a
 * batch of the reader's own has a plan. Also left out, with their names, are batches whose readings
 * contradict each other, and, as `otherPlan`, those planned with another survival of the foam than
 * the last.
 */
export function landedOf(records: readonly BatchRecord[]): {
  readonly invented: boolean;
  readonly landed: readonly Landed[];
  readonly leftOut: readonly string[];
  readonly otherPlan: readonly string[];
} {
  const planned = records.flatMap((record) => {
    const plan = readingValue(record, 'planned');
    return plan ? [{ record, plan }] : [];
  });
  const own = planned.filter(({ record }) => !record.invented);
  const invented = own.length === 0 && planned.length > 0;
  const all: { readonly record: BatchRecord; readonly landed: Landed }[] = [];
  const leftOut: string[] = [];
  for (const { record, plan } of invented ? planned : own) {
    const [name, weighed] = [nameOf(record), landedDensity(record)];
    if (contradicts(balanceOf(record))) leftOut.push(name);
    else if (weighed)
      all.push({ record, landed: { name, planned: plan, weighed, share: sharePlanned(record) } });
  }
  const alike = new Set(plannedAlike(all));
  const others = all.filter((one) => !alike.has(one));
  return {
    invented,
    landed: [...alike].map(({ landed }) => landed),
    leftOut,
    otherPlan: others.map(({ landed }) => landed.name),
  };
}
