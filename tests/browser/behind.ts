import type { Page } from 'playwright-core';

/** What has changed, and what other pages keep has not followed yet; '' for nothing. */
export const behind = (page: Page): Promise<string> =>
  page.evaluate(() =>
    Object.keys(localStorage)
      .filter((key) => key.startsWith('suds.behind'))
      .map((key) => localStorage.getItem(key))
      .join(' '),
  );
