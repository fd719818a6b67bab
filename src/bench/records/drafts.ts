import { localStore } from '../local-store.ts';
import type { SetAside } from './database.ts';
import { openRecord } from './migrate.ts';
import { type BatchRecord, newId } from './record.ts';
import { withinLimits } from './within-limits.ts';

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

/**
 * Drops this tab's draft of a record, unless more was typed since `saved`. One that is older goes too: a later
 * one may have found no room.
 */
export function dropDraft(id: string, saved?: BatchRecord, store = localStore()): void {
  const key = keyOf(id);
  const text = store?.getItem(key) ?? '';
  if (saved && text !== JSON.stringify(saved) && changedIn(text) >= saved.changed) return;
  store?.removeItem(key);
}

/** When a draft was typed; before all others where that cannot be read. */
function changedIn(text: string): string {
  try {
    return String(JSON.parse(text).changed);
  } catch {
    return '';
  }
}

interface Left {
  /** Drops this draft, whichever tab wrote it, unless more was typed since it was read. */
  readonly drop: () => void;
}
export interface DraftLeft extends Left {
  readonly record: BatchRecord;
}
/** A draft that cannot be opened, as it was found. */
export interface DraftUnread extends Left {
  readonly aside: SetAside;
}

/** What a text says; one that is no JSON, itself: it may hold what was typed. */
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
      // What only holds too much is the reader's to shorten.
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

/** The drafts tabs have left behind, the oldest first. */
export const draftsLeft = (store = localStore()): readonly DraftLeft[] =>
  read(store)
    .filter((left) => 'record' in left)
    .sort((a, b) => (a.record.changed < b.record.changed ? -1 : 1));

/** Those among them that cannot be opened; one of a later version is left where it is. */
export const draftsUnread = (store = localStore()): readonly DraftUnread[] =>
  read(store).filter((left) => 'aside' in left);

/** Makes a draft that was left this tab's own; false when the browser refuses. Dropped first: it may be this tab's already, and two want more room. */
export function takeOver({ record, drop }: DraftLeft, store = localStore()): boolean {
  drop();
  return keepDraft(record, store);
}
