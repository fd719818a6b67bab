import type { Entries, KeptResults } from '../entries.ts';

/**
 * Whether a result kept on the bench rests on what the reader typed. A worksheet keeps its results
 * as soon as one field is the reader's. The field that decides a result may still hold the example,
 * and such a result has no place in a record.
 */
type Rests = (
  typed: (key: string) => boolean,
  said: (key: string) => string | undefined,
  kept: (key: string) => boolean,
) => boolean;

/** “How dense should it be?” uses keys that worksheets share, and keeps its answers for them. */
const ownTarget: Rests = (typed, said, kept) =>
  typed(said('mix.targetBy') === 'use' ? 'mix.use' : 'mix.targetDensity') && kept('mix.wetDensity');

/** A target wet density: the field that the aim asks for, or the answer of the worksheet before. */
const aimedAt =
  (sheet: string, fields: Readonly<Record<string, string>>): Rests =>
  (typed, said, kept) => {
    const chosen = said(`${sheet}.aim`) ?? '';
    const aim = Object.hasOwn(fields, chosen) ? chosen : 'wet';
    if (typed(`${sheet}.${fields[aim]}`)) return true;
    return aim === 'wet' && ownTarget(typed, said, kept);
  };

const weighedFoam: Rests = (typed, said) => {
  if (said('foam.method') === 'assumed') return typed('foam-density.assumed');
  const full = said('foam.weighings') === 'several' ? 'foam-density.fulls' : 'foam-density.full';
  const volume = said('foam.vesselKnown') === 'weighed' ? 'foam-density.filled' : 'bucket.volume';
  return [full, 'bucket.tare', volume].every(typed);
};

/** The bucket's volume: as marked, or from weighing it full of water. */
const bucketVolume: Rests = (typed, said) =>
  said('foam.vesselKnown') === 'weighed'
    ? ['bucket.tare', 'foam-density.filled'].every(typed)
    : typed('bucket.volume');

/**
 * By bench key, then by the id of the worksheet that keeps it; tests compare them with the
 * worksheets.
 */
export const RESTS: Readonly<Record<string, Readonly<Record<string, Rests>>>> = {
  'mix.planned': {
    proportion: aimedAt('proportion', { wet: 'wetDensity', dry: 'dryDensity' }),
    batch: aimedAt('batch', {
      wet: 'wetDensity',
      dry: 'dryDensity',
      content: 'content',
      bags: 'bags',
    }),
  },
  'foam.density': { 'foam-density': weighedFoam },
  'bucket.brim': { 'foam-density': bucketVolume },
};

/**
 * The questions of these worksheets when results were kept by question alone, as readers have them
 * stored.
 */
const ASKED: ReadonlyMap<string, string> = new Map([
  ['What goes into the batch?', 'proportion'],
  ['What goes into the whole batch, with everything in it?', 'batch'],
  ['How heavy is my foam?', 'foam-density'],
]);

/** Whether the reader typed what decides the result kept under a key. */
export function isOwnResult(key: string, bench: Entries, kept: KeptResults): boolean {
  const found = kept[key];
  const by = found && (found.by ?? ASKED.get(found.from));
  // A name from a file may be one that every object has.
  const rests =
    by !== undefined && Object.hasOwn(RESTS[key] ?? {}, by) ? RESTS[key]![by] : undefined;
  const said = (field: string) => bench[field]?.t;
  const typed = (field: string) =>
    (said(field) ?? '').trim() !== '' || bench[field]?.rows !== undefined;
  return rests?.(typed, said, (result) => 'v' in (kept[result] ?? {})) ?? false;
}
