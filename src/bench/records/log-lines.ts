import { localStore } from '../local-store.ts';

/**
 * Lines of a temperature log that were typed or pasted into a batch and not attached yet, stored
 * like a draft.
 */
const KEY = 'suds.lines.1.';
/** A longer text would take the drafts' room. */
const MOST = 300_000;

/**
 * Stores the lines of a batch. False if the browser refuses or they are too long; then none are
 * stored.
 */
export function keepLines(id: string, text: string, store = localStore()): boolean {
  try {
    store?.removeItem(KEY + id);
    if (text.trim() === '') return true;
    if (text.length > MOST) return false;
    store?.setItem(KEY + id, text);
    return store !== undefined;
  } catch {
    return false;
  }
}

export const linesOf = (id: string, store = localStore()): string => store?.getItem(KEY + id) ?? '';

/** Drops the lines of all batches but these. */
export function dropLinesBut(ids: readonly string[], store = localStore()): void {
  for (const key of Object.keys(store ?? {}))
    if (key.startsWith(KEY) && !ids.includes(key.slice(KEY.length))) store!.removeItem(key);
}
