import { afterEach, expect, test } from 'vitest';
import { behind } from './behind.ts';
import { type Opened, openPage, wakeWorksheets } from './browser.ts';
import { turns } from './turns.ts';

let opened: Opened;
afterEach(() => opened.close());

async function open(path: string) {
  opened = await openPage(path);
  await wakeWorksheets(opened.page);
  return opened.page;
}

test('a row put back goes among the rows as they are by then', async () => {
  const page = await open('mix/correct/');
  const full = (at: number) => page.locator(`#correct-buckets-buckets-${at}-full`);
  const before = await full(0).inputValue();
  const second = await full(1).inputValue();
  await page.getByRole('button', { name: 'Remove bucket 1' }).click();
  await expect.poll(() => full(0).inputValue()).toBe(second);
  await full(0).fill('12.34');
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect.poll(() => full(0).inputValue()).toBe(before);
  expect(await full(1).inputValue()).toBe('12.34');
  // Again by key, from wherever nothing is being typed.
  await page.getByRole('button', { name: 'Remove bucket 1' }).press('Enter');
  await expect.poll(() => full(0).inputValue()).toBe('12.34');
  await page.locator('#content').focus();
  await page.keyboard.press('Control+z');
  await expect.poll(() => full(0).inputValue()).toBe(before);
});

test('rows of the example stay the example’s beside one that was removed or added', async () => {
  const page = await open('mix/correct/');
  const marks = () =>
    page
      .locator('#correct-buckets-buckets .field')
      .evaluateAll((fields) => fields.map((field) => (field as HTMLElement).dataset.origin));
  const shown = () => page.locator('#correct-buckets-buckets .field .origin:visible').count();
  await page.getByRole('button', { name: 'Remove bucket 1' }).click();
  await expect.poll(async () => (await marks()).length).toBe(4);
  expect(new Set(await marks())).toEqual(new Set(['example']));
  expect(await shown()).toBe(4);
  await page.getByRole('button', { name: 'Add another bucket' }).click();
  await expect.poll(shown).toBe(6);
  await page.locator('#correct-buckets-buckets-1-full').fill('12.34');
  await expect
    .poll(marks)
    .toEqual(['example', 'example', 'yours', 'example', 'example', 'example']);

  // What is kept of it is told for the example’s, until every piece is the reader’s.
  await opened.go('first-batch/');
  await wakeWorksheets(page);
  await page.getByRole('button', { name: 'Add another piece' }).click();
  const count = () => page.evaluate(() => localStorage.getItem('suds.kept.1.batch.count'));
  await expect.poll(count).toContain('"v":24');
  expect(await count()).toContain('"example":true');
});

test('a row added by key has the focus, the last there may be too', async () => {
  const page = await open('water/blending/');
  const add = page.getByRole('button', { name: 'Add another water' });
  const focused = () => page.evaluate(() => document.activeElement?.id);
  const list = page.locator('#blend-waters-further');
  const rows = list.locator('> ol > li');
  await page.locator('#blend-waters-more-more').check();
  await add.waitFor();
  while (await add.count()) {
    const before = await rows.count();
    await add.press('Enter');
    await expect.poll(focused).toBe(`blend-waters-further-${before}-hardness`);
  }
  // Where it was led to is seen.
  await page.getByRole('button', { name: 'Remove water 1' }).press('Enter');
  await expect.poll(focused).toBe('blend-waters-further');
  expect(await list.evaluate((it) => getComputedStyle(it).outlineStyle)).toBe('solid');
});

test('readings put back leave alone what was typed since', async () => {
  const page = await open('foam/weighing/');
  const [full, tare] = ['full', 'tare'].map((name) => page.locator(`#foam-density-${name}`));
  await full!.fill('2.6');
  await tare!.fill('0.9');
  await page.getByRole('button', { name: 'Back to the example' }).first().click();
  await expect.poll(() => tare!.inputValue()).toBe('0.85');
  await tare!.fill('0.95');
  await page.getByRole('button', { name: 'Put my readings back' }).click();
  await expect.poll(() => full!.inputValue()).toBe('2.6');
  expect(await tare!.inputValue()).toBe('0.95');
});

test('a key that undoes nothing of what the page put into a field leaves it whose it was', async () => {
  const page = await open('foam/weighing/');
  const full = page.locator('#foam-density-full');
  const origin = () => page.locator('.field', { has: full }).getAttribute('data-origin');
  const kept = () => page.evaluate(() => localStorage.getItem('suds.bench.1.foam-density.full'));
  const type = async () => {
    await full.focus();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('2.61234');
  };
  await type();
  await page.getByRole('button', { name: 'Back to the example' }).first().click();
  await expect.poll(origin).toBe('example');
  await full.focus();
  await page.keyboard.press('Control+z');
  await turns(page);
  expect([await origin(), await full.inputValue(), await kept()]).toEqual([
    'example',
    '2.45',
    null,
  ]);

  await type();
  await page.locator('#foam-density-full + select').selectOption('lb');
  await expect.poll(() => full.inputValue()).toBe('5.7592');
  await full.focus();
  await page.keyboard.press('Control+z');
  await turns(page);
  // As it was typed, to the last digit.
  expect(await kept()).toContain('"t":"2.61234"');
});

test('two worksheets put back to the example can both be had back', async () => {
  const page = await open('mix/proportion/');
  const [density, volume] = [page.locator('#proportion-wetDensity'), page.locator('#batch-volume')];
  await density.fill('500');
  await volume.fill('33');
  for (const sheet of ['proportion', 'batch'])
    await page
      .locator(`[data-worksheet="${sheet}"]`)
      .getByRole('button', { name: 'Back to the example' })
      .click();
  await expect.poll(() => volume.inputValue()).not.toBe('33');
  const back = page.getByRole('button', { name: 'Put my readings back' });
  expect(await back.count()).toBe(2);
  await back.first().click();
  await back.first().click();
  await expect.poll(() => density.inputValue()).toBe('500');
  await expect.poll(() => volume.inputValue()).toBe('33');
});

test('what other pages have kept follows a change, and waits where that leaves no answer', async () => {
  const page = await open('first-batch/');
  await page.locator('#proportion-waterCement').fill('0.4');
  const kept = (key: string) => page.evaluate((k) => localStorage.getItem(`suds.kept.1.${k}`), key);
  await expect.poll(() => kept('mix.cement')).toContain('"v"');
  const before = JSON.parse((await kept('mix.cement'))!).v;

  await opened.go('placing/how-much/');
  await wakeWorksheets(page);
  await page.locator('#shapes-count').fill('1');
  await expect.poll(async () => JSON.parse((await kept('mix.cement'))!).v).toBeLessThan(before / 2);
  await page.locator('#shapes-count').fill('');
  await expect.poll(() => kept('mix.cement')).toContain('"waits":true');
  // Left at once, it follows on the next page.
  await page.locator('#shapes-count').fill('2');
  await expect.poll(() => kept('batch.volume')).toContain('"v"');
  await opened.go('foam/weighing/');
  await wakeWorksheets(page);
  await expect.poll(() => kept('mix.cement')).toContain('"v"');
});

test('a reading that two worksheets share leaves what is kept with the one that is worked on', async () => {
  const page = await open('mix/proportion/');
  const planned = () => page.evaluate(() => localStorage.getItem('suds.kept.1.mix.planned'));
  await page.locator('#proportion-wetDensity').fill('500');
  await expect.poll(planned).toContain('"v":500');
  const cement = () => page.evaluate(() => localStorage.getItem('suds.kept.1.mix.cement'));
  const first = await cement();
  await page.locator('#proportion-waterCement').fill('0.45');
  await expect.poll(cement).not.toBe(first);
  const before = await cement();
  // What other worksheets are to do about it is done.
  await expect.poll(() => behind(page)).toBe('');
  await turns(page);
  expect(await planned()).toContain('"v":500');
  expect(await planned()).toContain('"by":"proportion"');
  expect(await cement()).toContain('"by":"proportion"');
  expect(await cement()).toBe(before);
  await page.locator('#batch-wetDensity').fill('700');
  await expect.poll(planned).toContain('"by":"batch"');
});

test('a batch sized by shapes is that batch again after the bench was cleared and put back, and in a link', async () => {
  const page = await open('placing/how-much/');
  await page.locator('#shapes-count').fill('3');
  const kept = () => page.evaluate(() => localStorage.getItem('suds.kept.1.batch.volume'));
  await expect.poll(kept).toContain('"v"');
  const volume = () => page.locator('#proportion-volume').inputValue();
  await opened.go('first-batch/');
  await wakeWorksheets(page);
  const sized = await volume();
  await page.getByRole('button', { name: 'Clear the bench' }).click();
  await expect.poll(volume).not.toBe(sized);
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect.poll(volume).toBe(sized);

  await page.evaluate(() => {
    Object.defineProperty(navigator, 'clipboard', { value: { writeText: () => Promise.reject() } });
  });
  await page.getByRole('button', { name: 'Copy a link' }).click();
  const said = await page.locator('.copied').innerText();
  const link = /#batch=\S+/.exec(said)?.[0] ?? '';
  // Another reader follows it: nothing of this page is left.
  await opened.go('glossary/');
  await page.evaluate(() => localStorage.clear());
  await opened.go(`first-batch/${link}`);
  await wakeWorksheets(page);
  await expect.poll(volume).toBe(sized);
});
