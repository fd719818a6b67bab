/** A button on a notice. */
export interface Action {
  readonly label: string;
  readonly run: () => void;
  /** It undoes what was just done; Ctrl+Z does the same. */
  readonly undoes?: true;
}

/** Removes a notice that no longer applies. */
export function withdraw(id: string): void {
  globalThis.document?.querySelector(`#notices [data-notice="${id}"]`)?.remove();
  makeRoom();
}

/** Whatever is scrolled to, by a link, a key or a step of the run, must stop below the notices. */
function makeRoom(): void {
  const place = globalThis.document?.getElementById('notices');
  if (place) document.documentElement.style.scrollPaddingTop = `${place.offsetHeight}px`;
}

/**
 * The notices are at the top of the page, far from where the reader may be, so Ctrl+Z reaches the
 * latest.
 */
function undo(event: KeyboardEvent): void {
  const { key, ctrlKey, metaKey, shiftKey, altKey } = event;
  if (key !== 'z' || !(ctrlKey || metaKey) || shiftKey || altKey) return;
  // In a text box, Ctrl+Z undoes the typing.
  if ((event.target as Element).closest('input, textarea, select')) return;
  const button = document.querySelector<HTMLElement>('#notices > :last-child > [data-undoes]');
  if (!button) return;
  event.preventDefault();
  button.click();
}

/**
 * Shows a notice at the top of the page and has it announced: something the reader should know that
 * belongs to no single field. It replaces an earlier one with the same id. Without a page (in
 * tests, at build time) it does nothing.
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
      // The button took the focus with it: return it to where the reader was, or to the text.
      if (!focused || document.activeElement !== document.body) return;
      // An element that was removed or disabled does not take the focus.
      for (const back of [from, document.getElementById('content')])
        if (document.activeElement === document.body)
          (back as HTMLElement | null)?.focus({ preventScroll: true });
    });
    box.append(button);
  }
  place.append(box);
  // If there are more notices than fit, show the latest from its beginning.
  place.scrollTop = box.offsetTop;
  makeRoom();
}
