import type { Page } from 'playwright-core';
import { describe, test } from 'vitest';
import { openPage, wakeWorksheets } from './browser.ts';
import { beginRun, test as run } from './records.ts';
import { turns } from './turns.ts';

/**
 * How browsers translate a page, put into it as a script: texts that follow each other are taken for one sentence.
 * Here a translation is the same in capitals; what is drawn later is translated too, a moment later.
 */
const WAYS = {
  'by elements in place of its texts': `(first, all) => {
    const said = document.createElement('font');
    said.append(document.createElement('font'));
    said.firstChild.textContent = all;
    first.replaceWith(said);
  }`,
  'within its texts': '(first, all) => { if (first.data !== all) first.data = all; }',
} as const;

const translator = (say: string) => `{
  const say = ${say};
  const translate = (within) => {
    const walker = document.createTreeWalker(within, NodeFilter.SHOW_TEXT);
    const texts = [];
    while (walker.nextNode()) texts.push(walker.currentNode);
    for (const text of texts) {
      if (!text.data || text.parentElement?.closest('font, math, svg, script, style') !== null) continue;
      let all = text.data;
      for (let next; (next = text.nextSibling) instanceof Text && next.data; ) {
        all += next.data;
        if (${say.includes('replaceWith')}) next.remove();
        else next.data = '';
      }
      say(text, all.toUpperCase());
    }
  };
  translate(document.body);
  new MutationObserver((records) => setTimeout(() => {
    for (const { target } of records) translate(target instanceof Text ? target.parentNode ?? target : target);
  }, 30)).observe(document.body, { childList: true, characterData: true, subtree: true });
}`;

/** All that the worksheets of a page say, once it is said; whichever letters it is in. */
async function said(page: Page): Promise<readonly string[]> {
  // No key is pressed in this while: sentences that wait for a pause stand there too, and are translated.
  await page.clock.runFor(1200);
  await turns(page, 100);
  const parts = await page.locator('[data-island]').allInnerTexts();
  return parts
    .join('\n')
    .toUpperCase()
    .split(/\s*\n\s*/);
}

/** What a page says after some slips and good readings. */
async function typedInto(path: string, translate = '') {
  const { page, go, close, complaints } = await openPage('');
  try {
    await page.clock.install();
    await go(path);
    // Some parts wake as they were built, some already translated.
    await page.evaluate(translate);
    await wakeWorksheets(page);
    const fields = page.locator('main .worksheet input[type="text"]:visible');
    const seen = [];
    for (const [index, text] of ['3', '-7', '40'].entries()) {
      // The name of a unit is translated too, and may be all that a list knows of it.
      await page.locator('main .worksheet select.unit:visible').first().selectOption({ index });
      for (const at of [0, 1, 2]) await fields.nth(at).fill(text);
      seen.push(await said(page));
    }
    return [...seen, complaints];
  } finally {
    await close();
  }
}

describe.concurrent.each(Object.entries(WAYS))('translated %s', (_, say) => {
  test('a page says what it says in English', async ({ expect }) => {
    const path = 'foam/time-in-hand/';
    const both = [typedInto(path, translator(say)), typedInto(path)];
    const [translated, inEnglish] = await Promise.all(both);
    expect(translated).toEqual(inEnglish);
  });
});

run.concurrent(
  'a step of the run stays translated while its clock goes on',
  async ({ expect, page }) => {
    const clock = page.locator('.clock-figures');
    await beginRun(page);
    await page.getByRole('button', { name: /^Next/ }).click();
    await page.getByRole('button', { name: /Foam made/ }).click();
    await page.evaluate(translator(WAYS['by elements in place of its texts']));
    // A second goes by in which nothing but the clock is drawn, once what was new with the step is read out and stored.
    const staysForASecond = async () => {
      const said = await page.locator('.run-harms > font').first().elementHandle({ timeout: 500 });
      const at = await clock.innerText();
      await expect.poll(() => clock.innerText(), { timeout: 5000 }).not.toBe(at);
      return said?.evaluate(({ isConnected }) => isConnected);
    };
    await expect.poll(staysForASecond, { timeout: 10_000 }).toBe(true);
  },
);

run.concurrent(
  'an extension that wraps what has the focus takes no key',
  async ({ expect, opened, page }) => {
    await opened.go('mix/proportion/');
    await wakeWorksheets(page);
    await page.evaluate(() => {
      document.addEventListener('focusin', ({ target }) => {
        const field = target as HTMLElement;
        if (field.parentElement?.matches('.around')) return;
        const around = document.createElement('span');
        around.className = 'around';
        field.replaceWith(around);
        around.append(field);
        field.focus();
      });
    });
    const volume = page.locator('#proportion-volume');
    await volume.focus();
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('33.5', { delay: 20 });
    expect(await volume.inputValue()).toBe('33.5');
  },
);
