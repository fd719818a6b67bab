import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openPage, wakeWorksheets } from './browser.ts';
import { LIST, rows } from './records.ts';

const PHONE = { width: 360, height: 800 };

/**
 * Watches the focus from inside the page: at each key press, what the press before it came to. The order
 * is judged on a narrow screen, where everything stands below what is read before it.
 */
function watchFocus(page: Page): Promise<number> {
  return page.evaluate(() => {
    const stops = [
      ...document.querySelectorAll<HTMLElement>(
        'a[href], button, input, select, textarea, summary, [tabindex="0"]',
      ),
    ].filter((e) => {
      if (!e.checkVisibility({ visibilityProperty: true }) || e.tabIndex < 0) return false;
      if ((e as HTMLInputElement).disabled) return false;
      // Of several dots one is stopped at: the chosen one.
      return !(e instanceof HTMLInputElement && e.type === 'radio' && !e.checked);
    });
    const left = new Set(stops);
    const faults: string[] = [];
    let before: HTMLElement | undefined;
    let lastBottom = Number.NEGATIVE_INFINITY;
    const name = (e: HTMLElement) =>
      `${e.tagName.toLowerCase()}${e.id && `#${e.id}`} “${(e.textContent || e.ariaLabel || '').trim().slice(0, 40)}”`;
    const look = () => {
      const e = document.activeElement as HTMLElement;
      if (e === document.body || e === before) return;
      left.delete(e);
      const marked = e.matches('input[type="file"]') ? (e.closest('label') ?? e) : e;
      const { outlineStyle, outlineWidth } = getComputedStyle(marked);
      if (outlineStyle === 'none' || parseFloat(outlineWidth) < 2)
        faults.push(`no ring around the focus: ${name(e)}`);
      const box = marked.getBoundingClientRect();
      // A link may break over two lines: its first piece counts; of a tall box, what is in sight.
      const piece = marked.getClientRects()[0] ?? box;
      const y = (Math.max(piece.top, 0) + Math.min(piece.bottom, innerHeight)) / 2;
      const top = document.elementFromPoint(piece.left + piece.width / 2, y);
      if (!top || !(marked.contains(top) || top.contains(marked)))
        faults.push(
          `focus out of sight or covered: ${name(e)} by ${top && name(top as HTMLElement)}`,
        );
      if (before && !(before.compareDocumentPosition(e) & Node.DOCUMENT_POSITION_FOLLOWING))
        faults.push(`focus goes back: ${name(before)} → ${name(e)}`);
      const bottom = box.bottom + scrollY;
      // What stands in a box that scrolls ends above its end.
      const above = bottom < lastBottom - 100;
      if (
        above &&
        before &&
        !before.contains(e) &&
        getComputedStyle(before).position !== 'absolute'
      )
        faults.push(`focus jumps up the page: ${name(before)} → ${name(e)}`);
      lastBottom = bottom;
      before = e;
    };
    addEventListener('keydown', look, true);
    Object.assign(window, {
      pathEnds: () => {
        look();
        return [...faults, ...[...left].map((e) => `never reached: ${name(e)}`)];
      },
    });
    return stops.length;
  });
}

/** Waits until the page keeps its height: a list from the browser's own store comes a moment late. */
const settled = (page: Page) =>
  page.evaluate(async () => {
    let [height, same] = [0, 0];
    while (same < 4) {
      await new Promise((done) => setTimeout(done, 100));
      same = height === document.body.scrollHeight ? same + 1 : 0;
      height = document.body.scrollHeight;
    }
  });

/** What a page shows once the invented batches are there; they are fetched, so it is waited for. */
interface Kind {
  readonly name: string;
  readonly path: string;
  readonly filled?: string;
}
const PAGES: readonly Kind[] = [
  { name: 'home', path: '' },
  { name: 'the list of chapters', path: 'chapters/' },
  { name: 'a chapter with its worksheet', path: 'water/hardness/' },
  { name: 'First batch', path: 'first-batch/' },
  { name: 'the bench', path: 'bench/' },
  { name: 'the beginning of a run', path: 'bench/run/' },
  { name: 'the list of batches, empty', path: 'batch-records/' },
  { name: 'the list of batches', path: 'batch-records/', filled: '.records-list > li' },
  { name: 'a batch', path: 'batch-records/batch/#invented-1', filled: '.record' },
  { name: 'batches beside each other', path: 'batch-records/compare/', filled: '.compare figure' },
  { name: 'what batches teach', path: 'batch-records/learn/', filled: '.learned figure' },
  { name: 'keeping batches', path: 'batch-records/keep/', filled: '.batches-file' },
  { name: 'a page of checks', path: 'checks/air/' },
  { name: 'sources', path: 'sources/a/' },
  { name: 'the glossary', path: 'glossary/' },
  { name: 'how pages look', path: 'parts/' },
  { name: 'a page that is not there', path: '404.html' },
];

/** Tabs through the page from its top and says what was wrong with the way. */
async function pathFaults(page: Page): Promise<string[]> {
  await settled(page);
  const stops = await watchFocus(page);
  expect(stops).toBeGreaterThan(10);
  // Boxes that scroll are stops as well, in some browsers; a few presses more do no harm.
  for (let press = 0; press < stops; press++) await page.keyboard.press('Tab');
  const ends = () =>
    page.evaluate(() => (window as unknown as { pathEnds(): string[] }).pathEnds());
  for (let more = 0; more < 60 && (await ends()).some((f) => f.startsWith('never')); more++)
    await page.keyboard.press('Tab');
  return ends();
}

describe('with keys alone', () => {
  test.concurrent.each(PAGES)(
    '$name: every stop in reading order, seen, none a trap',
    async ({ path, filled }) => {
      const { page, close, complaints, go } = await openPage(filled ? LIST : path, PHONE);
      if (filled) {
        await page.getByRole('button', { name: 'Load six invented' }).click();
        await expect.poll(() => rows(page).count()).toBe(6);
        await go(path);
        await page.locator(filled).first().waitFor();
      }
      await wakeWorksheets(page);
      expect(await pathFaults(page)).toEqual([]);
      expect(complaints).toEqual([]);
      await close();
    },
  );

  test('each step of a run: every stop in reading order, seen, none a trap', async () => {
    const { page, close, complaints } = await openPage('bench/run/', PHONE);
    await wakeWorksheets(page);
    await page.getByRole('button', { name: 'Begin a batch' }).click();
    const next = page.getByRole('button', { name: /^Next: / });
    let step = 0;
    for (; step < 20; step++) {
      await page.locator(`[data-run="${step}"]`).waitFor();
      // A step takes the focus to its own head; the way is tried from the head of the page.
      await page.evaluate(() => {
        document.body.tabIndex = -1;
        document.body.focus();
        document.body.removeAttribute('tabindex');
        scrollTo(0, 0);
      });
      expect(await pathFaults(page), `step ${step + 1}`).toEqual([]);
      if ((await next.count()) === 0) break;
      await next.click();
    }
    expect(step).toBeGreaterThan(3);
    expect(complaints).toEqual([]);
    await close();
  });

  test('a page without rings, and with something over it, is found out', async () => {
    const { page, close } = await openPage('404.html', PHONE);
    await watchFocus(page);
    await page.evaluate(() => {
      const style = new CSSStyleSheet();
      style.replaceSync(
        'a { outline: none !important } aside { position: fixed; inset: 200px 0 0 }',
      );
      document.adoptedStyleSheets = [style];
      document.body.append(document.createElement('aside'));
    });
    for (let press = 0; press < 12; press++) await page.keyboard.press('Tab');
    const found = (
      await page.evaluate(() => (window as unknown as { pathEnds(): string[] }).pathEnds())
    ).join();
    expect(found).toContain('no ring around the focus');
    expect(found).toContain('covered');
    expect(found).toContain('never reached');
    await close();
  });

  test('the first Tab offers to skip to the text, and Enter goes there', async () => {
    const { page, close } = await openPage('water/hardness/', { width: 360 });
    await page.keyboard.press('Tab');
    const skip = page.locator('.skip');
    expect(await skip.evaluate((e) => e === document.activeElement)).toBe(true);
    expect((await skip.boundingBox())!.x).toBeGreaterThanOrEqual(0);
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('content');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => Boolean(document.activeElement?.closest('main')))).toBe(true);
    await close();
  });

  test('what opens over the page gives the focus back', async () => {
    const { page, close } = await openPage('foam/weighing/');
    await wakeWorksheets(page);
    const focused = () =>
      page.evaluate(() => {
        const e = document.activeElement as HTMLElement;
        return e.id || Object.keys(e.dataset).join() || e.tagName;
      });
    await page.locator('#foam-density-full').fill('2.5');
    await page.locator('#foam-density-full').press('Tab');
    for (const opener of ['searchOpen', 'saveBatch']) {
      const attribute = opener.replace(/[A-Z]/, (c) => `-${c.toLowerCase()}`);
      await page.locator(`[data-${attribute}]`).focus();
      await page.keyboard.press('Enter');
      await page.locator('dialog[open]').waitFor();
      // Nothing behind it can be reached.
      for (let press = 0; press < 6; press++) {
        await page.keyboard.press('Tab');
        const behind = await page.evaluate(
          () =>
            document.activeElement !== document.body && !document.activeElement?.closest('dialog'),
        );
        expect(behind).toBe(false);
      }
      await page.locator('dialog[open] input').focus();
      await page.keyboard.press('Escape');
      await page.locator('dialog[open]').waitFor({ state: 'detached' });
      expect(await focused()).toBe(opener);
    }
    const reset = page.getByRole('button', { name: 'Back to the example' });
    await reset.focus();
    await page.keyboard.press('Enter');
    await reset.waitFor({ state: 'detached' });
    expect(await focused()).toBe('foam-density-fields');
    await page.getByRole('button', { name: 'Put my readings back' }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('#foam-density-full').inputValue()).toBe('2.5');
    // What was pressed is there again, and has no focus to give; the text has.
    expect(await focused()).not.toBe('BODY');
    await close();
  });

  test('clearing the bench keeps the focus near, and so does putting it back', async () => {
    const { page, go, close } = await openPage('foam/weighing/');
    await wakeWorksheets(page);
    await page.locator('#foam-density-full').fill('2.5');
    await go('bench/');
    const focused = () => page.evaluate(() => document.activeElement?.id);
    const holds = page.locator('#bench-holds');
    await expect.poll(() => holds.innerText()).toContain('1 reading');
    await page.getByRole('button', { name: 'Clear the bench' }).press('Enter');
    await expect.poll(() => holds.innerText()).toContain('Nothing of yours');
    expect(await focused()).toBe('bench-holds');
    await page.getByRole('button', { name: 'Put it back' }).press('Enter');
    await expect.poll(() => holds.innerText()).toContain('1 reading');
    expect(await focused()).toBe('bench-holds');
    // With a finger the button had it, and has none to give once it can be pressed no more.
    await page.getByRole('button', { name: 'Clear the bench' }).click();
    await expect.poll(() => holds.innerText()).toContain('Nothing of yours');
    await page.getByRole('button', { name: 'Close' }).press('Enter');
    expect(await focused()).toBe('content');
    await close();
  });
});
