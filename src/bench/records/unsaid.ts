import type { Entry } from '../entries.ts';
import { isOwnResult } from './own-result.ts';
import type { ReadingName } from './readings.ts';
import { type BatchRecord, filled, stageOf } from './record.ts';

/** What lay on the bench when a batch was saved, and is the batch's only once the reader says so. */

/** Where worksheets ask for weighings of a mix: what stands there may be tried. The first that is typed counts. */
const WEIGHED: Readonly<Partial<Record<ReadingName, readonly string[]>>> = {
  cement: ['reconcile.cement'],
  water: ['reconcile.water'],
  sand: ['reconcile.sand'],
  foamVolume: ['reconcile.foamVolume'],
  full: ['correct.full', 'reconcile.full'],
  foamAdded: ['reconcile.foamAdded'],
  baseAdded: ['reconcile.baseAdded'],
  placed: ['reconcile.placed'],
  leftOver: ['reconcile.leftOver'],
};

/** The weighings that worksheets were given, of a batch that is not mixed by what is written down. */
export function unsaidWeighings(
  record: BatchRecord,
): Readonly<Partial<Record<ReadingName, Entry>>> {
  if (stageOf(record) !== undefined) return {};
  return Object.fromEntries(
    (Object.entries(WEIGHED) as [ReadingName, readonly string[]][]).flatMap(([name, keys]) => {
      const entry = keys.map((key) => record.bench[key]).find(filled);
      return entry && !entry.rows ? [[name, entry]] : [];
    }),
  );
}

/** The wet density, kg/m³, that amounts were worked out for whose target was left at the example. */
export function unsaidPlan({ readings, bench, kept }: BatchRecord): number | undefined {
  const planned = kept['mix.planned'];
  if (!planned || filled(readings.planned)) return undefined;
  return isOwnResult('mix.planned', planned.from, bench, kept) ? undefined : planned.v;
}
