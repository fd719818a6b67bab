import type { Entries, Entry } from '../../bench/entries.ts';
import type { ReadingName } from '../../bench/records/readings.ts';
import type { BatchRecord } from '../../bench/records/record.ts';
import { CEMENT_DENSITY_KEY } from './cement-density.ts';
import { ontoBench } from './onto-bench.ts';
import { nameOf } from './record-words.ts';

/** Where the worksheet of the balance reads each weighing of a batch; a test holds it to its fields. */
export const RECONCILE_KEYS = {
  cement: 'reconcile.cement',
  water: 'reconcile.water',
  sand: 'reconcile.sand',
  foamVolume: 'reconcile.foamVolume',
  foamDensity: 'mix.foamDensity',
  full: 'reconcile.full',
  tare: 'mix.bucketTare',
  vessel: 'mix.bucketVolume',
  placed: 'reconcile.placed',
  leftOver: 'reconcile.leftOver',
  foamAdded: 'reconcile.foamAdded',
  baseAdded: 'reconcile.baseAdded',
} as const satisfies Partial<Record<ReadingName, string>>;

/** What was not added is none of it. */
const NONE: Readonly<Record<string, Entry>> = {
  sand: { t: '0', u: 'kg', s: 'metric' },
  foamAdded: { t: '0', u: 'L', s: 'metric' },
  baseAdded: { t: '0', u: 'kg', s: 'metric' },
};

/**
 * A batch's weighings as the worksheet's fields; what it has none of is none or empty, never an example's. Its
 * cement is the one it was saved with: where that was not typed, the usual one, whatever is on the bench now.
 */
export const reconcileEntries = ({ readings, bench }: BatchRecord): Partial<Entries> => ({
  [CEMENT_DENSITY_KEY]: bench[CEMENT_DENSITY_KEY],
  ...Object.fromEntries(
    (Object.entries(RECONCILE_KEYS) as [ReadingName, string][]).map(([name, key]) => {
      const entry = readings[name];
      return [key, (entry?.t ?? '').trim() === '' ? (NONE[name] ?? { t: '' }) : entry!];
    }),
  ),
});

/** Puts a batch's weighings on the bench in place of those there, and offers the way to their worksheet. */
export const reconcileWith = (record: BatchRecord): void =>
  ontoBench(
    'reconcile',
    reconcileEntries(record),
    `The weighings of “${nameOf(record)}” are in the worksheet.`,
    { label: 'Open the worksheet', page: 'batch-records/reconcile/#reconcile-question' },
  );
