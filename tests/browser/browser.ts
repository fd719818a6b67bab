import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, inject } from 'vitest';
import { startBrowser } from './chromium.ts';

/** The site under test. */
export const site = inject('site');

let starting: Promise<Browser> | undefined;

/** The browser of this file's tests: their own, for one shared by all files is spoken to through a server. */
function ownBrowser(): Promise<Browser> {
  starting ??= startBrowser();
  return starting;
}
afterAll(async () => (await starting)?.close());

export interface Opening {
  theme?: 'light' | 'dark';
  width?: number;
  height?: number;
  /** False: as with scripts switched off. */
  javaScript?: boolean;
  /** False: without the service worker, so that no page waits for it to fill its cache. */
  offline?: boolean;
  /** True: a phone's screen, touched with a finger. */
  touch?: boolean;
  /** Another address than the tested site's, with its base path. */
  at?: string;
}

/** A page of the site, with all it complained of and all it asked elsewhere for. */
export interface Opened {
  page: Page;
  context: BrowserContext;
  /** Console errors and warnings, uncaught errors, requests off the origin, failed requests. */
  complaints: string[];
  /** Goes to another page of the site, in the same context. */
  go(path: string): Promise<void>;
  close(): Promise<void>;
}

/** Opens a page of the site, given by its path from the base path on, in a context of its own. */
export async function openPage(path: string, opening: Opening = {}): Promise<Opened> {
  const { theme = 'light', width = 1280, height = 900, javaScript = true } = opening;
  const address = opening.at ?? site.url;
  const browser = await ownBrowser();
  const context = await browser.newContext({
    colorScheme: theme,
    viewport: { width, height },
    javaScriptEnabled: javaScript,
    serviceWorkers: opening.offline ? 'allow' : 'block',
    locale: 'en-GB',
    reducedMotion: 'reduce',
    hasTouch: opening.touch ?? false,
    isMobile: opening.touch ?? false,
  });
  const complaints: string[] = [];
  const origin = new URL(address).origin;
  context.on('request', (request) => {
    const url = new URL(request.url());
    if (/^https?:$/.test(url.protocol) && url.origin !== origin) {
      complaints.push(`asked another host: ${url.href}`);
    }
  });
  const page = await context.newPage();
  listen(page, complaints);
  const go = async (to: string) => {
    await page.goto(new URL(to, address).href, { waitUntil: 'load' });
  };
  await go(path);
  return { page, context, complaints, go, close: () => context.close() };
}

/** Notes whatever a page complains of. */
function listen(page: Page, complaints: string[]) {
  page.on('console', (message) => {
    if (message.type() !== 'error' && message.type() !== 'warning') return;
    // Our own doing: see `serviceWorkers` above.
    if (message.text().includes('registration blocked by Playwright')) return;
    complaints.push(`console ${message.type()}: ${message.text()} (${message.location().url})`);
  });
  page.on('pageerror', (error) => complaints.push(`uncaught: ${error.message}`));
  page.on('requestfailed', (request) => {
    // A page left while it still loads cancels its requests; that is no fault.
    if (request.failure()?.errorText === 'net::ERR_ABORTED') return;
    complaints.push(`request failed: ${request.url()} ${request.failure()?.errorText}`);
  });
}

/** Wakes every worksheet of the page at once, as printing does, and waits until all are alive. */
export async function wakeWorksheets(page: Page): Promise<void> {
  await page.evaluate(() => {
    dispatchEvent(new Event('beforeprint'));
  });
  await page.waitForFunction(() =>
    [...document.querySelectorAll<HTMLElement>('[data-island]')]
      .filter((place) => place.checkVisibility())
      .every(({ dataset }) => dataset.awake === 'yes'),
  );
}

/** A result as the page shows it, found by the words it has there. */
export const shown = async (page: Page, sheet: string, result: string): Promise<string> => {
  // All worksheets: only tests that ask for a result wait for them.
  const { worksheets } = await import('../../src/components/live/catalogue.ts');
  const label = page.getByText(worksheets.get(sheet)!.results[result]!.label, { exact: true });
  const found = page.locator(`[data-worksheet="${sheet}"] .result`).filter({ has: label });
  return (await found.locator('.number').innerText()).replace(/\s+/g, ' ').trim();
};
