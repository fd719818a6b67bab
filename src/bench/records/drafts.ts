import { localStore } from '../local-store.ts';
import type { SetAside } from './database.ts';
import { openRecord } from './migrate.ts';
import { type BatchRecord, newId } from './record.ts';
import { withinLimits } from './within-limits.ts';

/**
 * What was typed into a record and is not stored yet. A draft is written synchronously with each
 * key press, so a tab that dies before the database has answered loses nothing. Each tab has its
 * own drafts, so two tabs do not overwrite each other's.
 */
const KEY = 'suds.draft.1.';
let tab: string | undefined;
const keyOf = (id: string) => {
  tab ??= newId();
  return `${KEY}${id}.${tab}`;
};

/** Writes this tab's draft of a record; false if the browser refuses. */
export function keepDraft(record: BatchRecord, store = localStore()): boolean {
  try {
    store?.setItem(keyOf(record.id), JSON.stringify(record));
    return store !== undefined;
  } catch {
    return false;
  }
}

/**
 * Drops this tab's draft of a record, unless more was typed since `saved`. An older draft is
 * dropped too: a later one may have found no room.
 */
export function dropDraft(id: string, saved?: BatchRecord, store = localStore()): void {
  const key = keyOf(id);
  const text = store?.getItem(key) ?? '';
  if (saved && text !== JSON.stringify(saved) && changedIn(text) >= saved.changed) return;
  store?.removeItem(key);
}

/** When a draft was typed; earliest of all if that cannot be read. */
function changedIn(text: string): string {
  try {
    return String(JSON.parse(text).changed);
  } catch {
    return '';
  }
}

interface Left {
  /** Drops this draft, whichever tab wrote it, unless it has changed since it was read. */
  readonly drop: () => void;
}
export interface DraftLeft extends Left {
  readonly record: BatchRecord;
}
/** A draft that cannot be opened, as found. */
export interface DraftUnread extends Left {
  readonly aside: SetAside;
}

/** The parsed text. A text that is not JSON is returned as it is: it may hold what was typed. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

function read(store: Storage | undefined): readonly (DraftLeft | DraftUnread)[] {
  return Object.keys(store ?? {})
    .filter((key) => key.startsWith(KEY))
    .flatMap((key): (DraftLeft | DraftUnread)[] => {
      const text = store!.getItem(key) ?? '';
      const drop = () => {
        if (store!.getItem(key) === text) store!.removeItem(key);
      };
      const raw = parsed(text);
      let more = {};
      // A record that only holds too much is left for the reader to shorten.
      const opened = openRecord(raw, (whole) => {
        const { within, over } = withinLimits(whole);
        more = over;
        return within;
      });
      if (opened.ok) return [{ record: { ...opened.record, ...more }, drop }];
      const id = key.slice(KEY.length).split('.')[0]!;
      return opened.newer ? [] : [{ aside: { id, why: opened.why, raw }, drop }];
    });
}

/** Drafts that tabs left behind, the oldest first. */
export const draftsLeft = (store = localStore()): readonly DraftLeft[] =>
  read(store)
    .filter((left) => 'record' in left)
    .sort((a, b) => (a.record.changed < b.record.changed ? -1 : 1));

/** Those that cannot be opened. A draft of a later version is left alone. */
export const draftsUnread = (store = localStore()): readonly DraftUnread[] =>
  read(store).filter((left) => 'aside' in left);

/**
 * Makes a leftover draft this tab's own; false if the browser refuses. The draft is dropped first:
 * it may already be this tab's, and storing it twice needs more room.
 */
export function takeOver({ record, drop }: DraftLeft, store = localStore()): boolean {
  drop();
  return keepDraft(record, store);
}
