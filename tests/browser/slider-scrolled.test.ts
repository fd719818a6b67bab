import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Opened, openPage, wakeWorksheets } from './browser.ts';

let opened: Opened;
let page: Page;

beforeEach(async () => {
  opened = await openPage('water/blending/', { width: 390, height: 844, touch: true });
  page = opened.page;
  await wakeWorksheets(page);
});
afterEach(async () => {
  expect(opened.complaints).toEqual([]);
  await opened.close();
});

const slider = () => page.locator('.slider').first();
const typed = () => page.locator('.field', { has: slider() }).locator('input[type=text]').first();
const origin = () => page.locator('.field', { has: slider() }).first().getAttribute('data-origin');

/** A finger that comes down far along the slider and goes on from there, px a move. */
async function swipe(across: number, up: number): Promise<void> {
  await slider().evaluate((it) => it.scrollIntoView({ block: 'center' }));
  const box = (await slider().boundingBox())!;
  const [x, y] = [box.x + 0.85 * box.width, box.y + box.height / 2];
  const session = await opened.context.newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', i = 0) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: type === 'touchEnd' ? [] : [{ x: x - across * i, y: y - up * i }],
    });
  await touch('touchStart');
  for (let i = 1; i <= 25; i++) {
    await page.waitForTimeout(16);
    await touch('touchMove', i);
  }
  await touch('touchEnd');
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done))));
}

test('a finger that scrolls the page from a slider changes no reading, and makes none of an example', async () => {
  const example = await typed().inputValue();
  const top = () => page.evaluate(() => scrollY);
  const scrolled = async () => {
    await slider().evaluate((it) => it.scrollIntoView({ block: 'center' }));
    const before = await top();
    await swipe(0, 10);
    expect((await top()) - before).toBeGreaterThan(50);
  };
  await scrolled();
  expect([await typed().inputValue(), await origin()]).toEqual([example, 'example']);
  await typed().fill('80');
  await scrolled();
  expect([await typed().inputValue(), await origin()]).toEqual(['80', 'yours']);
});

test('a finger along a slider moves it', async () => {
  await typed().fill('80');
  await swipe(2, 0);
  expect(Number(await typed().inputValue())).toBeGreaterThan(80);
});
