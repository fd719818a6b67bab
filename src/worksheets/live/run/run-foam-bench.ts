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

/** The bench's own key for the bucket full of foam. */
const FOAM_KEY = 'foam-density.full';

/** What is put on the bench or taken off it. */
type Laid = Partial<Entries>;

/** Where a weighing of a mix may lie, in the vessel of the foam until another is typed. */
const MIX_WEIGHED = ['correct.full', 'reconcile.full', 'correct-buckets.buckets'];

/** The bucket of a mix that lies there weighed stays its own when the foam's becomes another. */
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
 * One weighing of foam as the bench has it: the full bucket together with the bucket it was weighed in, and how
 * it was weighed; nothing while one of the three is missing. A bucket that the bench has already stays as it was
 * known there: read off, or weighed full of water.
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

/** Whether that takes the place of a weighing, or a bucket, of the reader’s own that lies there. */
const displaces = (put: Laid, entries: Entries): boolean =>
  ['bucket.tare', 'bucket.volume', FOAM_KEY].some(
    (key) => put[key] && filled(entries[key]) && !same(entries[key], put[key]),
  );

/** What a batch put there last, while this page is open: the way back, and whether it took a place of the reader’s own. */
let last: { readonly id: string; readonly back: () => void; readonly over: boolean } | undefined;

/** Puts back what lay on the bench before a batch’s foam was weighed. */
export function takeBack(id: string | undefined): void {
  if (!last || last.id !== id) return;
  last.back();
  last = undefined;
}

/**
 * Hands the weighing of a batch’s foam to the bench, whole; while a part of it is missing, the bench is as it was
 * before. Whether it lies there in the place of one of the reader’s own.
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
