import type { Page } from 'playwright-core';
import { test as base, describe, expect } from 'vitest';
import { type Opened, openPage, site, wakeWorksheets } from './browser.ts';
import { text } from './records.ts';

/** Each test has a window of its own, in which scripts of the site can be cut off. */
const test = base.extend<{ opened: Opened; page: Page; cut: (script: string) => Promise<unknown> }>(
  {
    // biome-ignore lint/correctness/noEmptyPattern: fixtures name what they need
    opened: async ({}, use) => {
      const opened = await openPage('chapters/', { width: 360, height: 640 });
      await use(opened);
      await opened.close();
    },
    page: ({ opened }, use) => use(opened.page),
    cut: ({ opened }, use) =>
      use((script) => opened.page.route(`**/_astro/${script}.*.js`, (route) => route.abort())),
  },
);
const notices = (on: Page) => on.locator('#notices').innerText();
const NOT_DONE = 'what you asked for is not done';

describe.concurrent('a script that every page has', () => {
  for (const script of ['Wake', 'Site'])
    test(`is missed where it fails: ${script}`, async ({ expect, opened, cut }) => {
      await cut(script);
      await opened.go('first-batch/');
      await expect.poll(() => notices(opened.page)).toContain('has not arrived');
    });

  test('is said to be missing beside what else is said, and once', async ({
    expect,
    opened,
    page,
    cut,
  }) => {
    await cut('Wake');
    await cut('search');
    await page.clock.install();
    await opened.go('mix/proportion/');
    await page.locator('[data-search-open]').click();
    await page.clock.fastForward('00:20');
    const said = page.locator('#notices > *');
    await expect.poll(() => said.count()).toBe(2);
    expect(await said.first().innerText()).toContain('it may show its example');
    expect(await said.last().innerText()).toContain(NOT_DONE);
  });

  test('is missed where it hangs, until it comes', async ({ expect, opened, page }) => {
    const { promise, resolve } = Promise.withResolvers<void>();
    await opened.page.route('**/_astro/Wake.*.js', async (route) => {
      await promise;
      await route.continue();
    });
    await page.clock.install();
    await page.goto(new URL('first-batch/', site.url).href, { waitUntil: 'commit' });
    await page.locator('.foot').waitFor();
    expect(await notices(page)).toBe('');
    await page.clock.fastForward('00:20');
    await expect.poll(() => notices(page)).toContain('has not arrived');
    resolve();
    await expect.poll(() => notices(page)).toBe('');
  });

  test('is missed no more once a part of the page is missed', async ({
    expect,
    opened,
    page,
    cut,
  }) => {
    await cut('mount');
    const { promise, resolve } = Promise.withResolvers<void>();
    await opened.page.route('**/_astro/Wake.*.js', async (route) => {
      await promise;
      await route.continue();
    });
    await page.clock.install();
    await page.goto(new URL('mix/proportion/', site.url).href, { waitUntil: 'commit' });
    await page.locator('.foot').waitFor();
    await page.clock.fastForward('00:20');
    await expect.poll(() => notices(page)).toContain('it may show its example');
    resolve();
    await page.locator('#proportion-volume').fill('33');
    await page.getByRole('button', { name: 'Load the page again' }).waitFor();
    expect(await page.locator('#notices > *').count()).toBe(1);
  });

  test('is missed where something that blocks scripts breaks it', async ({
    expect,
    opened,
    page,
  }) => {
    await opened.context.addInitScript(() => {
      window.IntersectionObserver = undefined as never;
    });
    await page.clock.install();
    await opened.go('first-batch/');
    await page.clock.fastForward('00:20');
    await expect.poll(() => notices(page)).toContain('it may show its example');
  });

  test('is not missed where it came', async ({ expect, opened, page }) => {
    await page.clock.install();
    for (const path of ['first-batch/', 'glossary/']) {
      await opened.go(path);
      // What has not come by the jump would rightly be missed.
      await wakeWorksheets(page);
      await page.waitForLoadState('networkidle');
      await page.clock.fastForward('00:20');
      expect(await notices(page)).toBe('');
    }
  });
});

describe.concurrent('what is fetched once it is asked for', () => {
  test('to save a batch, which asks for no name then', async ({ expect, opened, page, cut }) => {
    await cut('save-batch');
    await opened.go('mix/proportion/');
    await wakeWorksheets(page);
    await page.locator('.worksheet input[type="text"]').first().fill('33');
    await page.locator('[data-save-batch]').click();
    await expect.poll(() => notices(page)).toContain(NOT_DONE);
    expect(await page.locator('dialog[open]').count()).toBe(0);
  });

  test('to search', async ({ expect, opened, page, cut }) => {
    await cut('search');
    await opened.go('glossary/');
    await page.locator('[data-search-open]').click();
    await expect.poll(() => notices(page)).toContain(NOT_DONE);
    // A dialog that stayed open would cover it.
    await expect.poll(() => page.locator('dialog[open]').count()).toBe(0);
  });

  test('to read a log', async ({ expect, opened, page, cut }) => {
    await cut('logger-file');
    await opened.go('curing/temperature-and-age/');
    await wakeWorksheets(page);
    await page.locator('#log-text').fill('0 20\n1 21');
    await expect.poll(() => notices(page)).toContain(NOT_DONE);
  });

  test('for the invented batches', async ({ expect, opened, page, cut }) => {
    await cut('demo-batches');
    await opened.go('batch-records/');
    await page.getByRole('button', { name: 'Load six invented batches' }).click();
    await expect.poll(() => notices(page)).toContain(NOT_DONE);
  });

  test('for what was set aside, which can be asked for again', async ({
    expect,
    opened,
    page,
    cut,
  }) => {
    await cut('take-aside');
    await page.evaluate(() => localStorage.setItem('suds.bench.1.mix.settling', 'spoilt'));
    await opened.go('mix/proportion/');
    await wakeWorksheets(page);
    const take = page.getByRole('button', { name: 'Take out what was set aside' });
    await take.click();
    await expect.poll(() => notices(page)).toContain(NOT_DONE);
    expect(await take.count()).toBe(1);
  });

  test('is not a batch that nothing else holds', async ({ expect, opened, page }) => {
    await opened.context.addInitScript(() =>
      Object.defineProperty(window, 'indexedDB', {
        get: () => {
          throw new DOMException('denied', 'SecurityError');
        },
      }),
    );
    await opened.go('bench/run/');
    await page.getByRole('button', { name: 'Begin a batch' }).click();
    const take = page.getByRole('button', { name: 'Take it out as a file' });
    await take.waitFor();
    await opened.page.route('**/_astro/**', (route) => route.abort());
    const taking = page.waitForEvent('download');
    await take.click();
    expect(JSON.parse(await text(await taking)).batches).toHaveLength(1);
  });
});

test('a store that refuses whatever is asked of it is none, and the page computes', async ({
  expect,
  opened,
  page,
}) => {
  await opened.context.addInitScript(() => {
    for (const name of ['getItem', 'setItem', 'removeItem'] as const)
      Storage.prototype[name] = () => {
        throw new DOMException('blocked', 'SecurityError');
      };
  });
  await opened.go('mix/proportion/');
  const answer = page.locator('.result.answer').first();
  const before = await answer.innerText();
  await page.locator('#proportion-volume').fill('33');
  await expect.poll(() => answer.innerText()).not.toBe(before);
  expect(await notices(page)).toContain('refused to store');
});

/** Types before any part of the page is awake, and lets them wake then. */
async function typeEarly({ opened, page }: { opened: Opened; page: Page }) {
  const { promise, resolve } = Promise.withResolvers<void>();
  await opened.page.route('**/_astro/mount.*.js', async (route) => {
    await promise;
    await route.fallback();
  });
  await opened.go('mix/proportion/');
  await page.locator('.field:has(#proportion-volume) .unit').selectOption('mL');
  await page.locator('#proportion-volume').fill('33000');
  resolve();
}

async function isThere({ page }: { page: Page }) {
  await expect.poll(() => page.locator('#proportion-volume').inputValue()).toBe('33000');
  await expect
    .poll(() => page.evaluate(() => Object.values(localStorage).join()))
    .toMatch(/"t":"33000","u":"mL"/);
}

for (const script of ['mount', 'typed-early'])
  test(`what was typed early is there when the page is loaded again, where a script did not come: ${script}`, async ({
    opened,
    page,
    cut,
  }) => {
    await cut(script);
    await typeEarly({ opened, page });
    const again = page.getByRole('button', { name: 'Load the page again' });
    await again.waitFor();
    await opened.page.unrouteAll();
    await again.click();
    await again.waitFor({ state: 'detached' });
    await wakeWorksheets(page);
    await isThere({ page });
  });

test('what takes up what was typed early is fetched where there is any', async ({
  expect,
  opened,
  page,
}) => {
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url()));
  const isFetched = () => fetched.some((url) => url.includes('/typed-early.'));
  // Boxes to tick, a slider, choices, and much that is typed.
  for (const path of ['', 'safety/setting-up/', 'demoulding/lifting-points/', 'mix/how-close/']) {
    await opened.go(path);
    await wakeWorksheets(page);
  }
  expect(isFetched()).toBe(false);
  await typeEarly({ opened, page });
  await isThere({ page });
  expect(isFetched()).toBe(true);
});

test('a page that Back brings as it was follows the units and the colours chosen since', async ({
  expect,
  opened,
  page,
}) => {
  await opened.go('foam/lasting/');
  const before = await page.locator('.amount').first().innerText();
  await page.evaluate(() => {
    localStorage.setItem('suds.units', 'us');
    localStorage.setItem('suds.theme', 'dark');
    dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true }));
  });
  expect(await page.locator('[data-units]').innerText()).toBe('Units: US');
  expect(await page.locator('[data-theme-turn]').innerText()).toBe('Light');
  expect(await page.locator('html').getAttribute('data-theme')).toBe('dark');
  expect(await page.locator('.amount').first().innerText()).not.toBe(before);
});

test('a notice too long for a low window is read from its beginning', async ({
  expect,
  opened,
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 330 });
  await opened.go('mix/proportion/');
  await wakeWorksheets(page);
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await page.locator('.worksheet input[type="text"]').first().fill('33');
  const notice = page.locator('#notices > :last-child');
  await notice.waitFor();
  const [place, words] = await page
    .locator('#notices, #notices > :last-child > p')
    .evaluateAll((all) => all.map((box) => box.getBoundingClientRect()));
  expect(await page.locator('#notices').evaluate((e) => e.scrollHeight > e.clientHeight)).toBe(
    true,
  );
  expect(words!.top).toBeGreaterThanOrEqual(place!.top);
});
