/** Preact draws what effects have changed in a microtask, and what that changes in another. */
async function drawnAgain(): Promise<void> {
  for (let turn = 0; turn < 3; turn++) await Promise.resolve();
}

/** What holds text; a chosen file stays where it is, and is only told again. */
const TYPED = /^(?!radio|checkbox|file)/;

/** What was typed or chosen before the part woke, to be typed again: taking over the markup would put it back. */
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
    // By its place: a browser that translates may have changed its words, and those of some are their value.
    .map((list) => ({ list, at: list.selectedIndex }));
  const beside = typed
    .map(({ input }) => input.closest('.field')?.querySelector<HTMLSelectElement>('select.unit'))
    .flatMap((list) => (list ? [{ list, at: list.selectedIndex }] : []));
  const tell = (element: HTMLElement, event: string) =>
    element.dispatchEvent(new Event(event, { bubbles: true }));
  const types = [
    // A unit first: the number typed is one of those.
    ...picked.map(({ list, at }) => () => {
      list.selectedIndex = at;
      tell(list, 'change');
    }),
    // That of the page as it was read, where the reader’s own is another.
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
      // What is no text, a date, has no caret.
      if (caret !== null && document.activeElement === input) input.setSelectionRange(caret, caret);
      tell(input, 'input');
      delete input.dataset.early;
    }),
  ];
  // Once the part has drawn what lies on the bench, and after each the next, which adds to it; all in
  // the same task, so that no key comes in between.
  return async () => {
    for (const type of types) {
      await drawnAgain();
      type();
    }
  };
}
