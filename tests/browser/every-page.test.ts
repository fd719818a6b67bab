import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { faults, faultsButColours, newColourFaults, WIDTH } from './axe.ts';
import {
  crushed,
  cutOptions,
  cutText,
  overflow,
  SPACED,
  scrolls,
  shownThings,
  smallTargets,
  TWICE,
  under,
} from './boxes.ts';
import { type Opened, openPage, site, wakeWorksheets } from './browser.ts';
import { triedWhole } from './casts.ts';
import { makeMistakes, unsaidMistakes } from './mistakes.ts';
import { nameFaults } from './names.ts';

/** What a fingertip needs (WCAG 2.2, 2.5.8), and what a gloved one does. */
const [FINGER, GLOVE] = [24, 44];

/** The colours of texts that were tried on some page, under each theme. */
const tried = { light: new Set<string>(), dark: new Set<string>(), own: new Set<string>() };

/**
 * Everything wrong with one page. All of axe's rules are run on a phone; what alone can change is run
 * again where it does: the width on a desk, the colours in each theme, where no page before had the same.
 * That nothing shown on a phone is missing on a desk is checked, or else it would go untried.
 */
async function faultsOf(path: string, opened: Opened): Promise<string[]> {
  const { page, complaints } = opened;
  complaints.length = 0;
  await page.emulateMedia({ colorScheme: 'light' });
  await page.setViewportSize({ width: 360, height: 900 });
  await opened.go(path);
  await wakeWorksheets(page);
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
  const found = new Map<string, string[]>();
  const note = (shown: string, list: readonly string[]) => {
    for (const fault of list) found.set(fault, [...(found.get(fault) ?? []), shown]);
  };
  note('360 px', await faultsButColours(page));
  note('light', await newColourFaults(page, tried.light));
  note('360 px', await page.evaluate(overflow));
  note('360 px', await page.evaluate(cutText));
  note('360 px', await page.evaluate(cutOptions));
  note('360 px', await smallTargets(page, FINGER));
  note('360 px', await smallTargets(page, GLOVE, '.worksheet, .run, .at-bench, .foam-clock'));
  note('a screen reader', await nameFaults(page));
  if (!triedWhole(path)) return said(found, complaints);

  // With something of the reader's own the page has more to show: a button in its head on every page.
  await putOnBench(page);
  note('text spaced', await under(page, SPACED, TIGHT));
  note('360 px, text twice as large', await under(page, TWICE, [overflow, crushed]));
  await page.locator('[data-save-batch]').waitFor();
  await page.setViewportSize({ width: 320, height: 900 });
  note('320 px', await page.evaluate(overflow));
  note('320 px, text spaced', await under(page, SPACED, [overflow]));

  // Counted late: a list from the browser's store may take a moment to come.
  const shown = await shownThings(page);
  await page.setViewportSize({ width: 1280, height: 900 });
  // Where the list of contents stands beside the text, nothing leads down to it; a phone has no key for the search.
  const [down, key] = [page.locator('.where .down'), page.locator('.masthead kbd')];
  const more = (await shownThings(page)) + (await down.count()) - (await key.count()) - shown;
  if (more !== 0) note('1280 px', [`shows ${more} things more than on a phone`]);
  if (await page.evaluate(scrolls)) note('1280 px', await faults(page, WIDTH));
  note('1280 px', await smallTargets(page, FINGER));
  note('1280 px', await page.evaluate(crushed));
  note('1280 px', await page.evaluate(cutOptions));
  note('text twice as large', await under(page, TWICE, TIGHT));
  await page.emulateMedia({ colorScheme: 'dark' });
  note('dark', await newColourFaults(page, tried.dark));
  await page.emulateMedia({ forcedColors: 'active' });
  note('a reader’s own colours', await newColourFaults(page, tried.own));
  await page.emulateMedia({ forcedColors: 'none' });

  if ((await makeMistakes(page)) > 0) {
    const told = ['.entry', '.problem', '.withheld'];
    note('mistakes shown', await unsaidMistakes(page));
    note('mistakes shown', await faultsButColours(page, told));
    note('mistakes shown in the dark', await newColourFaults(page, tried.dark));
    await page.emulateMedia({ colorScheme: 'light' });
    note('mistakes shown', await newColourFaults(page, tried.light));
  }
  // The next page begins with an empty bench.
  await page.evaluate(() => localStorage.clear());
  return said(found, complaints);
}

/** One reading of the reader's own, as if typed in another tab: no field of the page loses its example. */
async function putOnBench(page: Page): Promise<void> {
  await page.evaluate(() => {
    const [key, newValue] = ['suds.bench.1.foam-density.full', '{"t":"2.5"}'];
    localStorage.setItem(key, newValue);
    dispatchEvent(new StorageEvent('storage', { key, newValue, storageArea: localStorage }));
    dispatchEvent(new Event('change'));
  });
}

/** What a worksheet shows beside its fields, and what of it cannot be read; of other live parts, that they say why not. */
const PARTS = ['.results', '.verdict', '.caution', '.defers', '.sources'];
const unshownParts = (page: Page) =>
  page.evaluate((parts) => {
    const sheets = [...document.querySelectorAll<HTMLElement>('[data-worksheet]')];
    const missing = sheets.flatMap((sheet) =>
      parts.flatMap((part) => {
        const all = [...sheet.querySelectorAll<HTMLElement>(part)];
        const seen = all.length > 0 && all.every((e) => e.checkVisibility() && e.innerText.trim());
        return seen ? [] : [`${sheet.dataset.worksheet} shows no ${part}`];
      }),
    );
    const live = [...document.querySelectorAll<HTMLElement>('[data-island^="live/"]')];
    const silent = live.filter(
      (part) => !(part.nextElementSibling as HTMLElement)?.innerText.includes('Scripts are off'),
    );
    missing.push(...silent.map(({ dataset }) => `${dataset.island} does not say why it is dead`));
    return { worksheets: sheets.length, missing };
  }, PARTS);

const said = (found: ReadonlyMap<string, readonly string[]>, complaints: readonly string[]) => [
  ...complaints,
  ...[...found].map(([fault, shown]) => `${shown.join(', ')}: ${fault}`),
];

const TIGHT = [overflow, crushed, cutText];

/** Pages are tried two at a time, each in a window of its own. */
const WINDOWS = 2;

describe('every page', () => {
  const free: Opened[] = [];

  beforeAll(async () => {
    for (let i = 0; i < WINDOWS; i++) {
      const opened = await openPage('');
      free.push(opened);
    }
  });

  afterAll(() => Promise.all(free.map((opened) => opened.close())));

  test('there are pages', () => {
    expect(site.pages).toContain('');
    expect(site.pages).toContain('404.html');
  });

  test.concurrent.each(site.pages)('/%s', async (path) => {
    const opened = free.pop();
    if (!opened) throw new Error('more pages are tried at once than there are windows');
    try {
      expect(await faultsOf(path, opened)).toEqual([]);
    } finally {
      free.push(opened);
    }
  });

  test('a worksheet wakes when it comes into view, not before', async () => {
    const { page, close } = await openPage('water/hardness/');
    const awake = () =>
      page
        .locator('[data-island]')
        .first()
        .evaluate((e) => (e as HTMLElement).dataset.awake);
    await page.waitForLoadState('networkidle');
    expect(await awake()).toBeUndefined();
    await page.locator('[data-island]').first().scrollIntoViewIfNeeded();
    await expect.poll(awake).toBe('yes');
    await close();
  });

  test('parts that feed each other wake at the first touch of the page, seen or not', async () => {
    const { page, close } = await openPage('first-batch/');
    const asleep = page.locator('[data-wakes="together"]:not([data-awake="yes"])');
    const all = await page.locator('[data-wakes="together"]').count();
    await page.waitForLoadState('networkidle');
    expect(await asleep.count()).toBeGreaterThan(all / 2);
    await page.keyboard.press('Tab');
    await expect.poll(() => asleep.count()).toBe(0);
    await close();
  });

  test('no part is fetched before the page has been drawn', async () => {
    const { page, close } = await openPage('bench/run/');
    await page.locator('[data-awake="yes"]').first().waitFor();
    const { drawn, fetched } = await page.evaluate(() => ({
      drawn: performance.getEntriesByName('first-contentful-paint')[0]!.startTime,
      fetched: performance
        .getEntriesByType('resource')
        .filter(({ name }) => /\/(mount|mechanism|bench-run)\./.test(name))
        .map(({ startTime }) => startTime),
    }));
    expect(fetched).toHaveLength(3);
    expect(Math.min(...fetched)).toBeGreaterThan(drawn);
    await close();
  });

  test('where the reader keeps readings, all of a page wakes unseen: it may be printed', async () => {
    const { page, close, go } = await openPage('');
    await page.evaluate(() => localStorage.setItem('suds.units', 'us'));
    await go('water/softening/');
    const asleep = page.locator('[data-island]:not([data-awake="yes"])');
    await expect.poll(() => asleep.count()).toBe(0);
    expect(await page.locator('[data-island]').count()).toBeGreaterThan(3);
    await close();
  });

  test('a theme that was chosen wakes nothing', async () => {
    const { page, close, go } = await openPage('');
    await page.evaluate(() => localStorage.setItem('suds.theme', 'dark'));
    await go('water/softening/');
    await page.waitForLoadState('networkidle');
    const asleep = page.locator('[data-island]:not([data-awake])');
    expect(await asleep.count()).toBeGreaterThan(2);
    await close();
  });

  test('read complete with scripts off', async () => {
    const plain = await openPage('', { javaScript: false, width: 360 });
    let found = 0;
    for (const path of site.pages.filter(triedWhole)) {
      await plain.go(path);
      const main = await plain.page.locator('main').textContent();
      expect(main?.trim().length, path).toBeGreaterThan(80);
      const { worksheets, missing } = await unshownParts(plain.page);
      expect(missing, path).toEqual([]);
      found += worksheets;
    }
    expect(found).toBeGreaterThan(60);
    expect(plain.complaints).toEqual([]);
    await plain.close();
  });
});
