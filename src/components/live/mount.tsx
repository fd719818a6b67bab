import { type ComponentType, hydrate } from 'preact';
import { $behind, $unlearned, noteLate } from '../../bench/store.ts';
import { watchPart } from '../../islands/as-left.ts';
import { WorksheetView } from '../../islands/WorksheetView.tsx';
import type { AnyWorksheet } from '../../islands/worksheet.ts';

noteLate();
/**
 * Whether the script that recomputes other pages' results has been requested; that happens at the
 * first change.
 */
let following = false;
$behind.subscribe((keys) => {
  if (following || keys.length === 0) return;
  following = true;
  import('./catch-up.ts').then(({ follow }) => follow());
});

// Not on the page that changes a batch: this reads all batches, and a key press would wait. The
// list learns by itself.
function learn(): void {
  if (!document.hidden && $unlearned.get())
    import('../../worksheets/live/records/learn-anew.ts').then(({ learnAnew }) => learnAnew());
}
setTimeout(learn, 500);
// For a tab that was in the background while another changed a batch.
document.addEventListener('visibilitychange', learn);

/** Hydrates the markup of a live part. */
export async function mount(
  place: HTMLElement,
  kind: 'worksheet' | 'live',
  part: AnyWorksheet & ComponentType,
): Promise<void> {
  const Part = part as ComponentType<{ given?: unknown }>;
  const { given } = place.dataset;
  const again = isTyped(place) && (await import('./typed-early.ts')).typedEarly(place);
  hydrate(
    kind === 'live' ? (
      <Part given={given && JSON.parse(given)} />
    ) : (
      <WorksheetView sheet={part} formulas={formulas(place)} />
    ),
    place,
  );
  watchPart(place);
  // A saved page keeps the default values of its fields, not their current ones: it would show the
  // example beside the reader’s results. So whenever focus leaves a field (opening the browser's
  // menu does that too), the current values become the defaults.
  const begin = () => {
    for (const one of fields(place)) {
      one.defaultValue = one.value;
      one.defaultChecked = one.checked;
      one.defaultSelected = one.selected;
    }
  };
  addEventListener('blur', begin, true);
  if (again) await again();
}

/** Whether anything was typed or chosen before the part woke. */
const isTyped = (place: HTMLElement) =>
  fields(place).some(
    (one) =>
      'early' in one.dataset ||
      (one.type !== 'checkbox' && one.value !== (one.defaultValue ?? one.value)) ||
      one.checked !== one.defaultChecked ||
      one.selected !== one.defaultSelected ||
      one.files?.length,
  );
const fields = (place: HTMLElement) => [...place.querySelectorAll<Told>('input, textarea, option')];
type Told = HTMLInputElement & HTMLOptionElement;

/** The formulas were typeset at build time; reuse the markup in the page. */
const formulas = (place: HTMLElement) =>
  Array.from(place.querySelectorAll('[data-formula]'), (element) => element.innerHTML);
