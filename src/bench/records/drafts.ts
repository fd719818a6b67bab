import { localStore } from '../local-store.ts';
import { openRecord } from './migrate.ts';
import type { BatchRecord } from './record.ts';

/**
 * What was typed into a record and is not stored yet. A draft is written at once with each key, so that
 * a tab that dies before the database has answered loses nothing.
 */
const KEY = 'suds.draft.1.';

export function keepDraft(record: BatchRecord, store = localStore()): boolean {
  try {
    store?.setItem(KEY + record.id, JSON.stringify(record));
    return true;
  } catch {
    return false;
  }
}

/** Drops the draft of a record, unless more was typed since `saved`. */
export function dropDraft(id: string, saved?: BatchRecord, store = localStore()): void {
  if (saved && store?.getItem(KEY + id) !== JSON.stringify(saved)) return;
  store?.removeItem(KEY + id);
}

/** The drafts a closed tab left behind; those that cannot be read are left where they are. */
export function draftsLeft(store = localStore()): readonly BatchRecord[] {
  if (!store) return [];
  return Object.keys(store)
    .filter((key) => key.startsWith(KEY))
    .flatMap((key) => {
      try {
        const opened = openRecord(JSON.parse(store.getItem(key) ?? ''));
        return opened.ok ? [opened.record] : [];
      } catch {
        return [];
      }
    });
}
