// Makes the search index from the finished pages.

import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as pagefind from 'pagefind';
import { decoded } from './pages.mjs';

/** Pagefind ships ready-made search boxes; the site has its own. */
const unused = /^pagefind-(ui|modular|component|highlight)/;

/**
 * Where an element ends that a page shows on its own but the index would run on: “of the second
 * water4.38”.
 */
const ENDS =
  /<\/(?:d[dt]|t[dh]|(?:fig)?caption|text|option|label|button)>|(?=<span class="most")|<\/a>(?=<a)/g;

/**
 * A page with a space added in these places.
 * @param {string} html
 */
export const apart = (html) => html.replace(ENDS, '$& ');

/** What a reader cannot read as words: markup and its contents. */
const NO_WORDS = /<(math|script|style)\b.*?<\/\1>|<[^>]*>/gs;

/**
 * Every word of some pages that somebody might mistype, the most frequent first.
 * @param {readonly string[]} pages  as HTML
 * @returns {string[]}
 */
export function wordsIn(pages) {
  const counts = new Map();
  for (const html of pages) {
    const [main = ''] = html.match(/<main\b.*<\/main>/s) ?? [];
    const text = decoded(main.replace(NO_WORDS, ' ')).toLowerCase();
    for (const [word] of text.matchAll(/\p{L}{4,}/gu))
      counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  return [...counts]
    .filter(([, count]) => count > 1)
    .sort(([a, often], [b, other]) => other - often || (a < b ? -1 : 1))
    .map(([word]) => word);
}

/**
 * Indexes the pages in a folder and writes the index beside them. Formulas are left out, because
 * their markup would be found as words. Only what a page marks with data-pagefind-body is indexed.
 * @param {string} folder
 * @returns {Promise<number>} how many pages can be found
 */
export async function indexPages(folder) {
  const into = join(folder, 'pagefind');
  try {
    const { index, errors } = await pagefind.createIndex({
      excludeSelectors: ['math'],
      includeCharacters: '/°³²',
    });
    if (!index) throw new Error(errors.join('\n'));
    const pages = readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((page) => page.endsWith('.html'))
      .sort()
      .map((page) => ({
        sourcePath: page.replaceAll('\\', '/'),
        content: apart(readFileSync(join(folder, page), 'utf8')),
      }));
    const added = await Promise.all(pages.map((page) => index.addHTMLFile(page)));
    const written = await index.writeFiles({ outputPath: into });
    const faults = [...added.flatMap(({ errors }) => errors), ...written.errors];
    if (faults.length > 0) throw new Error(faults.join('\n'));
    const words = wordsIn(pages.map(({ content }) => content));
    writeFileSync(join(into, 'words.json'), JSON.stringify(words));
  } finally {
    await pagefind.close();
  }
  for (const file of readdirSync(into)) if (unused.test(file)) rmSync(join(into, file));

  const { languages } = JSON.parse(readFileSync(join(into, 'pagefind-entry.json'), 'utf8'));
  const counts = Object.values(languages).map((language) => Number(language.page_count));
  const found = counts.reduce((sum, count) => sum + count, 0);
  // Without any mark Pagefind indexes all text of all pages, menus included.
  if (found === 0)
    throw new Error('no page can be found: is <main> marked with data-pagefind-body?');
  return found;
}
