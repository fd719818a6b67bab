// Every link within the site leads somewhere, and nothing is loaded from another host.

import { attribute, decoded } from '../pages.mjs';
import { addressFault } from './address.mjs';
import { idsOf } from './ids.mjs';

/** @typedef {import('../pages.mjs').Page} Page */
/** @typedef {{ address: string, loads: boolean }} Link */

/** Attributes by which a page loads something; `a[href]` is followed only by choice. */
const loading = /** @type {const} */ ([
  ['script', 'src'],
  ['img', 'src'],
  ['source', 'src'],
  ['iframe', 'src'],
  ['video', 'src'],
  ['audio', 'src'],
  ['embed', 'src'],
  ['object', 'data'],
  ['use', 'href'],
  ['image', 'href'],
]);
const sets = /** @type {const} */ (['img', 'source']);

/** Links in the head that refer to a page rather than load a file. */
const naming = new Set(['canonical', 'alternate', 'license', 'author', 'me', 'prev', 'next']);

/**
 * Every address a page holds.
 * @param {Page} page
 * @returns {Link[]}
 */
function linksOf({ root, html }) {
  /** @type {Link[]} */
  const links = [];
  const loads = (/** @type {string} */ address) => links.push({ address, loads: true });
  for (const element of root.querySelectorAll('a[href]')) {
    links.push({ address: attribute(element, 'href') ?? '', loads: false });
  }
  for (const [tag, name] of loading) {
    for (const element of root.querySelectorAll(`${tag}[${name}]`)) {
      loads(attribute(element, name) ?? '');
    }
  }
  for (const tag of sets) {
    for (const element of root.querySelectorAll(`${tag}[srcset]`)) {
      const candidates = (attribute(element, 'srcset') ?? '').split(',');
      for (const candidate of candidates) loads(candidate.trim().split(/\s+/)[0] ?? '');
    }
  }
  for (const element of root.querySelectorAll('link[href]')) {
    const rels = (attribute(element, 'rel') ?? '').split(/\s+/);
    const names = rels.some((rel) => naming.has(rel));
    links.push({ address: attribute(element, 'href') ?? '', loads: !names });
  }
  for (const [, address] of decoded(html).matchAll(/\burl\(\s*['"]?(https?:[^)'"]+)/g)) {
    if (address) loads(address);
  }
  return links;
}

/**
 * @param {readonly Page[]} pages
 * @param {{ files: readonly string[], base: string, site?: string | undefined }} where
 *   all files of the site; the base path it is served under, with slashes at both ends; its origin
 * @returns {string[]}
 */
export function linkFaults(pages, { files, base, site }) {
  const host = site ? new URL(site).origin : 'http://site.invalid';
  const ids = new Map(pages.map((page) => [page.file, idsOf(page)]));
  const known = { base, host, files: new Set(files), ids };
  return pages.flatMap((page) => {
    const here = new URL(base + page.path, host);
    return linksOf(page).flatMap(({ address, loads }) => {
      const fault = address.trim()
        ? addressFault(address, here, loads, known)
        : 'has a link without an address';
      return fault ? [`${page.file}: ${fault}`] : [];
    });
  });
}

/**
 * Stylesheets may load only from the site itself.
 * @param {string} file
 * @param {string} css
 * @returns {string[]}
 */
export function styleFaults(file, css) {
  const found = css.match(/(?:url\(\s*['"]?|@import\s+['"])(?:https?:)?\/\/[^)'"\s]+/g) ?? [];
  return found.map((load) => `${file}: loads something from another host: ${load}`);
}
