import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Opened, openPage, wakeWorksheets } from './browser.ts';
import { typeOver } from './keyboard.ts';
import { text } from './records.ts';
import { shown } from './shown.ts';

let opened: Opened;
let page: Page;

beforeEach(async () => {
  opened = await openPage('first-batch/');
  page = opened.page;
  await wakeWorksheets(page);
});
afterEach(async () => {
  expect(opened.complaints).toEqual([]);
  await opened.close();
});

describe('the bench', () => {
  test('is there again after a reload', async () => {
    await typeOver(page, 'foam-density-full', '2,61');
    await page.reload();
    await wakeWorksheets(page);
    await expect.poll(() => page.locator('#foam-density-full').inputValue()).toBe('2,61');
    await expect.poll(() => shown(page, 'foam-density', 'density')).toContain('88.0');
    const attribute = page.locator('.field', { has: page.locator('#foam-density-full') });
    expect(await attribute.getAttribute('data-origin')).toBe('yours');
  });

  test('moves nothing on a phone as its first reading brings the button that saves it', async () => {
    await page.setViewportSize({ width: 360, height: 740 });
    const height = () => page.locator('.masthead').evaluate((head) => head.clientHeight);
    const before = await height();
    await typeOver(page, 'foam-density-full', '2.61');
    await page.locator('[data-save-batch]').waitFor();
    expect(await height()).toBe(before);
    // “Light” is the longer of its two words.
    await page.locator('[data-theme-turn]').click();
    expect(await height()).toBe(before);
  });

  test('names no keys where there are none', async () => {
    const phone = await opened.context.browser()!.newContext({
      viewport: { width: 360, height: 740 },
      serviceWorkers: 'block',
      isMobile: true,
      hasTouch: true,
    });
    const touched = await phone.newPage();
    for (const [at, named] of [
      [page, 2],
      [touched, 0],
    ] as const) {
      await at.goto(page.url());
      await at.locator('[data-search-open]').click();
      await at.locator('#search-words').waitFor();
      const keys = at.locator('#search-how, .masthead kbd').filter({ visible: true });
      await expect.poll(() => keys.count()).toBe(named);
    }
    await phone.close();
  });

  test('is the same on another page', async () => {
    await typeOver(page, 'foam-density-tare', '1.1');
    await opened.go('foam/weighing/');
    await wakeWorksheets(page);
    await expect.poll(() => page.locator('#foam-density-tare').inputValue()).toBe('1.1');
  });

  test('agrees in two tabs', async () => {
    const other = await opened.tab();
    await other.goto(page.url());
    await wakeWorksheets(other);
    await typeOver(page, 'foam-density-full', '2.7');
    await expect.poll(() => other.locator('#foam-density-full').inputValue()).toBe('2.7');
    await typeOver(other, 'foam-density-tare', '0.9');
    await expect.poll(() => page.locator('#foam-density-tare').inputValue()).toBe('0.9');
    await expect.poll(() => page.locator('#foam-density-full').inputValue()).toBe('2.7');
  });

  test('can be cleared, and put back', async () => {
    await typeOver(page, 'foam-density-full', '2.7');
    await page.getByRole('button', { name: 'Clear the bench' }).click();
    await expect.poll(() => page.locator('#foam-density-full').inputValue()).toBe('2.45');
    await page.getByRole('button', { name: 'Put it back' }).click();
    await expect.poll(() => page.locator('#foam-density-full').inputValue()).toBe('2.7');
  });

  test('goes to another device by a link', async () => {
    await typeOver(page, 'foam-density-full', '2.71');
    await opened.context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.getByRole('button', { name: 'Copy a link' }).click();
    await expect.poll(() => page.locator('.copied').innerText()).toContain('Copied');
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(link).toContain('#batch=1.');

    const away = await openPage(link);
    await wakeWorksheets(away.page);
    await expect.poll(() => away.page.locator('#foam-density-full').inputValue()).toBe('2.71');
    expect(away.page.url()).not.toContain('#batch');
    expect(away.complaints).toEqual([]);
    await away.close();
  });

  test('is left alone by a link that cannot be read, and by one until it is accepted', async () => {
    await typeOver(page, 'foam-density-full', '2.9');
    await opened.go('first-batch/?again#batch=1.AAAA');
    await expect.poll(() => page.locator('#notices').innerText()).toContain('was not used');
    const link = Buffer.from(
      JSON.stringify({
        units: 'us',
        entries: { 'foam-density.full': { t: '3.1', u: 'kg', s: 'metric' } },
      }),
    );
    await opened.go(`first-batch/?more#batch=1.${link.toString('base64url')}`);
    await expect.poll(() => page.locator('#notices').innerText()).toContain('holds other readings');
    await expect.poll(() => page.locator('#foam-density-full').inputValue()).toBe('2.9');
    await page.getByRole('button', { name: 'Use the link’s batch' }).click();
    // The link's units come with it, and go again with it.
    await expect.poll(() => page.locator('#foam-density-full').inputValue()).toBe('6.8343');
    await page.getByRole('button', { name: 'Put my readings back' }).click();
    await expect.poll(() => page.locator('#foam-density-full').inputValue()).toBe('2.9');
  });

  test('opens with what can be read when the store is damaged', async () => {
    await page.evaluate(() => {
      localStorage.setItem('suds.bench.1.foam-density.full', '{"t":"2.8","u":"kg","s":"metric"}');
      localStorage.setItem('suds.bench.1.bucket.tare', '{broken');
      localStorage.setItem('suds.bench.0.older', '{"t":"1"}');
      localStorage.setItem('suds.kept.1.foam.density', '"much"');
      localStorage.setItem('suds.run.1', '{"id":"x","st');
    });
    await page.reload();
    await wakeWorksheets(page);
    const notice = page.locator('#notices');
    await expect.poll(() => notice.innerText()).toContain('4 stored readings could not be read');
    await expect.poll(() => notice.innerText()).toContain('bucket.tare');
    expect(await notice.innerText()).toContain('how far the batch at the bench had come');
    await expect.poll(() => page.locator('#foam-density-full').inputValue()).toBe('2.8');
    await expect.poll(() => page.locator('#foam-density-tare').inputValue()).toBe('0.85');
    const aside = await page.evaluate(() =>
      localStorage.getItem('suds.aside.suds.bench.1.bucket.tare'),
    );
    expect(aside).toBe('{broken');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Take out what was set aside' }).click();
    expect(JSON.parse(await text(await download))).toMatchObject({
      'suds.bench.1.bucket.tare': '{broken',
    });
  });
});
