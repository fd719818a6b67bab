import { afterEach, expect, test } from 'vitest';
import { type Opened, openPage, wakeWorksheets } from './browser.ts';

let opened: Opened;
afterEach(() => opened.close());

async function open(path: string) {
  opened = await openPage(path);
  await wakeWorksheets(opened.page);
  return opened.page;
}

/** From now on, what is written to storage, and when. */
const watchWrites = () =>
  opened.page.evaluate(() => {
    const writes: [key: string, at: number][] = [];
    const write = Storage.prototype.setItem;
    Storage.prototype.setItem = function (key, value) {
      writes.push([key, performance.now()]);
      write.call(this, key, value);
    };
    Object.assign(window, { writes });
  });
const writesOf = (key: string) =>
  opened.page.evaluate(
    (key) =>
      (window as unknown as { writes: [string, number][] }).writes
        .filter(([written]) => written === key)
        .map(([, at]) => at),
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

  const behind = () =>
    page.evaluate(
      () => Object.keys(localStorage).filter((key) => key.startsWith('suds.behind')).length,
    );
  await expect.poll(behind).toBe(0);

  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(new URL(request.url()).pathname));
  await opened.go('placing/how-much/');
  await wakeWorksheets(page);
  await watchWrites();
  const count = page.locator('#shapes-count');
  for (let key = 0; key < 9; key++) {
    await count.fill(String(2 + key));
    await page.waitForTimeout(250);
  }
  const lastKey = await page.evaluate(() => performance.now());
  await expect.poll(async () => (await writesOf(cement)).length).toBeGreaterThan(0);
  expect((await writesOf(cement)).filter((at) => at < lastKey)).toEqual([]);
  await expect.poll(behind).toBe(0);

  const names = fetched.map((path) => path.replace(/^.*\/|\..*$/g, ''));
  expect(names).toContain('proportion');
  expect(names).not.toContain('water-hardness');
  expect(opened.complaints).toEqual([]);
});

test('of two worksheets worked in within a moment, the last takes over once', async () => {
  const page = await open('mix/proportion/');
  await page.locator('#proportion-waterCement').fill('0.5');
  await page.waitForTimeout(1500);
  await watchWrites();
  await page.evaluate(async () => {
    document.getElementById('proportion-counts-total')?.click();
    await new Promise((resolve) => setTimeout(resolve, 150));
    document.getElementById('batch-filler-some')?.click();
  });
  await page.waitForTimeout(1500);
  const cement = 'suds.kept.1.mix.cement';
  expect(await page.evaluate((key) => localStorage.getItem(key), cement)).toContain('"by":"batch"');
  expect((await writesOf(cement)).length).toBeLessThanOrEqual(3);
});
