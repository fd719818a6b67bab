import { arrived } from '../../bench/arrived.ts';
import { localStore, UNSTORED } from '../../bench/local-store.ts';

/** Whether anything of the reader's own lies on the bench, without fetching the bench. */
function something(): boolean {
  // What the browser did not store lies in the page all the same.
  if (document.body.hasAttribute(UNSTORED)) return true;
  return Object.keys(localStore() ?? {}).some((key) => key.startsWith('suds.bench.'));
}

/** Saves the bench as a batch, wherever anything lies on it. What does, and asks for its name, is fetched only then. */
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
