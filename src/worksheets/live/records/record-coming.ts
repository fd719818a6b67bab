import { type Entries, same } from '../../../bench/entries.ts';
import { binnedPhotos } from '../../../bench/records/bin.ts';
import type { BroughtIn } from '../../../bench/records/file.ts';
import { benchIsEmpty } from '../../../bench/records/from-bench.ts';
import { type Change, planMerge, type toStore } from '../../../bench/records/merge.ts';
import type { Photo } from '../../../bench/records/record.ts';
import { allPhotos, listRecords, type Put, putRecords } from '../../../bench/records/store.ts';
import { nameOf } from './record-words.ts';

/** A file to be imported, compared with what is stored here. */
export interface Coming {
  readonly name: string;
  readonly file: BroughtIn;
  readonly plan: readonly Change[];
  /** Names of batches that are marked as invented here, but not in the file. */
  readonly unmarked: readonly string[];
  /** The photos stored here already, by batch and id. */
  readonly photosHere: ReadonlySet<string>;
  /** The bench of the file, until it is imported. */
  readonly bench: Entries | undefined;
}

export const photoKey = ({ id, batch }: Photo) => `${batch}/${id}`;
export const many = (n: number) => (n === 1 ? 'one batch' : `${n} batches`);

const WHAT = {
  new: 'new here',
  changed: 'here with other content',
  same: 'here already, the same',
  twin: 'here already, under another id',
} as const;
/** In words: the number of batches in a file, by how each compares with those stored here. */
export function holds(plan: readonly Pick<Change, 'what'>[]): string {
  const kinds = (Object.keys(WHAT) as (keyof typeof WHAT)[]).flatMap((what) => {
    const count = plan.filter((change) => change.what === what).length;
    return count > 0 ? [`${count} ${WHAT[what]}`] : [];
  });
  return plan.length > 0
    ? `${many(plan.length)}: ${kinds.join(', ')}`
    : 'no batch that can be brought in';
}

const photosWords = (n: number) => (n === 1 ? 'one missing photo' : `${n} missing photos`);

/** Compares a file with what is stored here. */
export async function against(what: Pick<Coming, 'name' | 'file' | 'bench'>): Promise<Coming> {
  const { batches, photos } = what.file;
  const { records } = await listRecords();
  const pictured = batches.some((batch) => batch.photos.length > 0);
  const [here, binned] = pictured ? await Promise.all([allPhotos(), binnedPhotos()]) : [[], []];
  // The ids of photos in the bin stay reserved for the batches that may be restored from it.
  const owners = new Map([...binned, ...here].map(({ id, batch }) => [id, batch]));
  const plan = planMerge(records, batches, photos, owners);
  const unmarked = batches.flatMap(({ invented }, i) =>
    !invented && plan[i]!.record.invented ? [nameOf(plan[i]!.record)] : [],
  );
  return { ...what, plan, unmarked, photosHere: new Set(here.map(photoKey)) };
}

/**
 * Stores the imported records and photos, over the records they were compared with. If one of those
 * has changed since, nothing is stored, and `anew` is the comparison with what is stored now.
 */
export async function bringIn(
  what: Coming,
  { records, photos }: ReturnType<typeof toStore>,
): Promise<Put & { readonly anew?: Coming }> {
  const over = new Map(
    what.plan.flatMap((change) =>
      change.what === 'changed' ? [[change.here.id, change.here.revision]] : [],
    ),
  );
  const put = await putRecords(records, photos, over);
  if (put.ok || !put.moved) return put;
  return {
    ...put,
    say: `${put.say} Look again at what would change.`,
    anew: await against(what).catch(() => what),
  };
}

/** The bench of a file, if it differs from the one here. */
export function benchToTake({ bench = {} }: BroughtIn, here: Entries): Entries | undefined {
  const keys = [...new Set([...Object.keys(bench), ...Object.keys(here)])];
  const alike = keys.every((key) => same(bench[key], here[key]));
  return alike || Object.keys(bench).length === 0 ? undefined : bench;
}

/** Whether the bench of the file is imported with its batches: only onto an empty bench. */
export const takesBench = ({ bench }: Coming) => bench !== undefined && benchIsEmpty();

/** In words: what one press imports; an empty text for nothing. */
export function wordsFor(what: Coming, { records, photos }: ReturnType<typeof toStore>): string {
  const batches = records.length > 0 ? many(records.length) : '';
  const pictures = records.length === 0 && photos.length > 0 ? photosWords(photos.length) : '';
  return [batches, pictures, takesBench(what) ? 'the bench' : ''].filter(Boolean).join(' and ');
}
