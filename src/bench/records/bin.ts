import { type Binned, type Done, database, type SetAside, tell, trying } from './database.ts';
import { dropLinesBut } from './log-lines.ts';
import { type BatchRecord, content, newId, type Photo } from './record.ts';

/** The list and the bin in one transaction: all writes succeed, or none. */
async function listAndBin() {
  const tx = (await database()).transaction(['batches', 'photos', 'bin'], 'readwrite');
  return {
    batches: tx.objectStore('batches'),
    photos: tx.objectStore('photos'),
    bin: tx.objectStore('bin'),
    written: tx.done,
  };
}

/**
 * Removes batches, either into the bin, from where they can be restored, or for good. The bin needs
 * storage for a second copy; removing for good needs none. The latest removed state of a batch is
 * in the bin under its id. An earlier state with other content is moved to a new id.
 */
export const removeRecords = (ids: readonly string[], forGood = false): Promise<Done> =>
  trying(async () => {
    const { batches, photos, bin, written } = await listAndBin();
    const removed = new Date().toISOString();
    const binned: Binned[] = [];
    const pictures: Photo[] = [];
    // Read everything before writing anything: otherwise a write could be rejected before anyone
    // awaits it.
    for (const id of ids) {
      const record = await batches.get(id);
      if (!record) continue;
      const own = await photos.index('batch').getAll(id);
      pictures.push(...own);
      const before = await bin.get(id);
      const same = before && content(before.record) === content(record);
      if (before && !same) binned.push({ ...before, id: newId() });
      // The batch may have been here without its photos.
      const only = same
        ? before.photos.filter((photo) => !own.some((mine) => mine.id === photo.id))
        : [];
      binned.push({ id, removed, record, photos: [...own, ...only] });
    }
    await Promise.all([
      ...(forGood ? [] : binned.map((one) => bin.put(one))),
      ...ids.map((id) => batches.delete(id)),
      ...pictures.map(({ id }) => photos.delete(id)),
      written,
    ]);
    tell();
  });

/** What happened to a batch that was to be restored. */
export interface Back {
  /** The record in the bin, or else in the list. */
  readonly record: BatchRecord | undefined;
  /**
   * `here`: it is already in the list again, and is left as it is; `gone`: it is no longer in the
   * bin.
   */
  readonly is: 'back' | 'here' | 'gone';
  /** The number of missing photos that were restored. */
  readonly photos: number;
}

/** Restores batches from the bin. One that is already in the list only gets its missing photos. */
export const putBack = (ids: readonly string[]): Promise<Done<readonly Back[]>> =>
  trying(async () => {
    const { batches, photos, bin, written } = await listAndBin();
    const done: Back[] = [];
    const back: Binned[] = [];
    const pictures: Photo[] = [];
    for (const id of ids) {
      const binned = await bin.get(id);
      const here = await batches.get(binned?.record.id ?? id);
      if (binned && !here) {
        back.push(binned);
        pictures.push(...binned.photos);
      }
      let missing = 0;
      for (const photo of here && binned ? binned.photos : []) {
        const named = here!.photos.some((note) => note.id === photo.id);
        if (!named || (await photos.get(photo.id))) continue;
        pictures.push(photo);
        missing++;
      }
      done.push({
        record: binned?.record ?? here,
        is: here ? 'here' : binned ? 'back' : 'gone',
        photos: missing,
      });
    }
    await Promise.all([
      ...back.flatMap(({ id, record }) => [batches.put(record), bin.delete(id)]),
      ...pictures.map((photo) => photos.put(photo)),
      written,
    ]);
    tell();
    return done;
  });

export const listBin = async (): Promise<readonly Binned[]> => (await database()).getAll('bin');
export const binnedPhotos = async (): Promise<readonly Photo[]> =>
  (await listBin()).flatMap(({ photos }) => photos);

/** Empties the bin for good, and drops the drafts of batches that no longer exist. */
export const emptyBin = (): Promise<Done> =>
  trying(async () => {
    const db = await database();
    await db.clear('bin');
    dropLinesBut((await db.getAll('batches')).map(({ id }) => id));
    tell();
  });

export const listAside = async (): Promise<readonly SetAside[]> =>
  (await database()).getAll('aside');
export const dropAside = (): Promise<Done> =>
  trying(async () => {
    await (await database()).clear('aside');
    tell();
  });
