import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Opened, openPage, site, wakeWorksheets } from './browser.ts';
import { turns } from './turns.ts';

let opened: Opened;
beforeAll(async () => {
  opened = await openPage('foam/weighing/');
});
afterAll(() => opened.close());

test('what a browser puts back into a form on going back is not taken for typing', async () => {
  const { page } = opened;
  await page.locator('[data-units]').click();
  await wakeWorksheets(page);
  // Shown in pounds now, while the page as it was built says kilograms.
  await expect.poll(() => page.locator('#foam-density-tare + select').inputValue()).toBe('lb');
  await page.goto(new URL('foam/glycerol/', site.url).href);
  await page.goBack({ waitUntil: 'load' });
  await wakeWorksheets(page);
  await turns(page);
  const kept = () =>
    page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('suds.bench.')));
  expect(await kept()).toEqual([]);
});

test('a page that is saved has in its fields what its results are of', async () => {
  const { page, close } = await openPage('mix/proportion/');
  await wakeWorksheets(page);
  const volume = page.locator('#proportion-volume');
  await page.locator('#proportion-volume + select').selectOption('gal');
  await volume.fill('33');
  await page.getByLabel('An oven-dry density').check();
  await page.locator('.result.answer .number').first().click();
  const saved = await page.content();
  await close();
  const opened = await openPage('glossary/');
  await opened.page.setContent(saved.replaceAll(/<script.*?<\/script>/gs, ''));
  const there = (select: string) => opened.page.locator(select);
  expect(await there('#proportion-volume').inputValue()).toBe('33');
  expect(await there('#proportion-volume + select').inputValue()).toBe('gal');
  expect(await opened.page.getByLabel('An oven-dry density').isChecked()).toBe(true);
  await opened.close();
});

test('a page that is saved has in its boxes of many lines what its results are of', async () => {
  const { page, go, close } = await openPage('');
  await page.clock.install();
  await go('foam/drainage/');
  await wakeWorksheets(page);
  const box = page.locator('.field.lines textarea').first();
  const lines = '0\t0\n10\t40\n20\t60\n30\t70';
  await box.fill(lines);
  await page.locator('main .worksheet input[type="text"]:visible').first().press('Tab');
  // What is drawn afterwards, by a pause of typing too, leaves it so.
  await page.clock.runFor(1200);
  await turns(page);
  expect(await box.evaluate((it) => (it as HTMLTextAreaElement).defaultValue)).toBe(lines);
  await close();
});

test('a line of the check list that a browser puts back as ticked stays ticked', async () => {
  const { page, go } = opened;
  await go('safety/setting-up/');
  await wakeWorksheets(page);
  const boxes = page.locator('.check-list input');
  const ticked = () =>
    boxes.evaluateAll((all) => all.map((box) => (box as HTMLInputElement).checked).indexOf(false));
  for (let i = 0; i < 3; i++) await boxes.nth(i).check();
  await page.goto(new URL('glossary/', site.url).href);
  await page.goBack({ waitUntil: 'load' });
  await wakeWorksheets(page);
  await expect.poll(ticked).toBe(3);
});

test('a check list left open over midnight begins anew, and keeps what is ticked then', async () => {
  const { page, close } = await openPage('');
  await page.clock.install({ time: new Date('2026-05-08T23:50:00') });
  await page.goto(new URL('safety/setting-up/', site.url).href);
  await page.locator('.check-list').scrollIntoViewIfNeeded();
  await page.locator('[data-island="live/before-you-mix"][data-awake="yes"]').waitFor();
  const boxes = page.locator('.check-list input');
  for (let i = 0; i < 3; i++) await boxes.nth(i).check();
  await page.clock.fastForward('08:00:00');
  await expect.poll(() => page.locator('.check-list :checked').count()).toBe(0);
  await boxes.nth(1).check();
  expect(await page.locator('.check-list :checked').count()).toBe(1);
  await close();
});
