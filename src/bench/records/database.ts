import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { noteUnlearned } from '../store.ts';
import type { BatchRecord, Photo } from './record.ts';

/** The name of the reader's database, and the version of its layout. */
const DATABASE = { name: 'suds-records', version: 1 } as const;

/** A removed batch, with its photos. */
export interface Binned {
  readonly id: string;
  readonly removed: string;
  readonly record: BatchRecord;
  readonly photos: readonly Photo[];
}

/** A record that could not be read, as found. */
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

/**
 * Creates what the version found (0 for none) does not have yet. Existing stores keep their
 * contents.
 */
export function upgrade(db: Pick<IDBPDatabase<Records>, 'createObjectStore'>, from: number): void {
  if (from < 1) {
    db.createObjectStore('batches', { keyPath: 'id' });
    db.createObjectStore('photos', { keyPath: 'id' }).createIndex('batch', 'batch');
    db.createObjectStore('bin', { keyPath: 'id' });
    db.createObjectStore('aside', { keyPath: 'id' });
  }
}

let opening: Promise<IDBPDatabase<Records>> | undefined;

export function database(): Promise<IDBPDatabase<Records>> {
  opening ??= openDB<Records>(DATABASE.name, DATABASE.version, {
    upgrade,
    // Another tab has a newer version of this handbook: close, and reopen on the next request.
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

/** Listens for every change, made in this tab or another: the id, or undefined for many. */
export function onChange(hear: (id: string | undefined) => void): () => void {
  const channel = new BroadcastChannel(DATABASE.name);
  channel.onmessage = ({ data }) => hear(data ?? undefined);
  return () => channel.close();
}

let voice: BroadcastChannel | undefined;
/** Announces that a batch has changed, or many. */
export function tell(id?: string): void {
  noteUnlearned();
  // A channel object does not hear itself; the listeners of this tab have their own.
  voice ??= new BroadcastChannel(DATABASE.name);
  voice.postMessage(id ?? null);
}

/** The outcome of a database operation. */
export type Done<T = void> =
  | { readonly ok: true; readonly value: T }
  /** Nothing was changed. `full`: storage is full. */
  | { readonly ok: false; readonly say: string; readonly full: boolean };

export async function trying<T>(work: () => Promise<T>): Promise<Done<T>> {
  try {
    return { ok: true, value: await work() };
  } catch (error) {
    return { ok: false, say: refusalOf(error), full: isFull(error) };
  }
}

const nameOf = (error: unknown) => (error instanceof Error ? error.name : '');
const isFull = (error: unknown) => nameOf(error) === 'QuotaExceededError';
const OFF = 'storage is off, or the page was opened privately';

/**
 * Reports an error to the console if it is a bug, and returns whether it is: a refusal by the
 * browser is not.
 */
export function reportFault(error: unknown): boolean {
  if (error instanceof DOMException || !globalThis.indexedDB) return false;
  reportError(error);
  return true;
}

/**
 * The reason for a failure that is not a refusal by the browser, as a sentence: a later version's
 * database, or a bug, which is also reported to the console. Undefined for a refusal.
 */
function otherwise(undone: string, error: unknown): string | undefined {
  if (nameOf(error) === 'VersionError')
    return `${undone}: what is stored belongs to a later version of this handbook and was left as it is. Reload the page to get that version.`;
  return reportFault(error) ? `${undone}, by a fault of this handbook (${error}).` : undefined;
}

/** Why the browser would not store, as a sentence. */
export const refusalOf = (error: unknown): string =>
  isFull(error)
    ? 'This browser has no room left for records. Nothing was lost of what is stored; take the batches out as a file, remove photos, and try again.'
    : (otherwise('Nothing was stored', error) ?? `This browser would not store anything (${OFF}).`);

const UNREAD = 'The batches in this browser cannot be read here';
/** Why what is stored cannot be read, as a sentence. */
export const unreadOf = (error: unknown): string =>
  isFull(error)
    ? `${UNREAD} (it has no room left).`
    : (otherwise(UNREAD, error) ?? `${UNREAD} (${OFF}).`);
