/** Something the reader should know that belongs to no single field. */
export interface Action {
  readonly label: string;
  readonly run: () => void;
}

/**
 * Shows a notice at the head of the page and has it announced. A notice with the same id replaces
 * the earlier one. Without a page (in tests, at build) it does nothing.
 */
export function notify(id: string, text: string, actions: readonly Action[] = []): void {
  const place = globalThis.document?.getElementById('notices');
  if (!place) return;
  place.querySelector(`[data-notice="${id}"]`)?.remove();
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
      box.remove();
      run();
    });
    box.append(button);
  }
  place.append(box);
}
