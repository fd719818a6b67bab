import { localStore } from '../local-store.ts';

/** Lines of a temperature log that are typed or pasted into a batch and not attached yet, kept as a draft is. */
const KEY = 'suds.lines.1.';
/** A longer text would take the room of the drafts. */
const MOST = 300_000;

/** Keeps the lines of a batch; false when the browser refuses, or where they are too many: then none are kept. */
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
