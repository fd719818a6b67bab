import { describe } from 'vitest';
import { openPage } from '../browser.ts';
import { leave, listed, rows, slabs, test } from '../records.ts';
import { slowness } from './pace.ts';

describe('many batches', () => {
  test('500 are loaded and listed in less than 200 ms', async ({ expect, page }) => {
    await leave(
      page,
      Array.from({ length: 500 }, (_, i) =>
        slabs(`b${i}`, { notes: 'As written down at the bench. '.repeat(10) }),
      ),
    );
    const times: number[] = [];
    for (let i = 0; i < 3; i++) {
      await page.reload();
      await listed(page);
      expect(await rows(page).count()).toBe(500);
      times.push(
        await page.evaluate(() => performance.getEntriesByName('batches-listed')[0]!.duration),
      );
    }
    // A load may fall on a busy moment; the page is as fast as its best run shows, at the pace of the machine
    // that the budget was set on.
    const home = await openPage('');
    const least = Math.min(...times) / (await slowness(home.page));
    await home.close();
    if (process.env.TELL)
      console.log(`LISTED ${Math.min(...times).toFixed(0)} ms, ${least.toFixed(0)}`);
    expect(least).toBeLessThan(200);
    expect(Math.min(...times)).toBeGreaterThan(0);
  });
});
