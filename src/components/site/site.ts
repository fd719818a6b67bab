import { arrived } from '../../bench/arrived.ts';
import { isUnstored, localStore, UNSTORED } from '../../bench/local-store.ts';
import { notify } from '../../bench/notices.ts';
import { saveButton } from './save-button.ts';

const base = document.body.dataset.base ?? '/';
const button = (name: string) => document.querySelector<HTMLButtonElement>(`[data-${name}]`);
const store = localStore();

function remember(key: string, value: string): void {
  try {
    store?.setItem(key, value);
  } catch {
    // Not remembered; it still holds on this page.
  }
}

/** Amounts in the text say first what the reader reads in: `600 kg/m³ (37.5 lb/ft³)`, or turned round. */
function turnAmounts(units: string): void {
  for (const amount of document.querySelectorAll<HTMLElement>('.amount')) {
    if ((amount.dataset.first ?? 'metric') === units) continue;
    amount.dataset.first = units;
    amount.textContent = amount.textContent.replace(/^(.*) \((.*)\)$/, '$2 ($1)');
  }
}

/** A page that Back brings as it was left may be of before what another was told. */
function onReturn(look: () => void): void {
  addEventListener('pageshow', ({ persisted }) => persisted && look());
}

/** Metric or US customary, for every worksheet on the site. */
function unitSwitch(turn: HTMLButtonElement): void {
  const read = (stored?: string | null) => (stored === 'us' ? 'us' : 'metric');
  let units = read(store?.getItem('suds.units'));
  const show = () => {
    turn.textContent = units === 'us' ? 'Units: US' : 'Units: metric';
    turnAmounts(units);
  };
  turn.addEventListener('click', () => {
    units = units === 'us' ? 'metric' : 'us';
    remember('suds.units', units);
    // The worksheets listen for changes made in other tabs; this tells them of one made here.
    dispatchEvent(new StorageEvent('storage', { key: 'suds.units', newValue: units }));
  });
  addEventListener('storage', ({ key, newValue }) => {
    if (key !== 'suds.units') return;
    units = read(newValue);
    show();
  });
  onReturn(() => {
    units = read(store?.getItem('suds.units'));
    show();
  });
  show();
}

/** Light or dark: the system's choice until the reader turns it. */
function themeSwitch(turn: HTMLButtonElement): void {
  const root = document.documentElement;
  const dark = () =>
    root.dataset.theme
      ? root.dataset.theme === 'dark'
      : matchMedia('(prefers-color-scheme: dark)').matches;
  const show = () => {
    turn.textContent = dark() ? 'Light' : 'Dark';
    turn.ariaLabel = dark() ? 'Turn to light colours' : 'Turn to dark colours';
  };
  turn.addEventListener('click', () => {
    root.dataset.theme = dark() ? 'light' : 'dark';
    remember('suds.theme', root.dataset.theme);
    show();
  });
  onReturn(() => {
    const stored = store?.getItem('suds.theme');
    if (stored) root.dataset.theme = stored;
    show();
  });
  show();
}

/** Ctrl+K opens the search, from a field too: a letter alone would be pressed by speech. */
function searchButton(open: HTMLButtonElement): void {
  const dialog = document.querySelector<HTMLDialogElement>('#search')!;
  const input = dialog.querySelector('input')!;
  const show = async () => {
    // At once: what is typed before that which searches has arrived is searched by it.
    dialog.showModal();
    input.select();
    try {
      (await arrived(import('./search.ts'))).search(dialog, input, base);
    } catch {
      // It is said on the page, which the dialog would cover.
      dialog.close();
    }
  };
  open.addEventListener('click', show);
  addEventListener('keydown', (event) => {
    const { ctrlKey, metaKey, altKey, shiftKey } = event;
    // With Caps Lock it is a K.
    if (!/^k$/i.test(event.key) || !(ctrlKey || metaKey) || altKey || shiftKey) return;
    if (document.querySelector('dialog[open]')) return;
    event.preventDefault();
    show();
  });
}

/** Keeps the whole handbook for use without a network, and says when a newer one is ready. */
async function offline(): Promise<void> {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
  let hadOne = Boolean(navigator.serviceWorker.controller);
  const registration = await navigator.serviceWorker.register(`${base}sw.js`, { scope: base });
  const offer = (waiting: ServiceWorker | null) => {
    if (!waiting || !navigator.serviceWorker.controller) return;
    // Its file goes with this version, and a page that stays may need it.
    import('./save-batch.ts').catch(() => {});
    notify('update', 'A newer version of this handbook is ready. What you entered stays.', [
      { label: 'Use it now', run: () => waiting.postMessage({ type: 'SKIP_WAITING' }) },
    ]);
  };
  offer(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed') offer(coming);
    });
  });
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    // The first worker takes over a page that is already the newest.
    if (!hadOne) hadOne = true;
    else if (!isUnstored()) location.reload();
    else
      notify(
        'update',
        'A newer version of this handbook is in use. This page still has the older one, for your browser did not store what you entered here: loading it again would lose that. Save it first, then reload.',
        document.body.hasAttribute(UNSTORED)
          ? [{ label: 'Save batch', run: () => save?.click() }]
          : [],
      );
  });
}

// What print.css opens where a browser lets the inside of a fold be styled.
if (!CSS.supports('selector(::details-content)'))
  addEventListener('beforeprint', () => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>(
      '.check-table, .folded, .day[data-filled]',
    ))
      fold.open = true;
  });

const units = button('units');
const theme = button('theme-turn');
const search = button('search-open');
const save = button('save-batch');
if (units) unitSwitch(units);
if (theme) themeSwitch(theme);
if (search) searchButton(search);
if (save) saveButton(save);
offline().catch(() => {
  // No worker (private window, plain http): the site works, with a network.
});

// Boot.js says so where this has not come after a while, or a script has failed. Where there are parts to wake, what
// wakes them, which comes behind this, says that all is there.
if (!document.querySelector('[data-island]')) {
  document.body.dataset.came = '';
  document.querySelector('#notices > p')?.remove();
}
