import type { Entries, Entry } from '../../../bench/entries.ts';
import { MIX_TARE, MIX_VESSEL } from '../../../bench/mix-bucket.ts';
import {
  carriedReadings,
  foamBench,
  sameVessel,
  vesselOf,
} from '../../../bench/records/carried.ts';
import type { ReadingName } from '../../../bench/records/readings.ts';
import { RECONCILE_KEYS } from '../../../bench/records/reconcile-keys.ts';
import type { BatchRecord } from '../../../bench/records/record.ts';
import { $entries, $kept } from '../../../bench/store.ts';
import { CEMENT_DENSITY_KEY } from './cement-density.ts';
import { ontoBench } from './onto-bench.ts';
import { nameOf } from './record-words.ts';

/** What was not added is none of it. */
const NONE: Readonly<Record<string, Entry>> = {
  sand: { t: '0', u: 'kg', s: 'metric' },
  foamAdded: { t: '0', u: 'L', s: 'metric' },
  baseAdded: { t: '0', u: 'kg', s: 'metric' },
};

/**
 * A batch's weighings as the worksheet's fields; what it has none of is none or empty, never an example's. Its
 * cement is the one it was saved with: where that was not typed, the usual one, whatever is on the bench now. Its
 * bucket stays the foam's vessel where it is the one on the bench.
 */
export const reconcileEntries = ({ readings, bench }: BatchRecord): Partial<Entries> => ({
  [CEMENT_DENSITY_KEY]: bench[CEMENT_DENSITY_KEY],
  ...Object.fromEntries(
    (Object.entries(RECONCILE_KEYS) as [ReadingName, string][]).map(([name, key]) => {
      const entry = readings[name];
      return [key, (entry?.t ?? '').trim() === '' ? (NONE[name] ?? { t: '' }) : entry!];
    }),
  ),
  ...(isFoamVessel(readings) && { [MIX_TARE]: undefined, [MIX_VESSEL]: undefined }),
});

/** Whether a bucket is what the foam is weighed in by the bench as it is now. */
function isFoamVessel(bucket: BatchRecord['readings']): boolean {
  const bench = foamBench($entries.get());
  const foam = vesselOf(carriedReadings({ bench, kept: $kept.get() }));
  return foam.tare !== undefined && foam.vessel !== undefined && sameVessel(foam, bucket);
}

/** Puts a batch's weighings on the bench in place of those there, and offers the way to their worksheet. */
export const reconcileWith = (record: BatchRecord): void =>
  ontoBench(
    'reconcile',
    reconcileEntries(record),
    `The weighings of “${nameOf(record)}” are in the worksheet.`,
    { label: 'Open the worksheet', page: 'batch-records/reconcile/#reconcile-question' },
  );
