import { expect, test } from 'vitest';
import { openPage, site, wakeWorksheets } from './browser.ts';

test('home prints on one page', async () => {
  const { page, close } = await openPage('');
  for (const format of ['A4', 'Letter']) {
    const pdf = (await page.pdf({ format })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g), format).toHaveLength(1);
  }
  await close();
});

test('each step at the bench prints on one page, without the clock that runs only on the screen', async () => {
  const { page, close } = await openPage('bench/run/');
  await page.getByRole('button', { name: 'Begin a batch' }).click();
  const clocks = page.locator('.foam-clock');
  let running = 0;
  for (let step = 0; step < 5; step++) {
    if (step) await page.locator('.run-turn').getByRole('button', { name: /^Next/ }).click();
    await page.locator(`[data-run="${step}"]`).waitFor();
    running += await clocks.count();
    for (const format of ['A4', 'Letter']) {
      const pdf = (await page.pdf({ format })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page\b/g), `${step} on ${format}`).toHaveLength(1);
    }
    await page.emulateMedia({ media: 'print' });
    expect(await clocks.filter({ visible: true }).count(), `clock of ${step}`).toBe(0);
    await page.emulateMedia({ media: null });
  }
  expect(running).toBeGreaterThan(2);
  await close();
});

test('a worksheet prints without boxes for fingers, and its results fill the page they begin on', async () => {
  const { page, close } = await openPage('foam/solution/');
  await wakeWorksheets(page);
  const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(3);
  await close();
});

test('no button prints, on a record of a batch either, and no row of the list is parted', async () => {
  const { page, close } = await openPage('batch-records/');
  await page.getByRole('button', { name: 'Load six invented batches' }).click();
  await page.locator('.records-list a').first().waitFor();
  await page.emulateMedia({ media: 'print' });
  const broken = await page
    .locator('.records-list > li')
    .evaluateAll((all) => all.filter((e) => getComputedStyle(e).breakInside !== 'avoid').length);
  expect(broken).toBe(0);
  await page.emulateMedia({ media: null });
  await page.locator('.records-list a').first().click();
  await page.locator('.record').waitFor();
  const buttons = page.locator('button:visible, .file-button:visible');
  expect(await buttons.count()).toBeGreaterThan(3);
  await page.emulateMedia({ media: 'print' });
  expect(await buttons.allInnerTexts()).toEqual([]);
  await close();
});

test('what to have at hand and the washing up print with the check list', async () => {
  const { page, close } = await openPage('safety/setting-up/');
  await page.emulateMedia({ media: 'print' });
  for (const part of ['#at-hand', '#at-hand ~ * td', '.check-list', '#washing-up ~ ol'])
    expect(await page.locator(part).first().isVisible(), part).toBe(true);
  await close();
});

test('a browser that cannot show the inside of a closed fold on paper opens it', async () => {
  const { page, close } = await openPage('');
  await page.addInitScript(() => {
    CSS.supports = () => false;
  });
  await page.goto(new URL('checks/water/', site.url).href);
  const shut = page.locator('.check-table:not([open])');
  await page.waitForLoadState('networkidle');
  expect(await shut.count()).toBeGreaterThan(0);
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  expect(await shut.count()).toBe(0);
  await close();
});

test('what was typed prints whole, without the ring round the box it was typed in', async () => {
  const { page, close } = await openPage('finished-part/bubbles/');
  await page.emulateMedia({ media: 'print' });
  const lines = await page
    .locator('.lines textarea')
    .first()
    .evaluate((e) => [e.scrollHeight, e.clientHeight]);
  expect(lines[0]).toBeLessThanOrEqual(lines[1]!);
  const box = page.locator('.entry > input').first();
  await box.fill('10.2 + 3.45 + 0.35 + 1 mm');
  expect(await box.evaluate((e) => e.scrollWidth - e.clientWidth)).toBeLessThanOrEqual(1);
  expect(await box.evaluate((e) => getComputedStyle(e).outlineStyle)).toBe('none');
  await close();
});

test('of many cautions beside a worksheet, some stand where those before them leave room', async () => {
  const { page, close } = await openPage('mix/proportion/');
  await wakeWorksheets(page);
  await page.emulateMedia({ media: 'print' });
  const kept = await page
    .locator('.beside > .caution + .caution')
    .evaluateAll((all) => all.map((e) => getComputedStyle(e).breakBefore));
  expect(kept.length).toBeGreaterThan(4);
  expect(new Set(kept)).toEqual(new Set(['auto']));
  await close();
});
