import { tellLost } from '../../bench/arrived.ts';
import { localStore } from '../../bench/local-store.ts';
import { withdraw } from '../../bench/notices.ts';

/**
 * Wakes the live parts of a page: worksheets and the other islands. Astro can hydrate only a
 * component it can name when the page is compiled, but a chapter names a worksheet by its id. The
 * page gives the folder and the id; this script looks them up and hydrates the markup in the page.
 * Each folder has a list of its own, because no page needs them all.
 */
const folders = import.meta.glob<Listed>('./listed/*.ts', { import: 'default' });
type Listed = Record<string, () => Promise<{ default: never }>>;

/** A button pressed before its part is awake is pressed again once it is. */
const pressed = new WeakMap<HTMLElement, HTMLElement>();
document.addEventListener('click', ({ target }) => {
  const button = (target as Element).closest('button');
  const place = button?.closest<HTMLElement>('[data-island]:not([data-awake="yes"])');
  if (button && place) pressed.set(place, button);
});

/** Text typed before its part is awake is the reader’s, even if it equals the example. */
document.addEventListener('input', ({ target }) => {
  const field = target as HTMLElement;
  if (field.closest('[data-island]:not([data-awake="yes"])')) field.dataset.early = '';
});

/**
 * The element that got focus and has not been clicked since. The first click selects an example, to
 * be typed over; a second places the caret.
 */
let entered: EventTarget | null;
document.addEventListener('focusin', ({ target }) => {
  entered = target;
});
document.addEventListener('click', ({ target }) => {
  if (!(target instanceof HTMLInputElement)) return;
  if (target === entered && target.closest('[data-origin="example"]')) target.select();
  entered = null;
});

/**
 * Maximum wait for the first paint, ms: a page in a background tab, or in a browser that does not
 * report it, must not wait for ever.
 */
const LONGEST_WAIT = 3000;
/** Resolves at the first paint, which comes before the scripts that wake the parts. */
const drawn = new Promise<void>((resolve) => {
  setTimeout(resolve, LONGEST_WAIT);
  new PerformanceObserver((list) => {
    if (list.getEntriesByName('first-contentful-paint').length > 0) resolve();
  }).observe({ type: 'paint', buffered: true });
});

async function wake(place: HTMLElement): Promise<void> {
  const { island = '', awake } = place.dataset;
  const [folder] = island.split('/');
  const list = folders[`./listed/${folder}.ts`];
  if (!list || awake) return;
  place.dataset.awake = 'coming';
  const late = setTimeout(() => asleep(place), LATE);
  try {
    await drawn;
    await freeMoment();
    const load = (await list())[`../../../worksheets/${island}.tsx`];
    if (!load) throw new Error(`${island} is not listed`);
    // By name: importing the whole module would add the code that makes a namespace object of it,
    // on every page.
    const mounting = import('./mount.tsx').then(({ mount }) => mount);
    const [mount, part] = await Promise.all([mounting, load()]);
    await freeMoment();
    await mount(place, folder === 'live' ? 'live' : 'worksheet', part.default);
    place.dataset.awake = 'yes';
    if (missing.delete(place) && missing.size === 0) withdraw('asleep');
    const early = pressed.get(place);
    if (early?.isConnected) early.click();
  } catch (error) {
    asleep(place);
    throw error;
  } finally {
    clearTimeout(late);
  }
}

/**
 * How long, in ms, a part may take to load before a notice says so; boot.js waits as long for this
 * script. A choice.
 */
const LATE = 15_000;
const missing = new Set<HTMLElement>();
/**
 * Session storage key for what was typed into parts that did not wake, kept across a reload of this
 * page.
 */
const EARLY = `suds.early.${location.pathname}`;
/**
 * A number's unit select has no id. It is stored by index, because translation may change its text.
 */
const unitBeside = (field: HTMLElement) =>
  field.closest('.field')?.querySelector<HTMLSelectElement>('select.unit');

function asleep(place: HTMLElement): void {
  missing.add(place);
  tellLost('asleep', 'it shows its example and does not compute', () => {
    const typed = [
      ...document.querySelectorAll<HTMLInputElement>(
        '[data-island]:not([data-awake="yes"]) [id]:not([type="file"])',
      ),
    ]
      .filter(
        ({ dataset, value, defaultValue = value, checked, defaultChecked }) =>
          'early' in dataset || value !== defaultValue || checked !== defaultChecked,
      )
      .map((field) => {
        const { id, value, checked } = field;
        return { id, value, checked, unit: unitBeside(field)?.selectedIndex };
      });
    try {
      sessionStorage.setItem(EARLY, JSON.stringify(typed));
    } catch {
      // It has to be typed again.
    }
    location.reload();
  });
}

/** Restores it, for the part to pick up as it wakes. */
function typeAgain(): void {
  try {
    const typed = JSON.parse(sessionStorage.getItem(EARLY) ?? '[]') as {
      id: string;
      unit: number;
    }[];
    sessionStorage.removeItem(EARLY);
    for (const { id, unit, ...entered } of typed) {
      const field = document.getElementById(id);
      if (!field) continue;
      const units = unitBeside(field);
      if (units) units.selectedIndex = unit;
      Object.assign(field, entered).dataset.early = '';
      wake(field.closest<HTMLElement>('[data-island]')!);
    }
  } catch {
    // Without session storage there is nothing to restore.
  }
}

/** Parts wake one per task, so that the page answers the reader in between. */
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
  if (place.dataset.wakes === 'eager') wake(place);
  else watcher.observe(place);
}
// Parts that feed each other wake together, visible or not, before what is typed in one is needed
// in the next.
const wakeTogether = () => {
  for (const place of places) if (place.dataset.wakes) wake(place);
};
for (const touch of ['pointerdown', 'keydown', 'focusin', 'click'])
  addEventListener(touch, wakeTogether, { once: true });
const wakeAll = () => {
  for (const place of places) wake(place);
};
// A printed page must show the reader's numbers, however far they scrolled, and a browser does not
// wait for scripts when it prints. So if anything is stored, or a link carries a batch, all parts
// wake while the browser is idle.
const idle = window.requestIdleCallback ?? setTimeout;
// The theme does not affect any number.
const isOurs = (key: string | null) => key?.startsWith('suds.') && key !== 'suds.theme';
if (Object.keys(localStore() ?? {}).some(isOurs) || location.hash.startsWith('#batch='))
  idle(wakeAll);
addEventListener('storage', ({ key }) => isOurs(key) && idle(wakeAll));
addEventListener('beforeprint', wakeAll);
typeAgain();

// Withdraw boot.js's notice about a late script. It will not return: site.ts came with this script.
document.body.dataset.came = '';
document.querySelector('#notices > p')?.remove();
