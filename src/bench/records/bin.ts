import { type Binned, type Done, database, type SetAside, tell, trying } from './database.ts';
import { dropLinesBut } from './log-lines.ts';
import { type BatchRecord, content, newId, type Photo } from './record.ts';

/** The list and the bin in one transaction, which writes all that it is asked to or nothing. */
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
 * Removes batches: into the bin, from where they can be put back, or for good. The bin needs room for them a
 * second time; for good needs none. What was removed last of a batch lies in the bin under its id; what was
 * removed of it before and says something else, under another.
 */
export const removeRecords = (ids: readonly string[], forGood = false): Promise<Done> =>
  trying(async () => {
    const { batches, photos, bin, written } = await listAndBin();
    const removed = new Date().toISOString();
    const binned: Binned[] = [];
    const pictures: Photo[] = [];
    // All is read before anything is written: a refused write must find somebody who waits for it.
    for (const id of ids) {
      const record = await batches.get(id);
      if (!record) continue;
      const own = await photos.index('batch').getAll(id);
      pictures.push(...own);
      const before = await bin.get(id);
      const same = before && content(before.record) === content(record);
      if (before && !same) binned.push({ ...before, id: newId() });
      // It may have been here without its pictures.
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

/** What became of a batch that was to be put back. */
export interface Back {
  /** As it lies or lay in the bin, or else in the list. */
  readonly record: BatchRecord | undefined;
  /** `here`: it is in the list again meanwhile, and stays as it is there; `gone`: the bin has it no more. */
  readonly is: 'back' | 'here' | 'gone';
  /** How many of its photos were missing there and are back. */
  readonly photos: number;
}

/** Puts batches back from the bin. One that is in the list again gets only the photos it has lost. */
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

/** Removes for good what is in the bin, and what was typed into batches that are no more. */
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
