import { notify } from '../../../bench/notices.ts';
import { type Back, putBack, removeRecords } from '../../../bench/records/bin.ts';
import { nameOf } from './record-words.ts';

const KEY = 'suds.removed.1';

/** Removes a batch and goes on to the next page, which tells so and offers to restore it. */
export function removeAndTell(id: string, name: string, goOn: () => void): Promise<void> {
  return removeToBin([id], (binned) => {
    try {
      if (binned) sessionStorage.setItem(KEY, JSON.stringify({ id, name }));
    } catch {
      // No notice then; the batch is in the bin all the same.
    }
    goOn();
  });
}

/** Tells what was removed on the page before. */
export function sayRemoved(): void {
  try {
    const { id, name } = JSON.parse(sessionStorage.getItem(KEY) ?? '') as Record<string, string>;
    sessionStorage.removeItem(KEY);
    if (id && name) tellRemoved([id], `“${name}” is in the bin.`);
  } catch {
    // Nothing was removed.
  }
}

/**
 * Removes batches to the bin; if it has no room, only if the reader agrees to remove them for good.
 * `then` is called with whether they are in the bin.
 */
export async function removeToBin(
  ids: readonly string[],
  then: (binned: boolean) => unknown,
  forGood = false,
): Promise<void> {
  const done = await removeRecords(ids, forGood);
  if (done.ok) await then(!forGood);
  else if (done.full && !forGood)
    notify(
      'removed',
      'Nothing was removed: the bin has no room, because this browser has none left.',
      [
        {
          label: `Remove ${ids.length === 1 ? 'it' : 'them'} for good`,
          run: () => removeToBin(ids, then, true),
        },
      ],
    );
  else notify('removed', `Nothing was removed. ${done.say}`);
}

/** Tells that batches are in the bin, and offers to restore them. */
export function tellRemoved(ids: readonly string[], words: string): void {
  notify('removed', words, [{ label: 'Put back', run: () => putBackAndTell(ids), undoes: true }]);
}

/** Restores batches from the bin, and tells which could not be restored. */
export async function putBackAndTell(ids: readonly string[]): Promise<void> {
  const done = await putBack(ids);
  const words = done.ok ? done.value.map(backWords).filter(Boolean).join(' ') : done.say;
  if (words) notify('removed', words);
}

function backWords({ record, is, photos }: Back): string {
  if (is === 'back') return '';
  if (!record) return 'It is no longer in the bin, and could not be put back.';
  const here = `“${nameOf(record)}” is in the list already, and stays as it is there.`;
  if (photos === 0) return here;
  return `${here} ${photos === 1 ? 'The photo it had lost is' : `The ${photos} photos it had lost are`} back.`;
}
