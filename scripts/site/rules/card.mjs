// How a page presents itself elsewhere: its canonical address, and its card when a link is shared.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { attribute } from '../pages.mjs';
import { sizeOfPng } from './png.mjs';

/** @typedef {import('../pages.mjs').Page} Page */
/** @typedef {{ folder: string, files: readonly string[], base: string, site?: string | undefined }} Site */

/**
 * The content of a `<meta>`, by its property or its name.
 * @param {Page} page
 * @param {string} key
 */
const meta = ({ root }, key) => {
  const found = root.querySelector(`head > meta[property="${key}"], head > meta[name="${key}"]`);
  return found ? attribute(found, 'content')?.trim() : undefined;
};

/**
 * Whether a page asks not to be indexed; then it has no canonical address.
 * @param {Page} page
 */
export const isUnlisted = (page) => /\bnoindex\b/.test(meta(page, 'robots') ?? '');

/**
 * The path of an absolute address below the base path. Its origin is not checked unless the site's
 * is given.
 * @param {string | undefined} address
 * @param {Site} site
 * @returns {string | undefined}
 */
export function pathBelow(address, { base, site }) {
  const url = address ? URL.parse(address) : null;
  if (!url || !/^https?:$/.test(url.protocol) || url.search || url.hash) return undefined;
  if (site && url.origin !== new URL(site).origin) return undefined;
  return url.pathname.startsWith(base)
    ? decodeURIComponent(url.pathname.slice(base.length))
    : undefined;
}

/**
 * @param {Page} page
 * @param {Site} site
 * @returns {string[]}
 */
export function cardFaults(page, site) {
  const faults = [];
  const canonicals = page.root.querySelectorAll('head > link[rel="canonical"]');
  if (isUnlisted(page)) {
    if (canonicals.length > 0) faults.push('is unlisted and yet gives a canonical address');
  } else {
    const own = canonicals[0] && attribute(canonicals[0], 'href');
    if (canonicals.length !== 1) faults.push(`has ${canonicals.length} canonical links, not one`);
    else if (pathBelow(own, site) !== page.path)
      faults.push(`gives another page as its canonical address: ${own}`);
    if (meta(page, 'og:url') !== own) faults.push('og:url is not its canonical address');
  }
  for (const key of [
    'og:title',
    'og:description',
    'og:type',
    'og:site_name',
    'og:image:alt',
    'twitter:card',
  ])
    if (!meta(page, key)) faults.push(`has no ${key}`);

  const file = pathBelow(meta(page, 'og:image'), site);
  if (file === undefined || !site.files.includes(file)) {
    faults.push(`has a social image that is not there: ${meta(page, 'og:image')}`);
    return faults;
  }
  const { width, height } = sizeOfPng(readFileSync(join(site.folder, file)));
  const told = `${meta(page, 'og:image:width')} × ${meta(page, 'og:image:height')}`;
  if (told !== `${width} × ${height}`)
    faults.push(`says its social image is ${told}; it is ${width} × ${height}`);
  return faults;
}
