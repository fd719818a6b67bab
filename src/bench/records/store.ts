import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { doubled } from './merge.ts';
import { openRecord } from './migrate.ts';
import type { BatchRecord, Photo, PhotoNote } from './record.ts';

/** The name of the reader's database, and the version of its layout. */
const DATABASE = { name: 'suds-records', version: 1 } as const;

interface Binned {
  readonly id: string;
  readonly removed: string;
  readonly record: BatchRecord;
  readonly photos: readonly Photo[];
}

/** A record that could not be read, as it was found. */
export interface SetAside {
  readonly id: string;
  readonly why: string;
  readonly raw: unknown;
}

interface Records extends DBSchema {
  batches: { key: string; value: BatchRecord };
  photos: { key: string; value: Photo; indexes: { batch: string } };
  bin: { key: string; value: Binned };
  aside: { key: string; value: SetAside };
}

let opening: Promise<IDBPDatabase<Records>> | undefined;

function database(): Promise<IDBPDatabase<Records>> {
  opening ??= openDB<Records>(DATABASE.name, DATABASE.version, {
    upgrade(db) {
      db.createObjectStore('batches', { keyPath: 'id' });
      db.createObjectStore('photos', { keyPath: 'id' }).createIndex('batch', 'batch');
      db.createObjectStore('bin', { keyPath: 'id' });
      db.createObjectStore('aside', { keyPath: 'id' });
    },
    // Another tab holds a newer version of this handbook: let go, and open anew when asked again.
    blocking(_, __, event) {
      (event.target as IDBDatabase).close();
      opening = undefined;
    },
    terminated() {
      opening = undefined;
    },
  }).catch((error: unknown) => {
    opening = undefined;
    throw error;
  });
  return opening;
}

export interface Listed {
  readonly records: readonly BatchRecord[];
  /** Records set aside just now because they could not be read. */
  readonly damaged: readonly SetAside[];
  /** How many belong to a later version of this handbook and were left as they are. */
  readonly newer: number;
}

/**
 * All batches, the latest first. Those of earlier versions are brought up to date and stored again;
 * those that cannot be read are set aside and reported, and the rest opens.
 */
export async function listRecords(): Promise<Listed> {
  const db = await database();
  const raws: unknown[] = await db.getAll('batches');
  const records: BatchRecord[] = [];
  const damaged: SetAside[] = [];
  const upgraded: BatchRecord[] = [];
  let newer = 0;
  for (const raw of raws) {
    const opened = openRecord(raw);
    if (opened.ok) {
      records.push(opened.record);
      if (opened.from !== opened.record.version) upgraded.push(opened.record);
    } else if (opened.newer) newer++;
    else damaged.push({ id: String((raw as { id: unknown }).id), why: opened.why, raw });
  }
  if (damaged.length + upgraded.length > 0) {
    const tx = db.transaction(['batches', 'aside'], 'readwrite');
    for (const record of upgraded) tx.objectStore('batches').put(record);
    for (const item of damaged) {
      tx.objectStore('aside').put(item);
      tx.objectStore('batches').delete((item.raw as { id: string }).id);
    }
    await tx.done;
  }
  records.sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : a.name < b.name ? 1 : -1));
  return { records, damaged, newer };
}

/** One batch; undefined when there is none of this id, or it cannot be read. */
export async function readRecord(id: string): Promise<BatchRecord | undefined> {
  const opened = openRecord(await (await database()).get('batches', id));
  return opened.ok ? opened.record : undefined;
}

export type Saved =
  | { readonly ok: true; readonly record: BatchRecord }
  /** Another tab saved it since; nothing was written. `theirs` is absent when it was removed there. */
  | { readonly ok: false; readonly because: 'conflict'; readonly theirs: BatchRecord | undefined }
  /** The browser has no room, or storage is off. */
  | { readonly ok: false; readonly because: 'refused'; readonly say: string };

/**
 * Stores a record over the revision it is based on, `record.revision` (0: it is new). The check and
 * the write are one transaction: a tab that dies in between leaves the old record whole.
 */
export async function saveRecord(record: BatchRecord): Promise<Saved> {
  try {
    const tx = (await database()).transaction('batches', 'readwrite');
    const there = await tx.store.get(record.id);
    if ((there?.revision ?? 0) !== record.revision) {
      await tx.done;
      const theirs = openRecord(there);
      return { ok: false, because: 'conflict', theirs: theirs.ok ? theirs.record : undefined };
    }
    const next = {
      ...record,
      revision: record.revision + 1,
      changed: new Date().toISOString(),
    };
    await Promise.all([tx.store.put(next), tx.done]);
    tell(record.id);
    return { ok: true, record: next };
  } catch (error) {
    return { ok: false, because: 'refused', say: refusalOf(error) };
  }
}

/** Stores records as they are, with their photos, in one go: all or none. For what was brought in. */
export async function putRecords(
  records: readonly BatchRecord[],
  photos: readonly Photo[],
): Promise<{ readonly ok: true } | { readonly ok: false; readonly say: string }> {
  try {
    const tx = (await database()).transaction(['batches', 'photos'], 'readwrite');
    const writes: Promise<unknown>[] = [];
    for (const record of records) writes.push(tx.objectStore('batches').put(record));
    for (const photo of photos) {
      // A photo here is never replaced by another batch's that bears its id.
      const there = await tx.objectStore('photos').get(photo.id);
      if (!there || there.batch === photo.batch) writes.push(tx.objectStore('photos').put(photo));
    }
    await Promise.all([...writes, tx.done]);
    tell();
    return { ok: true };
  } catch (error) {
    return { ok: false, say: refusalOf(error) };
  }
}

/** Moves batches to the bin, from where they can be put back. */
export async function removeRecords(ids: readonly string[]): Promise<void> {
  const tx = (await database()).transaction(['batches', 'photos', 'bin'], 'readwrite');
  for (const id of ids) {
    const record = await tx.objectStore('batches').get(id);
    if (!record) continue;
    const photos = await tx.objectStore('photos').index('batch').getAll(id);
    tx.objectStore('bin').put({ id, removed: new Date().toISOString(), record, photos });
    tx.objectStore('batches').delete(id);
    for (const photo of photos) tx.objectStore('photos').delete(photo.id);
  }
  await tx.done;
  tell();
}

/** Puts batches back from the bin. One that is there again meanwhile is left as it is. */
export async function putBack(ids: readonly string[]): Promise<void> {
  const tx = (await database()).transaction(['batches', 'photos', 'bin'], 'readwrite');
  for (const id of ids) {
    const binned = await tx.objectStore('bin').get(id);
    if (!binned || (await tx.objectStore('batches').get(id))) continue;
    tx.objectStore('batches').put(binned.record);
    for (const photo of binned.photos) tx.objectStore('photos').put(photo);
    tx.objectStore('bin').delete(id);
  }
  await tx.done;
  tell();
}

export const listBin = async (): Promise<readonly Binned[]> => (await database()).getAll('bin');

/** Removes batches for good: these, or all that are in the bin. */
export async function emptyBin(ids?: readonly string[]): Promise<void> {
  const tx = (await database()).transaction('bin', 'readwrite');
  if (ids) for (const id of ids) tx.store.delete(id);
  else tx.store.clear();
  await tx.done;
  tell();
}

export const listAside = async (): Promise<readonly SetAside[]> =>
  (await database()).getAll('aside');
export async function dropAside(): Promise<void> {
  await (await database()).clear('aside');
  tell();
}

export const allPhotos = async (): Promise<readonly Photo[]> => (await database()).getAll('photos');
export const photosOf = async (batch: string): Promise<readonly Photo[]> =>
  (await database()).getAllFromIndex('photos', 'batch', batch);
/** Stores a batch's photos a second time for its copy; those there is no room for are left out. */
export async function doublePhotos(
  record: BatchRecord,
  copy: string,
): Promise<readonly PhotoNote[]> {
  const own = doubled(record.photos, await photosOf(record.id).catch(() => []), copy);
  const put = await putRecords([], own.photos);
  return put.ok ? own.notes : [];
}
export async function removePhoto(id: string): Promise<void> {
  await (await database()).delete('photos', id);
}

/** Hears of every change, made in this tab or another: the id, or undefined for many. */
export function onChange(hear: (id: string | undefined) => void): () => void {
  const channel = new BroadcastChannel(DATABASE.name);
  channel.onmessage = ({ data }) => hear(data ?? undefined);
  return () => channel.close();
}

let voice: BroadcastChannel | undefined;
function tell(id?: string): void {
  // One channel object does not hear itself; the listeners of this tab have their own.
  voice ??= new BroadcastChannel(DATABASE.name);
  voice.postMessage(id ?? null);
}

/** Why the browser would not store, as a sentence. */
export function refusalOf(error: unknown): string {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  return name === 'QuotaExceededError'
    ? 'This browser has no room left for records. Nothing was lost of what is stored; take the batches out as a file, remove photos, and try again.'
    : 'This browser would not store the record (storage is off, or the page was opened privately). Take it out as a file before you close this page.';
}
