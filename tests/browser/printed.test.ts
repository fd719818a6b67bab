import { expect, test } from 'vitest';
import { openPage } from './browser.ts';

test('home prints on one page', async () => {
  const { page, close } = await openPage('');
  for (const format of ['A4', 'Letter']) {
    const pdf = (await page.pdf({ format })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g), format).toHaveLength(1);
  }
  await close();
});

test('the first step at the bench prints on one page', async () => {
  const { page, close } = await openPage('bench/run/');
  await page.getByRole('button', { name: 'Begin a batch' }).click();
  await page.locator('[data-run="0"]').waitFor();
  const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  await close();
});

test('what to have at hand and the washing up print with the check list', async () => {
  const { page, close } = await openPage('safety/setting-up/');
  await page.emulateMedia({ media: 'print' });
  for (const part of ['#at-hand', '#at-hand ~ * td', '.check-list', '#washing-up ~ ol'])
    expect(await page.locator(part).first().isVisible(), part).toBe(true);
  await close();
});
