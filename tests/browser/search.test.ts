import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Opened, openPage, site } from './browser.ts';

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
  await page.keyboard.press('/');
  const input = page.locator('#search-words');
  await input.fill(words);
  await expect
    .poll(() => page.locator('#search-found').getAttribute('data-words'), { timeout: 10_000 })
    .toBe(words);
  return page
    .locator('#search-found a')
    .evaluateAll(
      (links, base) =>
        links.map((link) => new URL((link as HTMLAnchorElement).href).pathname.slice(base.length)),
      site.base,
    );
}

describe('the search', () => {
  test.each([
    ['demold', 'demoulding/'],
    ['mold', 'placing/'],
    ['fiber', 'safety/'],
    ['curing', 'curing/'],
    ['lye burn', 'safety/'],
    ['hard water', 'water/hardness/'],
    ['how heavy is my foam', 'foam/weighing/'],
    ['absolute volume', 'mix/proportion/'],
  ])('%j finds %s', async (words, path) => {
    expect((await found(words)).slice(0, 3)).toContain(path);
  });

  test('is worked by keys, and marks what it found', async () => {
    await found('hardness');
    const options = page.locator('#search-found [role="option"]');
    expect(await options.first().getAttribute('aria-selected')).toBe('true');
    await page.keyboard.press('ArrowDown');
    expect(await options.nth(1).getAttribute('aria-selected')).toBe('true');
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

  test('says so when nothing is found', async () => {
    await opened.go('');
    await page.keyboard.press('/');
    await page.locator('#search-words').fill('zzqqx');
    await expect.poll(() => page.locator('.search-count').innerText()).toContain('Nothing found');
  });
});
