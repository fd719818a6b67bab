import { arrived } from '../../bench/arrived.ts';
import { localStore, UNSTORED } from '../../bench/local-store.ts';

/** Whether the reader has anything on the bench, without fetching the bench. */
function something(): boolean {
  // What the browser did not store is still on the page.
  if (document.body.hasAttribute(UNSTORED)) return true;
  return Object.keys(localStore() ?? {}).some((key) => key.startsWith('suds.bench.'));
}

/**
 * Offers to save the bench as a batch wherever it is not empty. The script that does it, and asks
 * for a name, is fetched only then.
 */
export function saveButton(open: HTMLButtonElement): void {
  const show = () => {
    open.hidden = !something();
  };
  show();
  const soon = () => setTimeout(show, 50);
  for (const touch of ['input', 'change', 'click']) addEventListener(touch, soon);
  addEventListener('storage', show);
  open.addEventListener('click', async () =>
    (await arrived(import('./save-batch.ts'))).openSaveBatch(),
  );
}
