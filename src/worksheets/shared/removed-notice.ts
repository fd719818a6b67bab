import { notify } from '../../bench/notices.ts';
import { putBack, removeRecords } from '../../bench/records/store.ts';

const KEY = 'suds.removed.1';

/** Removes a batch; the page gone to next says so, and offers to put it back. */
export async function removeAndTell(id: string, name: string): Promise<void> {
  await removeRecords([id]);
  try {
    sessionStorage.setItem(KEY, JSON.stringify({ id, name }));
  } catch {
    // Nothing is said; the batch is in the bin all the same.
  }
}

/** Says what was removed on the page before. */
export function sayRemoved(): void {
  try {
    const { id, name } = JSON.parse(sessionStorage.getItem(KEY) ?? '') as Record<string, string>;
    sessionStorage.removeItem(KEY);
    if (id && name) tellRemoved([id], `“${name}” is in the bin.`);
  } catch {
    // Nothing was.
  }
}

/** Says that batches are in the bin, and offers to put them back. */
export function tellRemoved(ids: readonly string[], words: string): void {
  notify('removed', words, [{ label: 'Put back', run: () => putBack(ids) }]);
}
