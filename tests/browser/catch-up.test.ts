import { afterEach, expect, test } from 'vitest';
import { behind } from './behind.ts';
import { type Opened, openPage, wakeWorksheets } from './browser.ts';
import { turns } from './turns.ts';

let opened: Opened;
afterEach(() => opened.close());

/** A page whose clock goes as fast as any other, and can be stopped and moved on. */
async function open(path: string) {
  opened = await openPage('');
  await opened.page.clock.install();
  await opened.go(path);
  await wakeWorksheets(opened.page);
  return opened.page;
}

/** From now on, under which keys something is written to storage. */
const watchWrites = () =>
  opened.page.evaluate(() => {
    const writes: string[] = [];
    const write = Storage.prototype.setItem;
    Storage.prototype.setItem = function (key, value) {
      writes.push(key);
      write.call(this, key, value);
    };
    Object.assign(window, { writes });
  });
/** How often something was written under this key since. */
const writesOf = (key: string) =>
  opened.page.evaluate(
    (key) => (window as unknown as { writes: string[] }).writes.filter((at) => at === key).length,
    key,
  );

test('what other pages keep waits for a pause in typing, and only what follows from the change is fetched', async () => {
  const page = await open('mix/proportion/');
  await page.locator('#proportion-waterCement').fill('0.4');
  const cement = 'suds.kept.1.mix.cement';
  await page.waitForFunction((key) => localStorage.getItem(key), cement);
  await opened.go('water/hardness/');
  await wakeWorksheets(page);
  await page.locator('#water-hardness-calcium').fill('40');
  await page.waitForFunction(() =>
    Object.values(localStorage).some((text) => text.includes('"by":"water-hardness"')),
  );

  await expect.poll(() => behind(page)).toBe('');

  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(new URL(request.url()).pathname));
  await opened.go('placing/how-much/');
  await wakeWorksheets(page);
  // What follows from the first change is all that is fetched; by then what sees to it is awake.
  const count = page.locator('#shapes-count');
  const volume = 'suds.kept.1.batch.volume';
  await count.fill('20');
  await page.waitForFunction((key) => localStorage.getItem(key)?.includes('"v"'), volume);
  await expect.poll(() => behind(page)).toBe('');
  const names = fetched.map((path) => path.replace(/^.*\/|\..*$/g, ''));
  expect(names).toContain('proportion');
  expect(names).not.toContain('water-hardness');

  await watchWrites();
  // Well ahead: a clock is not stopped in its past.
  await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 60_000);
  for (let key = 0; key < 9; key++) {
    await count.fill(String(2 + key));
    await page.clock.runFor(key < 8 ? 250 : 999);
  }
  expect(await writesOf(volume)).toBeGreaterThan(8);
  expect(await behind(page)).toContain('shapes.count');
  expect(await writesOf(cement)).toBe(0);
  await page.clock.runFor(1);
  await page.clock.resume();
  await expect.poll(() => writesOf(cement)).toBeGreaterThan(0);
  await expect.poll(() => behind(page)).toBe('');
  expect(opened.complaints).toEqual([]);
});

test('of two worksheets worked in within a moment, the last takes over once', async () => {
  const page = await open('mix/proportion/');
  const cement = 'suds.kept.1.mix.cement';
  const kept = () => page.evaluate((key) => localStorage.getItem(key), cement);
  await page.locator('#proportion-waterCement').fill('0.5');
  await expect.poll(kept).toContain('"by":"proportion"');
  await page.clock.runFor(1500);
  await expect.poll(() => behind(page)).toBe('');
  await watchWrites();
  await page.evaluate(async () => {
    document.getElementById('proportion-counts-total')?.click();
    await new Promise((resolve) => setTimeout(resolve, 150));
    document.getElementById('batch-filler-some')?.click();
  });
  await expect.poll(kept).toContain('"by":"batch"');
  await page.clock.runFor(1500);
  await expect.poll(() => behind(page)).toBe('');
  await turns(page);
  expect(await kept()).toContain('"by":"batch"');
  expect(await writesOf(cement)).toBeLessThanOrEqual(3);
});
