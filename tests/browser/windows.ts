import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { inject } from 'vitest';
import { startBrowser } from './chromium.ts';

/** A window of the browser, in a context of its own. */
export interface Window {
  readonly context: BrowserContext;
  readonly page: Page;
  /** What it was opened with: windows of one kind can stand in for each other. */
  readonly kind: string;
  /** Console errors and warnings, uncaught errors, requests off the origin, failed requests. */
  readonly complaints: string[];
  /** True once something was done to it that nothing undoes. */
  spent: boolean;
}

const site = inject('site');
let starting: Promise<Browser> | undefined;
/** Windows that were given back, as empty as new ones. */
const idle: Window[] = [];
/** Windows that a test has. */
const lent = new Set<Window>();

/**
 * The browser of this worker, for one file after the other, until the worker ends: one shared by all workers is
 * spoken to through a server. After one that broke down there is another.
 */
function ownBrowser(): Promise<Browser> {
  starting ??= startBrowser().then((browser) =>
    browser.on('disconnected', () => {
      starting = undefined;
      idle.length = 0;
    }),
  );
  return starting;
}

/**
 * A window for one test: one that was given back, if there is any of the kind, or a new one. A new one costs
 * half a second of work: a process, and every script fetched and compiled anew.
 */
export async function takeWindow(options: BrowserContextOptions, origin: string): Promise<Window> {
  const kind = JSON.stringify(options);
  const at = idle.findIndex((window) => window.kind === kind);
  if (at >= 0) {
    const [window] = idle.splice(at, 1);
    lent.add(window!);
    return window!;
  }
  const context = await (await ownBrowser()).newContext(options);
  const page = await context.newPage();
  const window: Window = { context, page, kind, complaints: [], spent: false };
  lent.add(window);
  listen(window, origin);
  spentBy(window, page, 'on');
  spentBy(window, page, 'addInitScript');
  spentBy(window, page, 'exposeFunction');
  spentBy(window, page.clock, 'install');
  return window;
}

/** Notes whatever a page complains of. */
function listen({ context, page, complaints }: Window, origin: string) {
  context.on('request', (request) => {
    const url = new URL(request.url());
    if (/^https?:$/.test(url.protocol) && url.origin !== origin) {
      complaints.push(`asked another host: ${url.href}`);
    }
  });
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

/** Calls of this method leave something in the window for good. */
function spentBy<T extends object, K extends keyof T>(window: Window, owner: T, name: K) {
  const does = owner[name] as (...args: unknown[]) => unknown;
  owner[name] = ((...args: unknown[]) => {
    window.spent = true;
    return does.apply(owner, args);
  }) as T[K];
}

/** Takes a window back: emptied of all that was kept in it, or closed where that cannot be. */
export async function giveBack(window: Window): Promise<void> {
  const { context, page } = window;
  lent.delete(window);
  if (window.spent || !(await emptied(window).catch(() => false))) return context.close();
  window.complaints.length = 0;
  idle.push(window);
  // Nothing of one test is left to look at: the next begins where a new window does.
  await page.mouse.move(0, 0);
}

/** Whether the window could be left with nothing in it that the next test could find. */
async function emptied({ context, page }: Window): Promise<boolean> {
  await page.unrouteAll({ behavior: 'ignoreErrors' });
  // A page stores the last of what it has when it is left, so that comes first.
  const at = new URL('robots.txt', site.url);
  await Promise.all(context.pages().map((tab) => tab.goto(at.href)));
  for (const tab of context.pages()) if (tab !== page) await tab.close();
  const session = await context.newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', { origin: at.origin, storageTypes: 'all' });
  await session.detach();
  return page.evaluate(async () => {
    sessionStorage.clear();
    const left = [...(await indexedDB.databases()), ...(await caches.keys())];
    return left.length + localStorage.length === 0 && document.cookie === '';
  });
}

/** Closes the windows that tests which failed have left open. */
export async function closeLent(): Promise<void> {
  await Promise.all([...lent].map(({ context }) => context.close()));
  lent.clear();
}
