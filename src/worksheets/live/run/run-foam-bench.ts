import { type Entries, same } from '../../../bench/entries.ts';
import { MIX_TARE, MIX_VESSEL } from '../../../bench/mix-bucket.ts';
import {
  carriedReadings,
  foamBench,
  sameVessel,
  vesselOf,
} from '../../../bench/records/carried.ts';
import { filled } from '../../../bench/records/record.ts';
import type { FoamIn, Going } from '../../../bench/run.ts';
import type { Bench } from '../../../bench/store.ts';
import { putOnBench } from '../records/onto-bench.ts';

/** The bench key of the bucket full of foam. */
const FOAM_KEY = 'foam-density.full';

/** Entries put on the bench, or undefined to remove one. */
type Laid = Partial<Entries>;

/** Bench keys of weighings of a mix, which use the foam's vessel until another is typed. */
const MIX_WEIGHED = ['correct.full', 'reconcile.full', 'correct-buckets.buckets'];

/** Keeps the bucket of a mix weighed on the bench when the foam's vessel changes. */
function mixBucket(entries: Entries, there: FoamIn): Laid {
  if (!MIX_WEIGHED.some((key) => filled(entries[key]) || entries[key]?.rows)) return {};
  const own = [
    [MIX_TARE, there.tare],
    [MIX_VESSEL, there.vessel],
  ] as const;
  return Object.fromEntries(
    own.flatMap(([key, entry]) =>
      entry && !filled(entries[key]) ? [[key, { ...entries[key], ...entry }]] : [],
    ),
  );
}

/**
 * The entries for one weighing of foam: the full bucket, its empty weight and volume, and the
 * method; undefined while one is missing. A bucket that is on the bench already keeps the way its
 * volume is known: typed, or weighed full of water.
 */
function foamWeighingOf(
  full: Going['foam'],
  foamIn: FoamIn,
  { entries, kept = {} }: Bench,
): Laid | undefined {
  const { tare, vessel } = foamIn;
  if (!filled(full) || !filled(tare) || !filled(vessel)) return undefined;
  const there = vesselOf(carriedReadings({ bench: foamBench(entries), kept }));
  return {
    'foam.method': { t: 'weighed' },
    'foam.weighings': { t: 'one' },
    'foam-density.drained': undefined,
    ...(!sameVessel(there, foamIn) && {
      ...mixBucket(entries, there),
      'foam.vesselKnown': { t: 'marked' },
      'bucket.tare': tare,
      'bucket.volume': vessel,
    }),
    [FOAM_KEY]: full,
  };
}

/** Whether entries would replace a weighing or a bucket that the reader typed on the bench. */
const displaces = (put: Laid, entries: Entries): boolean =>
  ['bucket.tare', 'bucket.volume', FOAM_KEY].some(
    (key) => put[key] && filled(entries[key]) && !same(entries[key], put[key]),
  );

/**
 * The last weighing put on the bench while this page is open: its undo, and whether it replaced the
 * reader's own.
 */
let last: { readonly id: string; readonly back: () => void; readonly over: boolean } | undefined;

/** Restores what was on the bench before a batch's foam was weighed. */
export function takeBack(id: string | undefined): void {
  if (!last || last.id !== id) return;
  last.back();
  last = undefined;
}

/**
 * Puts the complete weighing of a batch's foam on the bench; while a part of it is missing, the
 * bench stays as before. Returns whether it replaced one of the reader's own.
 */
export function handOver({ id, foam }: Going, foamIn: FoamIn, bench: Bench): boolean {
  const put = foamWeighingOf(foam, foamIn, bench);
  if (!put) {
    takeBack(id);
    return false;
  }
  const over = last?.id === id ? last.over : displaces(put, bench.entries);
  last = { id, over, back: putOnBench(`run-${id}`, put) };
  return over;
}
