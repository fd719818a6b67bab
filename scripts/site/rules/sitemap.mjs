// The sitemap lists every page that may be indexed, and no other.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { decoded } from '../pages.mjs';
import { isUnlisted, pathBelow } from './card.mjs';

/** @typedef {import('../pages.mjs').Page} Page */
/** @typedef {import('./card.mjs').Site} Site */

const index = 'sitemap-index.xml';

/**
 * The addresses in a sitemap file, as paths below the base path.
 * @param {string} file
 * @param {Site} site
 */
function placesIn(file, site) {
  const xml = readFileSync(join(site.folder, file), 'utf8');
  return [...xml.matchAll(/<loc>([^<]*)<\/loc>/g)].map(([, address = '']) => ({
    address,
    path: pathBelow(decoded(address), site),
  }));
}

/**
 * @param {readonly Page[]} pages
 * @param {Site} site
 * @returns {string[]}
 */
export function sitemapFaults(pages, site) {
  const { files, folder } = site;
  if (!files.includes(index)) return [`${index}: is missing`];
  const faults = [];
  const listed = new Set();
  for (const { address, path } of placesIn(index, site)) {
    if (path === undefined || !files.includes(path)) {
      faults.push(`${index}: names a file that is not there: ${address}`);
      continue;
    }
    for (const place of placesIn(path, site)) {
      if (!pages.some((page) => page.path === place.path && !isUnlisted(page)))
        faults.push(`${path}: lists what is no page to be found: ${place.address}`);
      listed.add(place.path);
    }
  }
  for (const page of pages)
    if (!isUnlisted(page) && !listed.has(page.path)) faults.push(`${page.file}: is in no sitemap`);

  const robots = files.includes('robots.txt')
    ? readFileSync(join(folder, 'robots.txt'), 'utf8')
    : '';
  if (pathBelow(/^Sitemap: (\S+)$/m.exec(robots)?.[1], site) !== index)
    faults.push('robots.txt: does not name the sitemap');
  return faults;
}
