/** A button of a notice. */
export interface Action {
  readonly label: string;
  readonly run: () => void;
  /** It takes back what was just done: Ctrl+Z does the same. */
  readonly undoes?: true;
}

/** Takes a notice away that has lost its ground. */
export function withdraw(id: string): void {
  globalThis.document?.querySelector(`#notices [data-notice="${id}"]`)?.remove();
  makeRoom();
}

/** What is scrolled to, by a link, a key or a step of the run, comes to stand beneath the notices. */
function makeRoom(): void {
  const place = globalThis.document?.getElementById('notices');
  if (place) document.documentElement.style.scrollPaddingTop = `${place.offsetHeight}px`;
}

/** The notices stand at the head of the page, far from where the reader may be: the key that undoes reaches the latest. */
function undo(event: KeyboardEvent): void {
  const { key, ctrlKey, metaKey, shiftKey, altKey } = event;
  if (key !== 'z' || !(ctrlKey || metaKey) || shiftKey || altKey) return;
  // A box undoes what was typed into it.
  if ((event.target as Element).closest('input, textarea, select')) return;
  const button = document.querySelector<HTMLElement>('#notices > :last-child > [data-undoes]');
  if (!button) return;
  event.preventDefault();
  button.click();
}

/**
 * Shows a notice, what the reader should know that belongs to no single field, at the head of the page and has it
 * announced. One with the same id replaces the earlier one. Without a page (in tests, at build) it does nothing.
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
  const close: Action = { label: 'Close', run: () => {} };
  for (const { label, run, undoes } of [...actions, close]) {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = label;
    if (undoes) {
      button.dataset.undoes = '';
      button.ariaKeyShortcuts = 'Control+Z';
      document.addEventListener('keydown', undo);
    }
    button.addEventListener('click', () => {
      const focused = box.contains(document.activeElement);
      box.remove();
      makeRoom();
      run();
      // The button takes the focus with it: back to where the reader was, or to the text.
      if (!focused || document.activeElement !== document.body) return;
      // One that was taken away, or can be pressed no more, takes no focus.
      for (const back of [from, document.getElementById('content')])
        if (document.activeElement === document.body)
          (back as HTMLElement | null)?.focus({ preventScroll: true });
    });
    box.append(button);
  }
  place.append(box);
  // Of more than there is room for, the latest is seen, from its beginning.
  place.scrollTop = box.offsetTop;
  makeRoom();
}
