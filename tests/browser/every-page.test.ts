import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOnly } from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Opened, openPage, site, wakeWorksheets } from './browser.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * What axe finds on the page as it is shown now, one line a place. Turning the colours changes
 * nothing but colours: in the dark, only the rules about them are run again.
 */
async function faults(page: Page, theme: 'light' | 'dark'): Promise<string[]> {
  const runOnly: RunOnly =
    theme === 'light'
      ? { type: 'tag', values: rules }
      : { type: 'rule', values: ['color-contrast', 'link-in-text-block'] };
  const { violations } = (await page.evaluate(
    (only) =>
      (window as unknown as { axe: typeof import('axe-core') }).axe.run(document, {
        runOnly: only,
        resultTypes: ['violations'],
      }),
    runOnly,
  )) as AxeResults;
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target.join(' ')} ${node.failureSummary ?? ''}`),
  );
}

/** What sticks out to the right, when the page is wider than the screen. */
function overflow(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const { clientWidth, scrollWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    const scrolls = (e: Element | null): boolean =>
      e !== null &&
      e !== document.body &&
      (getComputedStyle(e).overflowX !== 'visible' || scrolls(e.parentElement));
    const out = [...document.body.querySelectorAll('*')].filter(
      (e) => e.getBoundingClientRect().right > clientWidth + 0.5 && !scrolls(e.parentElement),
    );
    const names = out
      .slice(0, 5)
      .map((e) => [e.tagName.toLowerCase(), ...e.classList].join('.') + (e.id && `#${e.id}`));
    return [`wider than the screen (${scrollWidth} px): ${names.join(', ')}`];
  });
}

/** Everything wrong with one page, in both themes and at every width. */
async function faultsOf(path: string, opened: Opened): Promise<string[]> {
  const { page, complaints } = opened;
  complaints.length = 0;
  await page.emulateMedia({ colorScheme: 'light' });
  await page.setViewportSize({ width: 1280, height: 900 });
  await opened.go(path);
  await wakeWorksheets(page);
  const found = new Map<string, string[]>();
  const note = (shown: string, list: string[]) => {
    for (const fault of list) found.set(fault, [...(found.get(fault) ?? []), shown]);
  };
  for (const width of [1280, 360]) {
    await page.setViewportSize({ width, height: 900 });
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      note(`${colorScheme} ${width} px`, await faults(page, colorScheme));
    }
  }
  for (const width of [360, 320]) {
    await page.setViewportSize({ width, height: 900 });
    note(`${width} px`, await overflow(page));
  }
  const lines = [...found].map(([fault, shown]) => `${shown.join(', ')}: ${fault}`);
  return [...complaints, ...lines];
}

/** Pages are tried two at a time, each in a window of its own. */
const WINDOWS = 2;

describe('every page', () => {
  const free: Opened[] = [];

  beforeAll(async () => {
    for (let i = 0; i < WINDOWS; i++) {
      const opened = await openPage('');
      await opened.context.addInitScript(axe);
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

  test('read complete with scripts off', async () => {
    const plain = await openPage('', { javaScript: false, width: 360 });
    for (const path of site.pages) {
      await plain.go(path);
      const main = await plain.page.locator('main').textContent();
      expect(main?.trim().length, path).toBeGreaterThan(80);
    }
    expect(plain.complaints).toEqual([]);
    await plain.close();
  });
});
