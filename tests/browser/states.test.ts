import type { Page } from 'playwright-core';
import { test as base, describe, expect } from 'vitest';
import { COLOURS, faults } from './axe.ts';
import { crushed, overflow, smallTargets, TWICE, under } from './boxes.ts';
import { type Opened, openPage, wakeWorksheets } from './browser.ts';
import { makeMistakes, unsaidMistakes } from './mistakes.ts';
import { nameFaults } from './names.ts';

/** Each test has a window of its own, as narrow as a phone, and fails when the window complains. */
const test = base.extend<{ opened: Opened; page: Page; open: (path: string) => Promise<void> }>({
  // biome-ignore lint/correctness/noEmptyPattern: fixtures name what they need
  opened: async ({}, use) => {
    const opened = await openPage('404.html', { width: 360 });
    await use(opened);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  },
  page: ({ opened }, use) => use(opened.page),
  open: ({ opened }, use) =>
    use(async (path) => {
      await opened.go(path);
      await wakeWorksheets(opened.page);
    }),
});
const GLOVE = 44;

describe.concurrent('axe finds nothing', () => {
  test('it does find targets that are too small and too close', async ({ page, open }) => {
    await open('404.html');
    await page.locator('main').evaluate((main) => {
      for (const words of ['a', 'b', 'c']) {
        const button = document.createElement('button');
        button.textContent = words;
        button.style.cssText = 'min-height: 12px; height: 12px; width: 12px; padding: 0; margin: 0';
        main.append(button);
      }
    });
    expect((await faults(page)).join()).toContain('target-size');
    expect((await smallTargets(page, 24)).length).toBe(3);
  });

  test('in the search, with and without anything found', async ({ page, open }) => {
    await open('foam/');
    await page.locator('[data-search-open]').click();
    const words = page.locator('#search-words');
    expect(await faults(page)).toEqual([]);
    await words.fill('foam collapsed');
    await page.locator('#search-found [role="option"]').first().waitFor();
    expect(await faults(page)).toEqual([]);
    expect(await nameFaults(page)).toEqual([]);
    expect(await smallTargets(page, GLOVE, '#search')).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await faults(page, COLOURS)).toEqual([]);
    // Which of them is chosen is seen in a reader's own colours, too.
    await words.press('ArrowDown');
    await page.emulateMedia({ forcedColors: 'active' });
    const edges = await page
      .locator('#search-found [role="option"]')
      .evaluateAll((all) => all.map((option) => getComputedStyle(option).outlineStyle));
    expect(edges.filter((edge) => edge !== 'none')).toEqual(['solid']);
    await page.emulateMedia({ forcedColors: 'none' });
    await words.fill('qqqxyzzy');
    await page.locator('.search-count a').waitFor();
    expect(await faults(page)).toEqual([]);
  });

  test('with a notice shown, and in the dialog that saves a batch', async ({ page, open }) => {
    await open('demoulding/lift/');
    await page
      .getByRole('button', { name: /^Remove / })
      .first()
      .click();
    await page.locator('.notice').waitFor();
    expect(await faults(page)).toEqual([]);
    expect(await smallTargets(page, GLOVE, '#notices')).toEqual([]);
    await page.locator('[data-save-batch]').click();
    expect(await faults(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await faults(page, COLOURS)).toEqual([]);
    expect(await smallTargets(page, GLOVE, '#save-batch')).toEqual([]);
  });

  test('on every step of a batch, and every target is as large as a glove needs', async ({
    page,
    open,
  }) => {
    await open('bench/run/');
    await page.getByRole('button', { name: 'Begin a batch' }).click();
    const next = page.getByRole('button', { name: /^Next: / });
    let steps = 0;
    for (; steps < 20; steps++) {
      await page.locator(`[data-run="${steps}"]`).waitFor();
      expect(await faults(page), `step ${steps + 1}`).toEqual([]);
      expect(await smallTargets(page, GLOVE), `step ${steps + 1}`).toEqual([]);
      expect(await nameFaults(page), `step ${steps + 1}`).toEqual([]);
      expect(await under(page, TWICE, [overflow, crushed]), `step ${steps + 1}`).toEqual([]);
      if ((await makeMistakes(page)) > 0) {
        expect(await unsaidMistakes(page), `step ${steps + 1}`).toEqual([]);
        expect(await faults(page, undefined, ['.run']), `step ${steps + 1}`).toEqual([]);
      }
      if ((await next.count()) === 0) break;
      await next.click();
    }
    expect(steps).toBeGreaterThan(3);
  });

  test('on the record of a batch, empty and with mistakes in it', async ({ page, open }) => {
    await open('batch-records/');
    await page.locator('.records-new input').fill('Slabs');
    await page.locator('.records-new button').first().click();
    await page.locator('.record').waitFor();
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
    });
    expect(await faults(page)).toEqual([]);
    expect(await nameFaults(page)).toEqual([]);
    expect(await makeMistakes(page)).toBeGreaterThan(10);
    expect(await unsaidMistakes(page)).toEqual([]);
    expect(await faults(page, undefined, ['.record'])).toEqual([]);
  });
});

test.concurrent('many notices leave the page in sight, the way past them too', async ({
  page,
  open,
}) => {
  await page.setViewportSize({ width: 320, height: 256 });
  await open('first-batch/');
  // A place that comes with its words is often not spoken of.
  expect(await page.locator('#notices').evaluate((it) => it.checkVisibility())).toBe(true);
  const add = page.getByRole('button', { name: 'Add another piece' });
  const remove = page.getByRole('button', { name: /^Remove piece/ });
  for (const button of [add, remove])
    for (let times = 0; times < 4; times++) await button.last().press('Enter');
  expect(await page.locator('.notice').count()).toBe(4);
  const box = (await page.locator('#notices').boundingBox())!;
  expect(box.height).toBeLessThanOrEqual(128);
  const close = (await page.getByRole('button', { name: 'Close' }).last().boundingBox())!;
  expect(close.y + close.height).toBeLessThan(box.y + box.height);
  await page.locator('.skip').focus();
  const seen = await page.locator('.skip').evaluate((skip) => {
    const { x, y, width, height } = skip.getBoundingClientRect();
    return document.elementFromPoint(x + width / 2, y + height / 2) === skip;
  });
  expect(seen).toBe(true);
});

/** What vanishes when a reader's own colours replace the page's. */
const vanished = (on: Page): Promise<string[]> =>
  on.evaluate(() => {
    const probe = document.body.appendChild(document.createElement('i'));
    const rgb = (colour: string) => {
      probe.style.color = colour;
      return getComputedStyle(probe)
        .color.match(/[\d.]+/g)!
        .map(Number);
    };
    probe.style.setProperty('forced-color-adjust', 'none');
    const light = ([r, g, b]: number[]) => {
      const linear = (c: number) =>
        c <= 10.31 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4;
      return 0.2126 * linear(r!) + 0.7152 * linear(g!) + 0.0722 * linear(b!);
    };
    const ground = light(rgb('Canvas'));
    const seen = (colour: string) => {
      if (colour === 'none' || /^rgba.*, 0\)$/.test(colour)) return 1;
      const it = light(rgb(colour));
      return (Math.max(it, ground) + 0.05) / (Math.min(it, ground) + 0.05);
    };
    const name = (e: Element) => [e.tagName.toLowerCase(), ...e.classList].join('.');
    const gone: string[] = [];
    for (const e of document.querySelectorAll('main svg :is(path, rect, circle, line, text)')) {
      if (!e.checkVisibility()) continue;
      const { fill, stroke } = getComputedStyle(e);
      // A sign lies on a filled shape, some letters on a filled layer, and a ground is to be unseen.
      if (e.matches('.sign, .on-layer, .ground, [style]')) continue;
      const least = e.matches('text') ? 4.5 : e.matches('.grid') ? 1.5 : 3;
      if (Math.max(seen(fill), e.matches('text') ? 1 : seen(stroke)) < least)
        gone.push(`${name(e)}: fill ${fill}, stroke ${stroke}`);
    }
    for (const e of document.querySelectorAll<HTMLElement>(
      'main :is(button, input, select, textarea)',
    )) {
      if (!e.checkVisibility()) continue;
      const { borderTopWidth, borderTopStyle, borderTopColor, appearance } = getComputedStyle(e);
      const edged = parseFloat(borderTopWidth) >= 1 && borderTopStyle !== 'none';
      const own =
        appearance !== 'none' && e.matches('[type="range"], [type="radio"], [type="checkbox"]');
      if (!own && !e.matches('.quiet, [type="file"]') && !(edged && seen(borderTopColor) >= 3))
        gone.push(`no edge: ${name(e)}`);
    }
    const first = document.querySelector<HTMLElement>('main :is(input, button, a):not(:disabled)');
    first?.focus();
    const { outlineColor, outlineStyle, outlineWidth } = getComputedStyle(first!);
    if (outlineStyle === 'none' || parseFloat(outlineWidth) < 2 || seen(outlineColor) < 3)
      gone.push(`no ring: ${name(first!)} ${outlineColor}`);
    probe.remove();
    return [...new Set(gone)];
  });

test.concurrent.for(['light', 'dark'] as const)(
  'nothing vanishes in a reader’s own %s colours',
  async (own, { page, open }) => {
    // The worst case: the reader had turned the site to the other colours.
    const turned = own === 'light' ? 'dark' : 'light';
    await page.evaluate((theme: string) => localStorage.setItem('suds.theme', theme), turned);
    await page.emulateMedia({ forcedColors: 'active', colorScheme: own });
    for (const path of ['parts/', 'first-batch/', 'bench/', 'bench/run/', 'mix/how-close/']) {
      await open(path);
      expect(await vanished(page), path).toEqual([]);
    }
    await open('parts/');
    expect(await faults(page, COLOURS)).toEqual([]);
  },
);

test.concurrent('nothing moves for a reader who asked for stillness', async ({ page, open }) => {
  const moves = () =>
    page.evaluate(() => {
      const styled = [...document.querySelectorAll('*')].filter((e) => {
        const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(e);
        return (
          /[1-9]/.test(transitionDuration) ||
          animationName !== 'none' ||
          scrollBehavior === 'smooth'
        );
      });
      return [...styled.map((e) => e.outerHTML.slice(0, 80)), ...document.getAnimations()].length;
    });
  for (const path of ['', 'mix/proportion/', 'foam/time-in-hand/', 'bench/']) {
    await open(path);
    expect(await moves(), path).toBe(0);
    await page.locator('main :is(input[type="range"], .entry input)').first().press('ArrowUp');
    expect(await moves(), path).toBe(0);
  }
  // The same look does find what moves for others.
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  await open('foam/drainage/');
  await page.evaluate(() => {
    document.querySelector('main')!.animate([{ opacity: 0 }, { opacity: 1 }], 5000);
  });
  expect(await moves()).toBeGreaterThan(0);
});

test.concurrent('a box that scrolls, or that skips its rows, cuts no ring of what has the focus', async ({
  page,
  open,
}) => {
  const room = (thing: string, box: string) =>
    page
      .locator(thing)
      .first()
      .evaluate((e, box) => {
        const [inner, outer] = [e.getBoundingClientRect(), e.closest(box)!.getBoundingClientRect()];
        const { overflowClipMargin } = getComputedStyle(e.closest(box)!);
        const least = Math.min(inner.left - outer.left, inner.top - outer.top);
        return least + (parseFloat(overflowClipMargin) || 0);
      }, box);
  await page.setViewportSize({ width: 1280, height: 900 });
  await open('mix/correct/');
  // The ring is 3 pixels wide and stands off by 2.
  expect(await room('.beside-text a', '.beside-text')).toBeGreaterThanOrEqual(5);
  await open('batch-records/');
  await page.getByRole('button', { name: 'Load six invented batches' }).click();
  await page.locator('.records-list a').first().waitFor();
  expect(await room('.records-list a', 'li')).toBeGreaterThanOrEqual(5);
});

test.concurrent('a moment has a ring at each of its parts', async ({ page, open }) => {
  await open('curing/temperature-and-age/');
  const moment = page.locator('.moment input').first();
  await moment.focus();
  let stops = 0;
  for (; await moment.evaluate((e) => e === document.activeElement); stops++) {
    expect(await moment.evaluate((e) => getComputedStyle(e).outlineStyle), `${stops}`).toBe(
      'solid',
    );
    await page.keyboard.press('Tab');
  }
  expect(stops).toBeGreaterThan(2);
});
