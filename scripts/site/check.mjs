// Checks the built site as a whole, so that a page that builds but is wrong is not published.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesOf, pagesOf } from './pages.mjs';
import { cardFaults } from './rules/card.mjs';
import { figureFaults } from './rules/figures.mjs';
import { headFaults, sharedHeads } from './rules/head.mjs';
import { headingFaults } from './rules/headings.mjs';
import { idFaults } from './rules/ids.mjs';
import { installFaults, manifestFaults } from './rules/install.mjs';
import { linkFaults, styleFaults } from './rules/links.mjs';
import { markupFaults } from './rules/markup.mjs';
import { sitemapFaults } from './rules/sitemap.mjs';
import { textFaults } from './rules/text.mjs';

/**
 * Reads every page and returns the faults, each with the file it is in.
 * @param {string} folder
 * @param {{ base: string, site?: string | undefined }} where
 * @returns {Promise<{ pages: number, faults: string[] }>}
 */
export async function checkSite(folder, { base, site }) {
  const files = filesOf(folder);
  const pages = pagesOf(folder);
  const where = { folder, files, base, site };
  /** @type {string[]} */
  const faults = [];
  for (const page of pages) {
    const found = [
      ...headFaults(page),
      ...headingFaults(page),
      ...cardFaults(page, where),
      ...installFaults(page),
      ...idFaults(page),
      ...figureFaults(page),
      ...textFaults(page),
      ...(await markupFaults(page)),
    ];
    faults.push(...found.map((fault) => `${page.file}: ${fault}`));
  }
  faults.push(
    ...sharedHeads(pages),
    ...linkFaults(pages, where),
    ...sitemapFaults(pages, where),
    ...manifestFaults(where),
  );
  for (const file of files.filter((f) => f.endsWith('.css') && !f.startsWith('pagefind/'))) {
    faults.push(...styleFaults(file, readFileSync(join(folder, file), 'utf8')));
  }
  for (const needed of ['index.html', '404.html']) {
    if (!files.includes(needed)) faults.push(`${needed}: is missing`);
  }
  return { pages: pages.length, faults: together(faults) };
}

/**
 * One line per fault, naming its first file: a fault of a layout is on every page.
 * @param {readonly string[]} faults
 */
function together(faults) {
  /** @type {Map<string, Set<string>>} */
  const byFault = new Map();
  for (const line of faults) {
    const [file = '', ...rest] = line.split(': ');
    const fault = rest.join(': ');
    byFault.set(fault, (byFault.get(fault) ?? new Set()).add(file));
  }
  return [...byFault]
    .map(([fault, files]) => {
      const [first = '', ...others] = [...files].sort();
      const also = others.length > 0 ? ` (and on other pages: ${others.length})` : '';
      return `${first}: ${fault}${also}`;
    })
    .sort();
}
