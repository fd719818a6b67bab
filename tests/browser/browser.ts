import type { BrowserContext, Page } from 'playwright-core';
import { inject } from 'vitest';
import { giveBack, takeWindow } from './windows.ts';

/** The site under test. */
export const site = inject('site');

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
  /** For rights and scripts of a test's own. */
  readonly context: BrowserContext;
  /** Console errors and warnings, uncaught errors, requests off the origin, failed requests. */
  complaints: string[];
  /** Goes to another page of the site, in the same context. */
  go(path: string): Promise<void>;
  /** Opens another tab of the same window, still empty. */
  tab(): Promise<Page>;
  close(): Promise<void>;
}

/**
 * Opens a page of the site, given by its path from the base path on, in a window as good as new. One whose
 * context was asked for is not lent again.
 */
export async function openPage(path: string, opening: Opening = {}): Promise<Opened> {
  const { theme = 'light', width = 1280, height = 900, javaScript = true } = opening;
  const address = opening.at ?? site.url;
  const window = await takeWindow(
    {
      javaScriptEnabled: javaScript,
      serviceWorkers: opening.offline ? 'allow' : 'block',
      locale: 'en-GB',
      hasTouch: opening.touch ?? false,
      isMobile: opening.touch ?? false,
    },
    new URL(address).origin,
  );
  // What works offline outlives its page.
  window.spent ||= opening.offline ?? false;
  const { page, complaints } = window;
  await page.setViewportSize({ width, height });
  await page.emulateMedia({
    media: null,
    colorScheme: theme,
    forcedColors: null,
    reducedMotion: 'reduce',
  });
  const go = async (to: string) => {
    await page.goto(new URL(to, address).href, { waitUntil: 'load' });
  };
  await go(path);
  const opened: Opened = {
    page,
    get context() {
      window.spent = true;
      return window.context;
    },
    complaints,
    go,
    tab: () => window.context.newPage(),
    close: () => giveBack(window),
  };
  return opened;
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
