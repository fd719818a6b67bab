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

/** Amounts that were not added count as 0. */
const NONE: Readonly<Record<string, Entry>> = {
  sand: { t: '0', u: 'kg', s: 'metric' },
  foamAdded: { t: '0', u: 'L', s: 'metric' },
  baseAdded: { t: '0', u: 'kg', s: 'metric' },
};

/**
 * A batch's weighings as entries of the worksheet; missing ones are 0 or empty, never the
 * example's. The cement density is the one saved with the batch, or the default if none was typed,
 * whatever is on the bench now. The bucket is left to the foam's vessel if that is the same on the
 * bench.
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

/** Whether a bucket is the foam's vessel on the bench as it is now. */
function isFoamVessel(bucket: BatchRecord['readings']): boolean {
  const bench = foamBench($entries.get());
  const foam = vesselOf(carriedReadings({ bench, kept: $kept.get() }));
  return foam.tare !== undefined && foam.vessel !== undefined && sameVessel(foam, bucket);
}

/**
 * Puts a batch's weighings on the bench in place of those there, and offers a link to their
 * worksheet.
 */
export const reconcileWith = (record: BatchRecord): void =>
  ontoBench(
    'reconcile',
    reconcileEntries(record),
    `The weighings of “${nameOf(record)}” are in the worksheet.`,
    { label: 'Open the worksheet', page: 'batch-records/reconcile/#reconcile-question' },
  );
