import { expect, test } from 'vitest';
import { openPage, wakeWorksheets } from './browser.ts';
import { typeOver } from './keyboard.ts';

test('what cannot be drawn leaves nothing of the numbers before, and the next numbers are drawn', async () => {
  const opened = await openPage('mix/correct/');
  const { page } = opened;
  await wakeWorksheets(page);
  const sheet = page.locator('[data-worksheet="correct"]');
  const drawn = sheet.locator('table, figure');
  const before = await drawn.count();
  expect(before).toBeGreaterThan(1);

  // Only what stands beside the results writes numbers with it.
  const toFixed = await page.evaluateHandle(() => {
    const { toFixed } = Number.prototype;
    Number.prototype.toFixed = () => {
      throw new RangeError('undrawn');
    };
    return { toFixed };
  });
  await typeOver(page, 'correct-full', '14.2');
  await expect
    .poll(() => sheet.locator('.withheld').allInnerTexts())
    .toEqual(['This could not be drawn with these numbers.']);
  expect(await drawn.count()).toBe(0);
  expect(await sheet.locator('.results').count()).toBeGreaterThan(0);
  expect(new Set(opened.complaints)).toEqual(new Set(['uncaught: undrawn']));

  await toFixed.evaluate(({ toFixed }) => {
    Number.prototype.toFixed = toFixed;
  });
  await typeOver(page, 'correct-full', '14.1');
  await expect.poll(() => drawn.count()).toBe(before);
  expect(await sheet.locator('.withheld').count()).toBe(0);
  await opened.close();
});
