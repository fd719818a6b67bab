// No page is so long that a phone on a building site waits for it.

import { gzipSync } from 'node:zlib';

/** @typedef {import('../pages.mjs').Page} Page */

/** The most a page's HTML may weigh, compressed, in bytes: 20 kB. */
export const MOST_HTML = 20_000;

/**
 * @param {Page} page
 * @returns {string[]}
 */
export function weightFaults({ html }) {
  const bytes = gzipSync(html, { level: 9 }).length;
  return bytes > MOST_HTML ? [`weighs ${bytes} B compressed, more than ${MOST_HTML}`] : [];
}
