import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Served, serve } from '../../scripts/serve.mjs';
import { keepOffline } from '../../scripts/site/offline.mjs';
import { type Opened, openPage, site, wakeWorksheets } from './browser.ts';
import { triedWhole } from './casts.ts';

/** What a machine with other work may take to put by four hundred files, and then to open each page, ms. */
const PUT_BY = 80_000;
const ALL_PAGES = 240_000;

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

describe('after one visit to the first page', { timeout: ALL_PAGES }, () => {
  let copy = '';
  let served: Served;
  let opened: Opened;
  let page: Page;
  /** A tab that stays as the first visit left it. */
  let first: Page;
  const waiting = { timeout: PUT_BY };

  // A copy of the site, which can be built anew, served by itself; after the visit the network is gone.
  beforeAll(async () => {
    copy = mkdtempSync(join(tmpdir(), 'slurry-'));
    cpSync(site.folder, copy, { recursive: true });
    served = await serve({ folder: copy, base: site.base });
    opened = await openPage('', { at: served.url, offline: true });
    page = opened.page;
    first = await opened.context.newPage();
    await first.goto(served.url);
    for (const tab of [page, first])
      await tab.waitForFunction(
        () => navigator.serviceWorker.controller?.state === 'activated',
        undefined,
        waiting,
      );
    await served.close();
  }, ALL_PAGES);
  afterAll(async () => {
    await opened?.close();
    await served?.close();
    rmSync(copy, { recursive: true, force: true });
  });

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
      await opened.go(path);
      const shown = await look(page);
      expect(shown.title, path).toBe(written(path));
      expect(shown.heading?.trim(), path).toBeTruthy();
      expect(shown.font, path).toBe(font);
      expect(Math.min(...shown.sheets), path).toBeGreaterThan(0);
      await wakeWorksheets(page);
    }
    // The browser looks for a newer worker by itself; without a network it finds none.
    expect(opened.complaints.filter((line) => !line.includes('/sw.js'))).toEqual([]);
  });

  test('search answers', async () => {
    await opened.go('');
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
    await opened.go('bench/run/');
    await page.getByRole('button', { name: 'Begin a batch' }).click();
    await page.getByRole('button', { name: 'I put in exactly that' }).first().click();
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
    await opened.go('404.html');
    const helps = await heading(page);
    expect(helps).toBeTruthy();
    await opened.go('no-such-page/');
    expect(await heading(page)).toBe(helps);
  });

  test('a newer build is offered, and no page has any of it before it is accepted, or loses for it what is not stored', async () => {
    // The network is there again; what the tests above left is not.
    await page.close();
    served = await serve({ folder: copy, base: site.base, port: served.port });
    const session = await opened.context.newCDPSession(first);
    const { origin } = new URL(first.url());
    await session.send('Storage.clearDataForOrigin', {
      origin,
      storageTypes: 'local_storage,indexeddb',
    });
    // Opened at the first visit, as this tab was; and one whose reading the browser does not store.
    const before = await heading(first);
    const full = await opened.context.newPage();
    await full.addInitScript(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await full.goto(new URL('foam/weighing/', first.url()).href);
    await wakeWorksheets(full);
    await full.locator('#foam-density-full').fill('9.87');
    await full.locator('body[data-unstored]').waitFor();
    // And one of a batch that is neither stored nor a draft.
    const run = await opened.context.newPage();
    await run.goto(new URL('bench/run/', first.url()).href);
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
    const later = await opened.context.newPage();
    await later.goto(first.url());
    const notice = '[data-notice="update"]';
    await later.locator(notice).waitFor(waiting);
    expect(await heading(later)).toBe(before);
    await later.goto(new URL('404.html', first.url()).href);
    expect(await heading(later)).not.toContain('made anew');

    await first.locator(notice).getByRole('button', { name: 'Use it now' }).click();
    await first.getByRole('heading', { level: 1, name: /made anew/ }).waitFor(waiting);
    await later.getByRole('heading', { level: 1, name: /made anew/ }).waitFor(waiting);
    await full.locator(notice).getByRole('button', { name: 'Save batch' }).click();
    await full.getByRole('button', { name: 'Save', exact: true }).click();
    await full.locator('[data-notice="saved-batch"]').waitFor();
    expect(await full.locator('#foam-density-full').inputValue()).toBe('9.87');
    await run.locator(notice).waitFor();
    expect(await run.locator('#record-water').inputValue()).toBe('1.23');
  });
});
