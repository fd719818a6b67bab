import type { Page } from 'playwright-core';
import { describe, test } from 'vitest';
import { openPage, wakeWorksheets } from './browser.ts';

/**
 * How browsers translate a page, put into it as a script: texts that follow each other are taken for one sentence.
 * Here a translation is the same in capitals; what is drawn later is translated too.
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
      if (!text.data || text.parentElement?.closest('font, math, svg, select, script, style') !== null) continue;
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
  new MutationObserver((records) => {
    for (const { target } of records) translate(target instanceof Text ? target.parentNode ?? target : target);
  }).observe(document.body, { childList: true, characterData: true, subtree: true });
}`;

/** All that the worksheets of a page say, once it is said; whichever letters it is in. */
async function said(page: Page): Promise<readonly string[]> {
  // No key is pressed in this while: sentences that wait for a pause stand there too.
  await page.waitForTimeout(1200);
  const parts = await page.locator('[data-island]').allInnerTexts();
  return parts
    .join('\n')
    .toUpperCase()
    .split(/\s*\n\s*/);
}

/** What a page says after some slips and good readings. */
async function typedInto(path: string, translate = '') {
  const { page, close, complaints } = await openPage(path);
  try {
    // Some parts wake as they were built, some already translated.
    await page.evaluate(translate);
    await wakeWorksheets(page);
    const fields = page.locator('main .worksheet input[type="text"]:visible');
    const seen = [];
    for (const text of ['3', '-7', '40']) {
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
