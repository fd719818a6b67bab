import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Opened, openPage, wakeWorksheets } from './browser.ts';
import { typeOver } from './keyboard.ts';

let opened: Opened;
let page: Page;

// One page for all: each is typed over the last, as a reader would who gets it wrong again.
beforeAll(async () => {
  opened = await openPage('first-batch/');
  page = opened.page;
  await wakeWorksheets(page);
});
afterAll(async () => {
  expect(opened.complaints).toEqual([]);
  await opened.close();
});

test.each([
  ['', 'is empty'],
  ['two and a bit', 'is not a number'],
  ['-1', 'must be at least'],
  ['1,234 g', 'can be read as 1.234 or as 1234'],
  ['1e30', 'must be at most'],
  ['12 furlongs', 'is not one of mass'],
  ['5 L', 'is not one of mass'],
  ['10 20 30', 'more than one number'],
])(
  '%j gets a sentence by its field and no result, and a number in its place takes them back',
  async (text, words) => {
    const field = page.locator('#foam-density-full');
    const results = page.locator('[data-worksheet="foam-density"] .results');
    await typeOver(page, 'foam-density-full', text);
    if (text === '') await page.keyboard.press('Delete');
    await page.keyboard.press('Tab');
    await expect
      .poll(() => page.locator('#foam-density-full-problem').innerText())
      .toContain(words);
    await expect.poll(() => field.inputValue()).toBe(text);
    expect(await results.count()).toBe(0);
    expect(await field.getAttribute('aria-invalid')).toBe('true');

    await typeOver(page, 'foam-density-full', '2.45');
    await expect.poll(() => results.count()).toBeGreaterThan(0);
    expect(await field.getAttribute('aria-invalid')).not.toBe('true');
  },
);
