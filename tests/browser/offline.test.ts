import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { type Served, serve } from '../../scripts/serve.mjs';
import { keepOffline } from '../../scripts/site/offline.mjs';
import { type Opened, openPage, site, wakeWorksheets } from './browser.ts';
import { triedWhole } from './casts.ts';

let served: Served | undefined;
let opened: Opened | undefined;

async function leave(): Promise<void> {
  await opened?.close();
  await served?.close();
  opened = served = undefined;
}

/** What a machine with other work may take to put by four hundred files, and then to open each page, ms. */
const PUT_BY = 80_000;
const ALL_PAGES = 240_000;

/** Serves a site by itself, so that it can be stopped, and opens it once. */
async function visit(folder: string): Promise<Page> {
  served = await serve({ folder, base: site.base });
  opened = await openPage('', { at: served.url, offline: true });
  await opened.page.waitForFunction(
    () => navigator.serviceWorker.controller?.state === 'activated',
    undefined,
    { timeout: PUT_BY },
  );
  return opened.page;
}

const heading = async (page: Page) => (await page.locator('h1').textContent())?.trim();

/** A page's heading and how it is dressed: what a reader sees of a page that came whole. */
const look = (page: Page) =>
  page.evaluate(() => ({
    heading: document.querySelector('h1')?.textContent,
    title: document.title,
    font: getComputedStyle(document.body).fontFamily,
    sheets: [...document.styleSheets].map((sheet) => sheet.cssRules.length),
  }));

const titleIn = (html: string) =>
  (/<title>([^<]*)<\/title>/.exec(html)?.[1] ?? 'no title')
    .replaceAll('&amp;', '&')
    .replaceAll('&#38;', '&');

/** The title of a page as its file has it. */
const written = (path: string) =>
  titleIn(
    readFileSync(join(site.folder, path.endsWith('.html') ? path : `${path}index.html`), 'utf8'),
  );

describe('without a network', { timeout: ALL_PAGES }, () => {
  let page: Page;

  // One visit to the first page, and the network is gone for all that follows.
  beforeAll(async () => {
    page = await visit(site.folder);
    await served?.close();
  }, ALL_PAGES);
  afterAll(leave);

  test('every page opens after one visit to the first', async () => {
    const { font } = await look(page);
    for (const path of site.pages.filter((path) => !triedWhole(path))) {
      const came = await page.evaluate(
        async (path) => (await fetch(path)).text(),
        `${site.base}${path}`,
      );
      expect(titleIn(came), path).toBe(written(path));
    }
    for (const path of site.pages.filter(triedWhole)) {
      await opened?.go(path);
      const shown = await look(page);
      expect(shown.title, path).toBe(written(path));
      expect(shown.heading?.trim(), path).toBeTruthy();
      expect(shown.font, path).toBe(font);
      expect(Math.min(...shown.sheets), path).toBeGreaterThan(0);
      await wakeWorksheets(page);
    }
    // The browser looks for a newer worker by itself; without a network it finds none.
    expect(opened?.complaints.filter((line) => !line.includes('/sw.js'))).toEqual([]);
  });

  test('search answers', async () => {
    await opened?.go('');
    await page.keyboard.press('Control+k');
    // The dialog's script is fetched at the first opening; what is typed before goes nowhere.
    await page.waitForFunction(() => document.activeElement?.matches('#search input'));
    await page.keyboard.type('hard water');
    const first = page.locator('#search-found [role="option"]').first();
    await first.waitFor();
    const address = await first.getAttribute('href');
    await page.keyboard.press('Enter');
    await page.waitForURL(new URL(address ?? '', page.url()).href);
    expect(await heading(page)).toBeTruthy();
  });

  test('a batch is begun, followed and finished, and its record kept', async () => {
    await opened?.go('bench/run/');
    await page.getByRole('button', { name: 'Begin a batch' }).click();
    await page.getByRole('button', { name: 'Exactly that' }).first().click();
    for (let step = 0; step < 4; step++) await page.getByRole('button', { name: /^Next/ }).click();
    await page.locator('#record-sunk').fill('2');
    await page.getByRole('button', { name: /^Done/ }).click();
    await page.locator('.record[data-state="saved"]').waitFor();
    await page.reload();
    await page.locator('.record').waitFor();
    await expect.poll(() => page.locator('#record-sunk').inputValue()).toBe('2');
    await expect.poll(() => page.locator('#record-water').inputValue()).toMatch(/^\d/);
  });

  test('a page nobody knows gets the page that helps', async () => {
    await opened?.go('404.html');
    const helps = await heading(page);
    expect(helps).toBeTruthy();
    await opened?.go('no-such-page/');
    expect(await heading(page)).toBe(helps);
  });
});

let copy = '';
afterEach(async () => {
  if (!copy) return;
  await leave();
  rmSync(copy, { recursive: true, force: true });
});

test('a newer build is offered, and no page has any of it before it is accepted, or loses for it what is not stored', {
  timeout: ALL_PAGES,
}, async () => {
  copy = mkdtempSync(join(tmpdir(), 'slurry-'));
  cpSync(site.folder, copy, { recursive: true });
  // Opened at the first visit, as this tab was; and one whose reading the browser does not store.
  const page = await visit(copy);
  const before = await heading(page);
  const full = await opened!.context.newPage();
  await full.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await full.goto(new URL('foam/weighing/', page.url()).href);
  await wakeWorksheets(full);
  await full.locator('#foam-density-full').fill('9.87');
  await full.locator('body[data-unstored]').waitFor();
  // And one of a batch that is neither stored nor a draft.
  const run = await opened!.context.newPage();
  await run.goto(new URL('bench/run/', page.url()).href);
  await run.getByText('It works without a network.').waitFor();
  await run.getByRole('button', { name: 'Begin a batch' }).click();
  await run.locator('[data-run="0"]').waitFor();
  await run.evaluate(() => {
    Storage.prototype.setItem = IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await run.locator('#record-water').fill('1.23');
  await run.locator('body[data-unheld]').waitFor();

  for (const name of ['index.html', '404.html']) {
    const file = join(copy, name);
    writeFileSync(file, readFileSync(file, 'utf8').replace('</h1>', ' made anew</h1>'));
  }
  await keepOffline(copy);
  const later = await opened!.context.newPage();
  await later.goto(page.url());
  const notice = '[data-notice="update"]';
  await later.locator(notice).waitFor({ timeout: PUT_BY });
  expect(await heading(later)).toBe(before);
  await later.goto(new URL('404.html', page.url()).href);
  expect(await heading(later)).not.toContain('made anew');

  await page.locator(notice).getByRole('button', { name: 'Use it now' }).click();
  await page.getByRole('heading', { level: 1, name: /made anew/ }).waitFor({ timeout: PUT_BY });
  await later.getByRole('heading', { level: 1, name: /made anew/ }).waitFor({ timeout: PUT_BY });
  await full.locator(notice).getByRole('button', { name: 'Save batch' }).click();
  await full.getByRole('button', { name: 'Save', exact: true }).click();
  await full.locator('[data-notice="saved-batch"]').waitFor();
  expect(await full.locator('#foam-density-full').inputValue()).toBe('9.87');
  await run.locator(notice).waitFor();
  expect(await run.locator('#record-water').inputValue()).toBe('1.23');
});
