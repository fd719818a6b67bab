import { findPages, groupsOf, type Index, type Parted, whole } from './search-pages.ts';
import { bestSection, type Found, isKeywords, wholly } from './search-sections.ts';

interface Opened extends Parted<Found> {
  options(options: {
    readonly baseUrl: string;
    readonly excerptLength: number;
    /** What marks where an excerpt is cut. */
    readonly excerptEllipsis: string;
  }): Promise<void>;
}

const MOST = 12;
/** Debounce in ms before a search. */
const REST = 120;
const COMPOSING = 229;
let index: Promise<Index<Found>> | undefined;
let wired = false;

/** Searches what is typed into the dialog from now on, and what was typed before. */
export function search(dialog: HTMLDialogElement, input: HTMLInputElement, base: string): void {
  if (wired) return;
  wired = true;
  wire(dialog, input, base);
  input.dispatchEvent(new Event('input'));
}

/** A browser never retries a failed module import, unless its address is different. */
let failures = 0;

async function fetchIndex(base: string): Promise<Index<Found>> {
  const again = failures > 0 ? `?ts=${failures}` : '';
  const loaded: Opened = await import(/* @vite-ignore */ `${base}pagefind/pagefind.js${again}`);
  await loaded.options({ baseUrl: base, excerptLength: 22, excerptEllipsis: '…' });
  return whole(loaded);
}

/** One shared promise, so that letters typed while the index loads are searched in order. */
function load(base: string): Promise<Index<Found>> {
  index ??= fetchIndex(base).catch((error: unknown) => {
    index = undefined;
    failures++;
    throw error;
  });
  return index;
}

/**
 * The pages for a question, and the question as it was read: a word that no page holds may be a
 * typing error.
 */
async function answer(index: Index<Found>, words: string, base: string) {
  const found = await findPages(index, words);
  const asked = found.unknown.length > 0 && (await readOver(words, found.unknown, base));
  return asked
    ? { ...found, asked, hits: (await findPages(index, asked)).hits }
    : { ...found, asked: words };
}

/** The question with its typing errors corrected, if the word list can be fetched. */
async function readOver(words: string, unknown: readonly string[], base: string) {
  try {
    const [{ respelt }, all] = await Promise.all([import('./search-spelling.ts'), allWords(base)]);
    return respelt(words, unknown, all);
  } catch {
    return undefined;
  }
}

let known: Promise<readonly string[]> | undefined;
/** Every word of the handbook, the most frequent first. */
function allWords(base: string): Promise<readonly string[]> {
  known ??= fetch(`${base}pagefind/words.json`)
    .then((response) => response.json())
    .catch((error: unknown) => {
      known = undefined;
      throw error;
    });
  return known;
}

function wire(dialog: HTMLDialogElement, input: HTMLInputElement, base: string): void {
  const list = dialog.querySelector<HTMLElement>('#search-found')!;
  const count = dialog.querySelector<HTMLElement>('.search-count')!;
  const options = () => [...list.querySelectorAll<HTMLAnchorElement>('[role="option"]')];
  let at = -1;

  const choose = (next: number) => {
    const all = options();
    if (all.length === 0) return;
    // Selecting a result while typing must leave the search field visible.
    const moved = at >= 0;
    at = (next + all.length) % all.length;
    for (const [i, option] of all.entries()) option.ariaSelected = String(i === at);
    input.setAttribute('aria-activedescendant', all[at]!.id);
    if (moved) all[at]!.scrollIntoView({ block: 'nearest' });
  };
  const clear = (words: string) => {
    list.replaceChildren();
    count.textContent = words;
    at = -1;
    input.ariaExpanded = 'false';
    input.removeAttribute('aria-activedescendant');
  };

  /** Says why there are no results, and where to go instead. */
  const fail = (why: string) => {
    clear(`${why} `);
    const chapters = document.createElement('a');
    chapters.href = `${base}chapters/`;
    chapters.textContent = 'All chapters';
    count.append(chapters);
  };

  input.addEventListener('input', async () => {
    const words = input.value.trim();
    if (!words) return clear('');
    if (!index) clear('Opening the search…');
    await new Promise((rested) => setTimeout(rested, REST));
    if (input.value.trim() !== words) return;
    try {
      const { hits, unknown, asked } = await answer(await load(base), words, base);
      const found = await Promise.all(hits.slice(0, MOST).map((hit) => hit.data()));
      if (input.value.trim() !== words) return;
      if (found.length === 0)
        return fail(
          `Nothing found for “${words}”. Try fewer or plainer words: foam, strip, lime, heavy.`,
        );
      const read = asked === words ? '' : ` for “${asked}”`;
      const without = unknown.length > 0 ? `; on no page: ${unknown.join(', ')}` : '';
      const likeliest = hits.length > MOST ? `The ${MOST} likeliest of ` : '';
      const pages = hits.length === 1 ? 'page' : 'pages';
      clear(`${likeliest}${hits.length} ${pages} found${read}${without}`);
      list.append(...grouped(found, asked));
      list.dataset.words = words;
      input.ariaExpanded = 'true';
      choose(0);
    } catch {
      fail(
        index
          ? 'This browser could not search.'
          : 'The search could not be loaded: no connection, and this browser has not kept the handbook yet. Once connected, type again.',
      );
    }
  });
  input.addEventListener('keydown', (event) => {
    const moves: Record<string, () => void> = {
      ArrowDown: () => choose(at + 1),
      ArrowUp: () => choose(at - 1),
      Enter: () => options()[at]?.click(),
      // The search field by itself would only clear its text.
      Escape: () => {
        input.blur();
        dialog.close();
      },
    };
    const move = moves[event.key];
    // A key that confirms an IME composition must not choose a page. Safari ends the composition
    // before the key event, and gives it this code.
    if (!move || event.isComposing || event.keyCode === COMPOSING) return;
    event.preventDefault();
    move();
  });
  dialog.addEventListener('click', (event) => {
    // A link to the current page only moves within it.
    if (event.target === dialog || (event.target as Element).closest('a')) dialog.close();
  });
}

/** The pages found, each group under its heading. */
function grouped(found: readonly Found[], asked: string): HTMLElement[] {
  let n = 0;
  return groupsOf(found, chapterOf).map(([name, pages]) => {
    const group = document.createElement('div');
    group.role = 'group';
    group.ariaLabel = name;
    const head = document.createElement('p');
    head.className = 'search-group';
    head.textContent = name;
    head.ariaHidden = 'true';
    group.append(head, ...pages.map((page) => option(page, asked, `found-${n++}`, name)));
    return group;
  });
}

const chapterOf = ({ meta }: Found): string => meta.chapter ?? 'About this handbook';

function option(page: Found, asked: string, id: string, head: string): HTMLElement {
  const best = bestSection(page, asked);
  const link = document.createElement('a');
  link.role = 'option';
  link.id = id;
  link.tabIndex = -1;
  link.href = best?.url ?? page.url;
  const title = document.createElement('strong');
  title.textContent = page.meta.title ?? page.url;
  const words = document.createElement('span');
  // The index marks the words it found with <mark>; the rest of an excerpt is escaped text.
  const excerpt = best?.excerpt ?? page.excerpt;
  if (!excerpt || isKeywords(excerpt, page)) words.textContent = page.meta.summary ?? '';
  else words.innerHTML = wholly(excerpt);
  const places = [chapterOf(page), best?.title].filter(
    (name) => name && name !== head && name !== page.meta.title,
  );
  if (places.length > 0) {
    const where = document.createElement('em');
    where.textContent = places.join(': ');
    link.append(title, where, words);
  } else link.append(title, words);
  return link;
}
