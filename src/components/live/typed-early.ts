/** Preact draws what effects have changed in a microtask, and the changes from that in another. */
async function drawnAgain(): Promise<void> {
  for (let turn = 0; turn < 3; turn++) await Promise.resolve();
}

/** Inputs that hold text. A chosen file stays in its input and only needs its event again. */
const TYPED = /^(?!radio|checkbox|file)/;

/**
 * Collects what was typed or chosen before the part woke, to be entered again: hydration would
 * reset it.
 */
export function typedEarly(place: HTMLElement): () => Promise<void> {
  const inputs = [...place.querySelectorAll<HTMLInputElement>('input, textarea')];
  const lists = [...place.querySelectorAll<HTMLSelectElement>('select')];
  const typed = inputs
    .filter(
      ({ type, value, defaultValue, dataset }) =>
        TYPED.test(type) && (value !== defaultValue || 'early' in dataset),
    )
    .map((input) => ({ input, value: input.value, caret: input.selectionStart }));
  const chosen = inputs.filter(
    ({ checked, defaultChecked, files }) => (checked && !defaultChecked) || files?.length,
  );
  const picked = lists
    .filter((list) => [...list.options].some((o) => o.selected !== o.defaultSelected))
    // By index: translation may have changed the options' text, which for some is their value.
    .map((list) => ({ list, at: list.selectedIndex }));
  const beside = typed
    .map(({ input }) => input.closest('.field')?.querySelector<HTMLSelectElement>('select.unit'))
    .flatMap((list) => (list ? [{ list, at: list.selectedIndex }] : []));
  const tell = (element: HTMLElement, event: string) =>
    element.dispatchEvent(new Event(event, { bubbles: true }));
  const types = [
    // Units first, because the typed number is in one of them.
    ...picked.map(({ list, at }) => () => {
      list.selectedIndex = at;
      tell(list, 'change');
    }),
    // Restore the unit of the page as it was read, if the reader’s own is another.
    ...beside.map(({ list, at }) => () => {
      if (list.selectedIndex === at) return;
      list.selectedIndex = at;
      tell(list, 'change');
    }),
    ...chosen.map((input) => () => {
      if (input.type !== 'file') input.checked = true;
      tell(input, 'change');
    }),
    ...typed.map(({ input, value, caret }) => () => {
      input.value = value;
      // An input without text, such as a date, has no caret.
      if (caret !== null && document.activeElement === input) input.setSelectionRange(caret, caret);
      tell(input, 'input');
      delete input.dataset.early;
    }),
  ];
  // Wait until the part has drawn the bench, and after each step until it has drawn again, since
  // the next adds to that. All in one task, so that no key press comes in between.
  return async () => {
    for (const type of types) {
      await drawnAgain();
      type();
    }
  };
}
