/** Something the reader should know that belongs to no single field. */
export interface Action {
  readonly label: string;
  readonly run: () => void;
}

/** Takes a notice away that has lost its ground. */
export const withdraw = (id: string): void =>
  globalThis.document?.querySelector(`#notices [data-notice="${id}"]`)?.remove();

/**
 * Shows a notice at the head of the page and has it announced. A notice with the same id replaces
 * the earlier one. Without a page (in tests, at build) it does nothing.
 */
export function notify(id: string, text: string, actions: readonly Action[] = []): void {
  const place = globalThis.document?.getElementById('notices');
  if (!place) return;
  withdraw(id);
  const from = document.activeElement;
  const box = document.createElement('div');
  box.className = 'notice';
  box.dataset.notice = id;
  const words = document.createElement('p');
  words.textContent = text;
  box.append(words);
  for (const { label, run } of [...actions, { label: 'Close', run: () => {} }]) {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = label;
    button.addEventListener('click', () => {
      const focused = box.contains(document.activeElement);
      box.remove();
      run();
      // The button takes the focus with it: back to where the reader was, or to the text.
      if (!focused || document.activeElement !== document.body) return;
      const back =
        from?.isConnected && from !== document.body ? from : document.getElementById('content');
      (back as HTMLElement | null)?.focus({ preventScroll: true });
    });
    box.append(button);
  }
  place.append(box);
}
