import { afterEach, expect, test } from 'vitest';
import { type Opened, openPage, wakeWorksheets } from './browser.ts';
import { visit } from './records.ts';

let opened: Opened;
afterEach(async () => {
  expect(opened.complaints).toEqual([]);
  await opened.close();
});

test('on a phone each step shows its first field on the first screen, and its cautions beneath', async () => {
  opened = await openPage('bench/run/', { width: 360, height: 740 });
  const { page } = opened;
  await page.getByRole('button', { name: 'Begin a batch' }).click();
  for (const step of [0, 1, 2, 3, 4]) {
    await page.locator(`[data-run="${step}"]`).waitFor();
    const field = page.locator('.run input').first();
    await expect
      .poll(() => field.evaluate((input) => input.getBoundingClientRect().bottom), {
        message: `step ${step + 1}`,
      })
      .toBeLessThanOrEqual(740);
    // What the harms are stands above it all the same.
    const harms = (await page.locator('.run-harms').boundingBox())!;
    expect(harms.y).toBeGreaterThanOrEqual(0);
    expect(harms.y).toBeLessThan((await field.boundingBox())!.y);
    const cautions = (await page.locator('#run-cautions').boundingBox())!;
    expect(cautions.y).toBeGreaterThan((await field.boundingBox())!.y);
    // A fraction or a sum may be typed there.
    for (const input of await page.locator('.run .entry > input').all()) {
      await input.fill('10.2 + 9.8');
      const cut = await input.evaluate((box) => box.scrollWidth > box.clientWidth);
      expect(cut, `step ${step + 1}: ${await input.getAttribute('id')}`).toBe(false);
      // Its ± stands beside it, not on a line of its own.
      const below = await input.evaluate((box) => {
        const sure = box.parentElement!.querySelector('.plus-minus');
        return sure && sure.getBoundingClientRect().top > box.getBoundingClientRect().bottom;
      });
      expect(below, `step ${step + 1}: ± of ${await input.getAttribute('id')}`).toBeFalsy();
      await input.fill('');
    }
    if (step < 4) await page.getByRole('button', { name: /^Next/ }).click();
  }
});

test('and so does the base mix of a plan with pigment and fibre', async () => {
  opened = await openPage('mix/proportion/', { width: 360, height: 740 });
  const { page } = opened;
  await page.evaluate(() => {
    for (const [key, entry] of Object.entries({
      'batch.volume': { t: '40', u: 'L', s: 'metric' },
      'fibre.kind': { t: 'polypropylene' },
      'pigment.share': { t: '3', u: '%', s: 'metric' },
    }))
      localStorage.setItem(`suds.bench.1.${key}`, JSON.stringify(entry));
  });
  await page.reload();
  await wakeWorksheets(page);
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem('suds.kept.1.mix.cement')))
    .toContain('"by":"batch"');
  await visit(page, 'bench/run/', '[data-run="begin"]');
  await page.getByRole('button', { name: 'Begin a batch' }).click();
  await page.locator('[data-run="0"]').waitFor();
  const words = (await page.locator('.run').innerText()).replaceAll('\u00a0', ' ');
  expect(words).toMatch(/pigment, \d+ g, stirred into it.*Fibre last, \d+\.?\d* g:/s);
  const field = (await page.locator('.run input').first().boundingBox())!;
  expect(field.y + field.height).toBeLessThanOrEqual(740);
});
