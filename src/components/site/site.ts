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
    // Not stored; it still applies on this page.
  }
}

/**
 * Puts the reader's own units first in amounts in the text: `600 kg/m³ (37.5 lb/ft³)`, or the
 * reverse.
 */
function turnAmounts(units: string): void {
  for (const amount of document.querySelectorAll<HTMLElement>('.amount')) {
    if ((amount.dataset.first ?? 'metric') === units) continue;
    amount.dataset.first = units;
    amount.textContent = amount.textContent.replace(/^(.*) \((.*)\)$/, '$2 ($1)');
  }
}

/** A page restored from the back/forward cache may have missed changes made elsewhere. */
function onReturn(look: () => void): void {
  addEventListener('pageshow', ({ persisted }) => persisted && look());
}

/** Metric or US customary units, for every worksheet on the site. */
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
    // The worksheets listen for changes in other tabs; this tells them of one in this tab.
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

/** Light or dark: the system's setting until the reader changes it. */
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

/**
 * Ctrl+K opens the search, even from a field. A single letter would be triggered by speech input.
 */
function searchButton(open: HTMLButtonElement): void {
  const dialog = document.querySelector<HTMLDialogElement>('#search')!;
  const input = dialog.querySelector('input')!;
  const show = async () => {
    // Open at once: what is typed before the search script arrives is searched when it does.
    dialog.showModal();
    input.select();
    try {
      (await arrived(import('./search.ts'))).search(dialog, input, base);
    } catch {
      // The notice is on the page, which the dialog would cover.
      dialog.close();
    }
  };
  open.addEventListener('click', show);
  addEventListener('keydown', (event) => {
    const { ctrlKey, metaKey, altKey, shiftKey } = event;
    // With Caps Lock the key is K.
    if (!/^k$/i.test(event.key) || !(ctrlKey || metaKey) || altKey || shiftKey) return;
    if (document.querySelector('dialog[open]')) return;
    event.preventDefault();
    show();
  });
}

/** Stores the whole handbook for offline use, and says when a newer version is ready. */
async function offline(): Promise<void> {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
  let hadOne = Boolean(navigator.serviceWorker.controller);
  const registration = await navigator.serviceWorker.register(`${base}sw.js`, { scope: base });
  const offer = (waiting: ServiceWorker | null) => {
    if (!waiting || !navigator.serviceWorker.controller) return;
    // This file belongs to the present version, and a page that stays open may need it.
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
    // The first worker takes control of a page that is already current.
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

// For browsers that cannot style the inside of a <details>: opens what print.css opens in others.
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
  // No worker (private window, plain HTTP): the site works, with a network.
});

// boot.js says so if this script is late, or if a script has failed. If the page has parts to wake,
// the script that wakes them comes after this one and reports that everything is there.
if (!document.querySelector('[data-island]')) {
  document.body.dataset.came = '';
  document.querySelector('#notices > p')?.remove();
}
