import { type Done, database, refusalOf, type SetAside, tell, trying } from './database.ts';
import { doubled } from './doubled.ts';
import { type Opened, openRecord } from './migrate.ts';
import { READINGS, type ReadingName, readingOf } from './readings.ts';
import { type BatchRecord, inOrder, nextRevision, type Photo, type PhotoNote } from './record.ts';

export interface Listed {
  readonly records: readonly BatchRecord[];
  /** Records that were just set aside because they could not be read. */
  readonly damaged: readonly SetAside[];
  /** How many belong to a later version of this handbook and were left as they are. */
  readonly newer: number;
}

/**
 * Opens a stored record. Gives it a revision if it has none: files once brought batches in without
 * one, and 0 means not stored.
 */
function openStored(raw: unknown): Opened {
  const opened = openRecord(raw);
  if (!opened.ok) return opened;
  const { record } = opened;
  return { ...opened, record: { ...record, revision: Math.max(record.revision, 1) } };
}

/**
 * All batches, the latest first. Records of earlier versions are migrated and stored again.
 * Unreadable ones are set aside and reported, and the rest opens, even if storage is full.
 */
export async function listRecords(): Promise<Listed> {
  const raws: unknown[] = await (await database()).getAll('batches');
  const records: BatchRecord[] = [];
  const unfit: string[] = [];
  let newer = 0;
  for (const raw of raws) {
    const opened = openStored(raw);
    if (opened.ok) records.push(opened.record);
    if (opened.ok ? opened.from !== opened.record.version : !opened.newer)
      unfit.push((raw as { id: string }).id);
    else if (!opened.ok) newer++;
  }
  const damaged = unfit.length > 0 ? await mend(unfit).catch(() => []) : [];
  records.sort((a, b) => inOrder(b, a));
  return { records, damaged, newer };
}

/** Migrates records in the store, or sets them aside; returns those set aside. */
async function mend(ids: readonly string[]): Promise<readonly SetAside[]> {
  const fresh: BatchRecord[] = [];
  const damaged: SetAside[] = [];
  const tx = (await database()).transaction(['batches', 'aside'], 'readwrite');
  const [batches, aside] = [tx.objectStore('batches'), tx.objectStore('aside')];
  // Read everything again before writing: another tab may have saved meanwhile.
  for (const id of ids) {
    const raw: unknown = await batches.get(id);
    const opened = openRecord(raw);
    if (opened.ok && opened.from !== opened.record.version) fresh.push(opened.record);
    if (raw === undefined || opened.ok || opened.newer) continue;
    damaged.push({ id: String(id), why: opened.why, raw });
  }
  await Promise.all([
    ...fresh.map((record) => batches.put(record)),
    ...damaged.flatMap((found) => [aside.put(found), batches.delete(found.id)]),
    tx.done,
  ]);
  return damaged;
}

/** What is stored under an id. */
export type Found =
  | { readonly is: 'there'; readonly record: BatchRecord }
  | { readonly is: 'none' }
  /** From a later version, or damaged; never overwritten. */
  | { readonly is: 'unreadable'; readonly say: string };

function look(raw: unknown): Found {
  if (raw === undefined) return { is: 'none' };
  const opened = openStored(raw);
  if (opened.ok) return { is: 'there', record: opened.record };
  return {
    is: 'unreadable',
    say: opened.newer
      ? 'What is stored of this batch belongs to a later version of this handbook and was left as it is. Reload the page to get that version.'
      : 'What is stored of this batch cannot be read and was left as it is. Open the list of batches: there it is set aside, and can be taken out as it was found.',
  };
}

/** One batch, if it exists and can be read. */
export const readRecord = async (id: string): Promise<Found> =>
  look(await (await database()).get('batches', id));

export type Saved =
  | { readonly ok: true; readonly record: BatchRecord }
  /**
   * Another tab saved it since; nothing was written. `theirs` is absent if it was removed there.
   */
  | { readonly ok: false; readonly because: 'conflict'; readonly theirs: BatchRecord | undefined }
  /** The stored record is of a later version, or damaged; nothing was written. */
  | { readonly ok: false; readonly because: 'unreadable'; readonly say: string }
  /** Storage is full or off, or the record breaks the format. */
  | { readonly ok: false; readonly because: 'refused'; readonly say: string };

/** Why this record could not be opened again if it were stored; then it must not be stored. */
function faultIn(record: BatchRecord): string | undefined {
  const opened = openRecord(record);
  if (opened.ok) return undefined;
  return opened.why.replace(/^readings\.(\w+)\S*/, (whole, name) =>
    name in READINGS ? `“${readingOf(name as ReadingName).label}”` : whole,
  );
}

/**
 * Stores a record over the revision it is based on, `record.revision` (0: it is new). The check and
 * the write are one transaction: a tab that dies in between leaves the old record whole. Photos
 * that it no longer names are removed with it. A record that was removed meanwhile and is stored
 * again gets its photos back from the bin, where the removed version stays.
 */
export async function saveRecord(record: BatchRecord): Promise<Saved> {
  try {
    const isNew = record.revision === 0;
    const tx = (await database()).transaction(
      isNew ? ['batches', 'photos', 'bin'] : ['batches', 'photos'],
      'readwrite',
    );
    const [batches, pictures] = [tx.objectStore('batches'), tx.objectStore('photos')];
    const there = look(await batches.get(record.id));
    if (there.is === 'unreadable') {
      await tx.done;
      return { ok: false, because: 'unreadable', say: there.say };
    }
    const theirs = there.is === 'there' ? there.record : undefined;
    if ((theirs?.revision ?? 0) !== record.revision) {
      await tx.done;
      return { ok: false, because: 'conflict', theirs };
    }
    const next = {
      ...record,
      revision: nextRevision(record.revision),
      changed: new Date().toISOString(),
    };
    const fault = faultIn(next);
    if (fault) {
      await tx.done;
      return { ok: false, because: 'refused', say: `Not stored: ${fault}.` };
    }
    const lost = isNew ? await tx.objectStore('bin').get(record.id) : undefined;
    const isNamed = ({ id }: PhotoNote | Photo) => record.photos.some((note) => note.id === id);
    const gone: string[] = [];
    for (const note of theirs?.photos ?? [])
      if (!isNamed(note) && (await pictures.get(note.id))?.batch === record.id) gone.push(note.id);
    await Promise.all([
      batches.put(next),
      ...(lost?.photos.filter(isNamed) ?? []).map((photo) => pictures.put(photo)),
      ...gone.map((id) => pictures.delete(id)),
      tx.done,
    ]);
    tell(record.id);
    return { ok: true, record: next };
  } catch (error) {
    return { ok: false, because: 'refused', say: refusalOf(error) };
  }
}

export type Put =
  | { readonly ok: true }
  /**
   * Nothing was stored. `moved`: the revision of a batch here has changed since the plan was made.
   */
  | { readonly ok: false; readonly say: string; readonly moved?: true };

/**
 * Stores imported records as they are, with their photos: all or none. `over` gives the revision
 * that each replaces; a record without one is new. Stores nothing if a record there cannot be read
 * or has another revision, or if another batch's photo has the id of one of these.
 */
export async function putRecords(
  records: readonly BatchRecord[],
  photos: readonly Photo[],
  over: ReadonlyMap<string, number> = new Map(),
): Promise<Put> {
  try {
    const tx = (await database()).transaction(['batches', 'photos'], 'readwrite');
    const [there, pictures] = [tx.objectStore('batches'), tx.objectStore('photos')];
    for (const record of records) {
      const { id, name } = record;
      const found = look(await there.get(id));
      const fault = faultIn(record);
      const revision = found.is === 'there' ? found.record.revision : undefined;
      const why =
        found.is === 'unreadable'
          ? found.say
          : fault
            ? `In it ${fault}.`
            : revision !== over.get(id) && MOVED;
      if (!why) continue;
      await tx.done;
      const say = `Nothing was stored, because of “${name || id}”. ${why}`;
      return { ok: false, say, ...(why === MOVED && { moved: true }) };
    }
    const owners = new Map<string, string>();
    for (const { id, batch } of photos) {
      const owner = owners.get(id) ?? (await pictures.get(id))?.batch ?? batch;
      owners.set(id, batch);
      if (owner === batch) continue;
      await tx.done;
      return { ok: false, say: TAKEN };
    }
    const writes = [
      // Revision 0 would mean not stored yet.
      ...records.map((record) => there.put({ ...record, revision: Math.max(record.revision, 1) })),
      ...photos.map((photo) => pictures.put(photo)),
    ];
    await Promise.all([...writes, tx.done]);
    tell();
    return { ok: true };
  } catch (error) {
    return { ok: false, say: refusalOf(error) };
  }
}

const MOVED = 'It was changed in another tab meanwhile.';
const TAKEN =
  'Nothing was stored: one of the photos bears the id of another batch’s photo. Bring the file in again, and it is given one of its own.';

export const allPhotos = async (): Promise<readonly Photo[]> => (await database()).getAll('photos');
export const photosOf = async (batch: string): Promise<readonly Photo[]> =>
  (await database()).getAllFromIndex('photos', 'batch', batch);
/**
 * Duplicates a batch's photos for its copy. If there is no room for them, only the captions are
 * kept.
 */
export async function doublePhotos(
  record: BatchRecord,
  copy: string,
): Promise<readonly PhotoNote[]> {
  const own = doubled(record.photos, await photosOf(record.id).catch(() => []), copy);
  const put = await putRecords([], own.photos);
  return (put.ok ? own : doubled(record.photos, [], copy)).notes;
}
/**
 * Removes a photo that its batch no longer names and no stored record has named, or that leaves no
 * room to store one without it. A photo of another batch stays, whatever this batch lists.
 */
export const removePhoto = (id: string, batch: string): Promise<Done> =>
  trying(async () => {
    const tx = (await database()).transaction('photos', 'readwrite');
    const mine = (await tx.store.get(id))?.batch === batch;
    await Promise.all([mine && tx.store.delete(id), tx.done]);
  });
