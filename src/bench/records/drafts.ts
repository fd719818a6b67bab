import { localStore } from '../local-store.ts';
import { openRecord } from './migrate.ts';
import { type BatchRecord, newId } from './record.ts';

/**
 * What was typed into a record and is not stored yet. A draft is written at once with each key, so that
 * a tab that dies before the database has answered loses nothing. Each tab has drafts of its own: two
 * that are typed in at once do not overwrite each other's.
 */
const KEY = 'suds.draft.1.';
let tab: string | undefined;
const keyOf = (id: string) => {
  tab ??= newId();
  return `${KEY}${id}.${tab}`;
};

/** Keeps this tab's draft of a record; false when the browser refuses. */
export function keepDraft(record: BatchRecord, store = localStore()): boolean {
  try {
    store?.setItem(keyOf(record.id), JSON.stringify(record));
    return store !== undefined;
  } catch {
    return false;
  }
}

/** Drops this tab's draft of a record, unless more was typed since `saved`. */
export function dropDraft(id: string, saved?: BatchRecord, store = localStore()): void {
  const key = keyOf(id);
  if (saved && store?.getItem(key) !== JSON.stringify(saved)) return;
  store?.removeItem(key);
}

export interface DraftLeft {
  readonly record: BatchRecord;
  /** Drops this draft, whichever tab wrote it, unless more was typed since it was read. */
  readonly drop: () => void;
}

/** The drafts tabs have left behind, the oldest first; those that cannot be read are left where they are. */
export function draftsLeft(store = localStore()): readonly DraftLeft[] {
  if (!store) return [];
  return Object.keys(store)
    .filter((key) => key.startsWith(KEY))
    .flatMap((key): DraftLeft[] => {
      try {
        const text = store.getItem(key) ?? '';
        const opened = openRecord(JSON.parse(text));
        const drop = () => {
          if (store.getItem(key) === text) store.removeItem(key);
        };
        return opened.ok ? [{ record: opened.record, drop }] : [];
      } catch {
        return [];
      }
    })
    .sort((a, b) => (a.record.changed < b.record.changed ? -1 : 1));
}

/** Makes a draft that was left this tab's own. Dropped first: it may be this tab's already, and two want more room. */
export function takeOver({ record, drop }: DraftLeft, store = localStore()): void {
  drop();
  keepDraft(record, store);
}
