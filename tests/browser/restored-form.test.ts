import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Opened, openPage, site, wakeWorksheets } from './browser.ts';

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
  await page.waitForTimeout(300);
  const kept = () =>
    page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('suds.bench.')));
  expect(await kept()).toEqual([]);
});
