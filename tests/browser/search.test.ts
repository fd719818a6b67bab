import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { findPages, type Index, whole } from '../../src/components/site/search-pages.ts';
import { bestSection, type Found } from '../../src/components/site/search-sections.ts';
import { wordsOf } from '../../src/components/site/search-words.ts';
import { type Opened, openPage, site } from './browser.ts';
import { first, type Question, questions } from './search-questions.ts';
import { turns } from './turns.ts';

let opened: Opened;
let page: Page;

beforeAll(async () => {
  opened = await openPage('');
  page = opened.page;
});
afterAll(async () => {
  expect(opened.complaints).toEqual([]);
  await opened.close();
});

/** The pages found for some words, best first, as paths below the base. */
async function found(words: string): Promise<string[]> {
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+k');
  // What was found before for the same words is no answer to these.
  const list = page.locator('#search-found');
  await list.evaluate((it) => it.removeAttribute('data-words'));
  await page.locator('#search-words').fill(words);
  await expect.poll(() => list.getAttribute('data-words'), { timeout: 10_000 }).toBe(words);
  return page
    .locator('#search-found a')
    .evaluateAll(
      (links, base) =>
        links.map((link) => new URL((link as HTMLAnchorElement).href).pathname.slice(base.length)),
      site.base,
    );
}

/** Words of the United States alone that are not a matter of spelling. */
const AMERICAN = /\bgallons?\b|\bglycerin\b/;
const isAmerican = (asked: string) =>
  AMERICAN.test(asked) || wordsOf(asked).some(([word]) => !asked.toLowerCase().includes(word!));

/** The index is fetched first, which takes a busy machine a while. */
const slow = { timeout: 10_000 };

interface Loaded {
  preload(words: string): Promise<void>;
  /** For these words, or for nothing in particular: then it finds every page. */
  search(words: string | null): Promise<{
    results: { id: string; score: number; words: number[]; data: () => Promise<Found> }[];
  }>;
}

/** The index of the tested site, searched in its page; one more of it, with nothing fetched, by another name. */
async function indexInPage(name = ''): Promise<Index<Found>> {
  // In quotes, since the test runner would take an import for one of its own.
  const index = await page.evaluateHandle<Loaded>(`(async () => {
    const loaded = await import('${site.base}pagefind/pagefind.js?ts=${name}');
    await loaded.options({ baseUrl: '${site.base}' });
    return loaded;
  })()`);
  // Two that wait for one page to be fetched get it with the excerpts of the later; here many ask at a time.
  await index.evaluate(async (loaded) => {
    const { results } = await loaded.search(null);
    await Promise.all(results.map((page) => page.data()));
  });
  // Questions share their words: each is searched once, and each page it finds is fetched once.
  const search = once(async (words) => {
    const found = await index.evaluateHandle(
      async (loaded, asked) => (await loaded.search(asked)).results,
      words,
    );
    const hits = await found.evaluate((results) =>
      results.map(({ id, score, words }) => ({ id, score, words })),
    );
    // Only the best are looked up, as in the dialog.
    const pageOf = once((id) =>
      found.evaluate((results, wanted) => results.find((hit) => hit.id === wanted)!.data(), id),
    );
    return { results: hits.map((hit) => ({ ...hit, data: () => pageOf(hit.id) })) };
  });
  const preload = once((words) => index.evaluate((loaded, asked) => loaded.preload(asked), words));
  return whole({ search, preload });
}

/** What was asked before is answered as it was then. */
function once<T>(ask: (asked: string) => T): (asked: string) => T {
  const known = new Map<string, T>();
  return (asked) => {
    const answer = known.get(asked) ?? ask(asked);
    known.set(asked, answer);
    return answer;
  };
}

/** Where a found page is opened, as a path below the base: at a section if the question asks for one. */
const opensAt = (page: Found, [asked, wanted]: Question) =>
  (wanted.includes('#') ? bestSection(page, asked)!.url : page.url).slice(site.base.length);

test('the words by which the search finds a page are not in what is copied of it', async () => {
  const { page, close } = await openPage('mix/proportion/');
  const [words, copied] = await page.evaluate(() => {
    getSelection()!.selectAllChildren(document.querySelector('main')!);
    return [
      document.querySelector('[data-pagefind-meta="keywords"]')!.textContent,
      `${getSelection()}`,
    ];
  });
  expect(words).toContain('w/c');
  expect(copied).toContain('How much of each');
  expect(copied).not.toContain(words);
  await close();
});

describe('the search', () => {
  test('answers what makers ask, among the first three or as the first', async () => {
    const index = await indexInPage();
    const asking = [...questions, ...first].map(async (question) => {
      const [asked, wanted] = question;
      const { hits } = await findPages(index, asked);
      const shown = hits.slice(0, first.includes(question) ? 1 : 3);
      const pages = await Promise.all(shown.map((hit) => hit.data()));
      const paths = pages.map((page) => opensAt(page, question));
      return paths.includes(wanted) ? [] : [`${asked}: not ${wanted} but ${paths.join(', ')}`];
    });
    const missed = (await Promise.all(asking)).flat();
    expect(missed).toEqual([]);
    expect(questions.length).toBeGreaterThanOrEqual(30);
    const american = questions.filter(([, , spelling]) => spelling === 'US');
    expect(american.length * 2).toBeGreaterThanOrEqual(questions.length);
    expect(american.filter(([asked]) => !isAmerican(asked))).toEqual([]);
    expect(await findPages(index, 'lightning zzqqx')).toEqual({
      hits: [],
      unknown: ['lightning', 'zzqqx'],
    });
  });

  test('answers alike whatever was asked before', async () => {
    const words = ['i', 'in', 'out', 'form', 'water', 'mix', 'set', 'strip'];
    // Scores are sums in an order of chance.
    const scores = async (index: Index<Found>, word: string, score = (found: number) => found) =>
      Object.fromEntries(
        (await index.search(word)).results.map((hit) => [hit.id, score(hit.score)]),
      );
    const full = await indexInPage();
    for (const letter of 'abcdefghijklmnopqrstuvwxyz') await full.search(letter);
    for (const word of words)
      expect(await scores(await indexInPage(word), word), word).toEqual(
        await scores(full, word, (found) => expect.closeTo(found, 3)),
      );
  });

  test.each([
    ['demold', 'demoulding/'],
    ['mold', 'placing/'],
    ['how heavy is my foam', 'foam/weighing/'],
    ["Won't it set in the cold?", 'curing/set/'],
    // Pages of other chapters come near, and must not stand before it.
    ['fiber', 'mix/fibres/'],
    ['too heavy', 'mix/correct/'],
    ['can I stand on it', 'finished-part/where-not/'],
    ['how many gallons to fill my mold', 'placing/how-much/'],
    ['when can I take the pots out of the mould', 'demoulding/when-to-strip/'],
  ])('typed %j finds %s', async (words, path) => {
    expect((await found(words)).slice(0, 3)).toContain(path);
  });

  test.each([
    ['foam colapse', 'foam/killers/', 'found for “foam collapse”; on no page: colapse'],
    ['too hevy', 'mix/correct/', 'found for “too heavy”; on no page: hevy'],
    ['to heavvy', 'mix/correct/', 'found for “to heavy”; on no page: heavvy'],
    ['desnity', 'finished-part/density/', 'found for “density”; on no page: desnity'],
  ])('%j, a slip of the finger, finds %s and says how it was read', async (words, path, told) => {
    expect((await found(words)).slice(0, 3)).toContain(path);
    expect(await page.locator('.search-count').textContent()).toContain(told);
  });

  test('a key that ends the composing of a word opens no page and closes no search', async () => {
    await found('hardness');
    const input = page.locator('#search-words');
    const taken = () =>
      input.evaluate((it) =>
        ['Enter', 'Escape', 'ArrowDown'].filter(
          (key) =>
            !it.dispatchEvent(
              new KeyboardEvent('keydown', { key, isComposing: true, cancelable: true }),
            ),
        ),
      );
    const before = page.url();
    expect(await taken()).toEqual([]);
    expect(page.url()).toBe(before);
    expect(await page.locator('#search-found [role="option"]').first().isVisible()).toBe(true);
  });

  test('is worked by keys, and marks what it found', async () => {
    await found('hardness');
    const options = page.locator('#search-found [role="option"]');
    expect(await options.first().getAttribute('aria-selected')).toBe('true');
    await page.keyboard.press('ArrowDown');
    // On a busy machine a key is heard a moment later.
    await expect.poll(() => options.nth(1).getAttribute('aria-selected'), slow).toBe('true');
    const active = await page.locator('#search-words').getAttribute('aria-activedescendant');
    expect(active).toBe(await options.nth(1).getAttribute('id'));
    expect(await page.locator('#search-found mark').count()).toBeGreaterThan(0);
    expect(await page.locator('#search-found [role="group"]').count()).toBeGreaterThan(0);
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');
    await expect.poll(() => new URL(page.url()).pathname).toContain(site.base);
    await page.waitForLoadState();
    expect(await page.locator('#search').evaluate((d) => (d as HTMLDialogElement).open)).toBe(
      false,
    );
  });

  test('leaves the words that are typed in sight on a low screen', async () => {
    const { page, close } = await openPage('', { width: 360, height: 320 });
    try {
      await page.keyboard.press('Control+k');
      const input = page.locator('#search-words');
      await input.pressSequentially('foam collapsed');
      const options = page.locator('#search-found [role="option"]');
      await expect.poll(() => options.count(), slow).toBeGreaterThan(0);
      // It scrolls within the dialog, and would be cut off there.
      const top = async (shown: Locator) => (await shown.boundingBox())!.y;
      expect(await top(input)).toBeGreaterThanOrEqual(await top(page.locator('#search')));
      // What is chosen by a key is seen.
      for (let down = 0; down < 4; down++) await page.keyboard.press('ArrowDown');
      const chosen = (await options.nth(4).boundingBox())!;
      expect(chosen.y + chosen.height).toBeLessThanOrEqual(321);
    } finally {
      await close();
    }
  });

  test('counts what it found, not what it shows', async () => {
    await found('water');
    const said = await page.locator('.search-count').innerText();
    const [, of] = /^The 12 likeliest of (\d+) pages found$/.exec(said)!;
    expect(Number(of)).toBeGreaterThan(12);
    expect(await page.locator('#search-found a').count()).toBe(12);
  });

  test('says so when nothing is found, and where to go instead', async () => {
    await opened.go('');
    await page.keyboard.press('Control+k');
    await page.locator('#search-words').fill('zzqqx');
    const said = page.locator('.search-count');
    await expect.poll(() => said.innerText(), slow).toContain('Nothing found for “zzqqx”');
    expect(await said.locator('a').getAttribute('href')).toBe(`${site.base}chapters/`);
    await expect.poll(() => page.locator('#search-found').innerText()).toBe('');
  });

  test('opens by its key from a field too, with Caps Lock on, and not over another dialog', async () => {
    await opened.go('foam/weighing/');
    const isOpen = (id: string) =>
      page.locator(id).evaluate((dialog) => (dialog as HTMLDialogElement).open);
    await page.locator('main input').first().focus();
    await page.keyboard.press('Control+K');
    await expect.poll(() => isOpen('#search'), slow).toBe(true);
    await page.keyboard.press('Escape');
    await page.locator('[data-save-batch]').dispatchEvent('click');
    await page.locator('#save-batch').waitFor();
    await page.keyboard.press('Control+k');
    await turns(page);
    expect(await isOpen('#search')).toBe(false);
    await page.keyboard.press('Escape');
  });

  test('loses nothing that is typed before it has arrived', async () => {
    const { page, close } = await openPage('');
    try {
      const asked = Promise.withResolvers<void>();
      await page.route(/search\.[^/]*js$/, async (route) => {
        await asked.promise;
        await route.continue();
      });
      await page.keyboard.press('Control+k');
      await page.keyboard.type('foam collapsed');
      await page.keyboard.press('Control+k');
      asked.resolve();
      const options = page.locator('#search-found [role="option"]');
      await expect.poll(() => options.count(), slow).toBeGreaterThan(0);
      expect(await page.locator('#search-found').getAttribute('data-words')).toBe('foam collapsed');
    } finally {
      await close();
    }
  });

  test('says why it cannot search without a network, and searches when there is one', async () => {
    const { page, close } = await openPage('');
    try {
      await page.route('**/pagefind/**', (route) => route.abort());
      await page.keyboard.press('Control+k');
      await page.locator('#search-words').fill('foam');
      const said = page.locator('.search-count');
      await expect
        .poll(() => said.innerText(), slow)
        .toContain('could not be loaded: no connection');
      expect(await said.locator('a').count()).toBe(1);
      await page.unroute('**/pagefind/**');
      await page.locator('#search-words').fill('foam density');
      await expect.poll(() => said.innerText(), slow).toMatch(/\d+ pages found/);
    } finally {
      await close();
    }
  });
});
