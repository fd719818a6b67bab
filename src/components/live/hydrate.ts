/**
 * Wakes the live parts of a page: worksheets and the other islands. Astro can only hydrate a
 * component it can name when the page is compiled; a chapter names a worksheet by its id, so this
 * looks the id up in the folder and takes over the markup that stands in the page.
 */
const worksheets = import.meta.glob('../../worksheets/*/*.tsx');
const others = import.meta.glob('../../worksheets/live/*.tsx');

const byId = (files: Record<string, () => Promise<unknown>>) =>
  new Map(Object.entries(files).map(([file, load]) => [file.replace(/^.*\/|\.tsx$/g, ''), load]));
const folders = { worksheet: byId(worksheets), live: byId(others) } as const;

async function wake(place: HTMLElement): Promise<void> {
  const [kind, id] = (place.dataset.island ?? '').split(':') as [keyof typeof folders, string];
  const load = folders[kind]?.get(id);
  if (!load || place.dataset.awake) return;
  place.dataset.awake = 'coming';
  const [{ mount }, module] = await Promise.all([import('./mount.tsx'), load()]);
  await freeMoment();
  await mount(place, kind, (module as { default: never }).default);
  place.dataset.awake = 'yes';
}

/** Parts that wake together do it one a task, so that the page answers the reader in between. */
let turn: Promise<unknown> = Promise.resolve();
function freeMoment(): Promise<unknown> {
  turn = turn.then(() => new Promise((resolve) => setTimeout(resolve)));
  return turn;
}

const places = document.querySelectorAll<HTMLElement>('[data-island]');
const watcher = new IntersectionObserver(
  (seen) => {
    for (const { isIntersecting, target } of seen)
      if (isIntersecting) {
        watcher.unobserve(target);
        wake(target as HTMLElement);
      }
  },
  { rootMargin: '300px' },
);
for (const place of places) {
  // Parts that feed each other wake together, seen or not.
  if (place.dataset.eager === undefined) watcher.observe(place);
  else wake(place);
}
// A page that is printed must be complete, however far it was read.
window.addEventListener('beforeprint', () => {
  for (const place of places) wake(place);
});
