import { describe } from 'vitest';
import { batchPage, leave, slabs, test, visit } from './records.ts';

const crush = { t: '30', u: 'MPa', s: 'metric' } as const;

describe.concurrent('what looks at strengths', () => {
  for (const path of [batchPage('a'), 'batch-records/compare/'])
    test(`where it does not arrive, that is said: ${path}`, async ({ expect, opened, page }) => {
      await leave(page, [slabs('a', { readings: { ...slabs('a').readings, crush } })]);
      const looks = page.locator('.verdict.look');
      await visit(page, path, '.verdict.look');
      await expect.poll(() => looks.count()).toBe(1);
      const before = await looks.innerText();
      expect(before).not.toContain('did not arrive');
      await page.route('**/_astro/record-strength-doubts*', (route) => route.abort());
      await visit(page, path, '.verdict.look');
      await expect.poll(() => looks.innerText()).toContain('did not arrive');
      opened.complaints.length = 0;
    });
});

test('charts that do not arrive are said to be missing', async ({ expect, opened, page }) => {
  await leave(page, [slabs('a'), slabs('b')]);
  await visit(page, 'batch-records/compare/', '.compare table');
  const notices = page.locator('#notices');
  expect(await notices.innerText()).not.toContain('charts');
  await page.route('**/_astro/LandingChart*', (route) => route.abort());
  await visit(page, 'batch-records/compare/', '.compare table');
  await expect.poll(() => notices.innerText()).toContain('its charts are missing');
  opened.complaints.length = 0;
});
