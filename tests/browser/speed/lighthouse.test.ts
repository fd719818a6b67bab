import { type LaunchedChrome, launch } from 'chrome-launcher';
import lighthouse from 'lighthouse';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { LEAST_SCORE } from '../../../scripts/site/rules/speed.mjs';
import { openPage, site } from '../browser.ts';
import { browserPath, FLAGS } from '../chromium.ts';
import { slowdown } from './pace.ts';

const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'] as const;
/** Other work on the machine is no fault of the page: the best of so many tries counts, each at its pace by then. */
const TRIES = 3;

/** Each kind of page: home, the guided path, a chapter page with a worksheet, the records. */
const PAGES = ['', 'first-batch/', 'foam/weighing/', 'batch-records/'] as const;

describe('Lighthouse, as on a phone', () => {
  let chrome: LaunchedChrome;
  beforeAll(async () => {
    chrome = await launch({
      chromePath: await browserPath(),
      chromeFlags: ['--headless', ...FLAGS],
    });
  });
  afterAll(() => chrome.kill());

  test.each(PAGES)('/%s', { timeout: 180_000 }, async (path) => {
    const best: Record<string, number> = {};
    for (let tries = 0; tries < TRIES; tries++) {
      const opened = await openPage('');
      const cpuSlowdownMultiplier = await slowdown(opened.page);
      await opened.close();
      const run = await lighthouse(`${site.url}${path}`, {
        port: chrome.port,
        output: 'json',
        logLevel: 'error',
        onlyCategories: [...CATEGORIES],
        disableFullPageScreenshot: true,
        throttling: { cpuSlowdownMultiplier },
      });
      for (const name of CATEGORIES)
        best[name] = Math.max(best[name] ?? 0, run?.lhr.categories[name]?.score ?? 0);
      if (CATEGORIES.every((name) => best[name]! >= LEAST_SCORE)) break;
    }
    if (process.env.TELL) console.log(`LIGHTHOUSE /${path} ${JSON.stringify(best)}`);
    for (const name of CATEGORIES) expect(best[name], name).toBeGreaterThanOrEqual(LEAST_SCORE);
  });
});
