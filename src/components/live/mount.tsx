import { type ComponentType, hydrate } from 'preact';
import { $behind, $unlearned } from '../../bench/store.ts';
import { WorksheetView } from '../../islands/WorksheetView.tsx';
import type { AnyWorksheet } from '../../islands/worksheet.ts';

/** What sees to it that what other pages have kept follows is fetched once something has changed. */
let following = false;
$behind.subscribe((keys) => {
  if (following || keys.length === 0) return;
  following = true;
  import('./catch-up.ts').then(({ follow }) => follow());
});

// Not on the page that changes a batch: all are read for it, and a key would wait. The list learns by itself.
function learn(): void {
  if (!document.hidden && $unlearned.get())
    import('../../worksheets/shared/learn-anew.ts').then(({ learnAnew }) => learnAnew());
}
setTimeout(learn, 500);
// A tab that lay behind the one in which a batch was changed.
document.addEventListener('visibilitychange', learn);

/** Takes over the markup of a live part. */
export async function mount(
  place: HTMLElement,
  kind: 'worksheet' | 'live',
  part: AnyWorksheet & ComponentType,
): Promise<void> {
  const Part = part as ComponentType<{ given?: unknown }>;
  const { given } = place.dataset;
  const early = typedEarly(place);
  hydrate(
    kind === 'live' ? (
      <Part given={given && JSON.parse(given)} />
    ) : (
      <WorksheetView sheet={part} formulas={formulas(place)} />
    ),
    place,
  );
  // Once the part has drawn what lies on the bench, and after each the next, which adds to it; all in
  // the same task, so that no key comes in between.
  for (const again of early) {
    await drawnAgain();
    again();
  }
}

/** Preact draws what effects have changed in a microtask, and what that changes in another. */
async function drawnAgain(): Promise<void> {
  for (let turn = 0; turn < 3; turn++) await Promise.resolve();
}

/** What holds text; a chosen file stays where it is, and is only told again. */
const TYPED = /^(?!radio|checkbox|file)/;

/** What was typed or chosen before the part woke; taking over the markup would put it back. */
function typedEarly(place: HTMLElement): readonly (() => void)[] {
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
    .map((list) => ({ list, value: list.value }));
  const beside = typed
    .map(({ input }) => input.closest('.field')?.querySelector<HTMLSelectElement>('select.unit'))
    .flatMap((list) => (list ? [{ list, value: list.value }] : []));
  const tell = (element: HTMLElement, event: string) =>
    element.dispatchEvent(new Event(event, { bubbles: true }));
  return [
    // A unit first: the number typed is one of those.
    ...picked.map(({ list, value }) => () => {
      list.value = value;
      tell(list, 'change');
    }),
    // That of the page as it was read, where the reader’s own is another.
    ...beside.map(({ list, value }) => () => {
      if (list.value === value) return;
      list.value = value;
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
}

/** The formulas were typeset at build time; what stands in the page is what is kept. */
const formulas = (place: HTMLElement) =>
  Array.from(place.querySelectorAll('[data-formula]'), (element) => element.innerHTML);
