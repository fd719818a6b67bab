// The built site as the checks see it: every file, and every page parsed.

import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { HtmlValidate, Parser } from 'html-validate';

/** @typedef {import('html-validate').HtmlElement} Element */

/**
 * @typedef {object} Page
 * @property {string} file   path in the site's folder, with forward slashes
 * @property {string} path   where a reader finds it, from the base path on: `water/hardness/`
 * @property {string} html
 * @property {Element} root  the parsed document
 */

/**
 * Every file of the site, as paths with forward slashes.
 * @param {string} folder
 */
export function filesOf(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

/**
 * Where a reader finds a page, from the base path on.
 * @param {string} file
 */
export const pathOf = (file) => file.replace(/(^|\/)index\.html$/, '$1');

const reading = await new HtmlValidate({ root: true }).getConfigFor('page.html');

/**
 * Every page of the site. Pages of the search program are not ours.
 * @param {string} folder
 * @returns {Page[]}
 */
export function pagesOf(folder) {
  const files = filesOf(folder).filter((f) => f.endsWith('.html') && !f.startsWith('pagefind/'));
  return files.map((file) => {
    const html = readFileSync(join(folder, file), 'utf8');
    const source = { data: html, filename: file, line: 1, column: 1, offset: 0 };
    return { file, path: pathOf(file), html, root: new Parser(reading).parseHtml(source) };
  });
}

const entities = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: '\u00a0' };

/**
 * Decodes the characters that HTML escapes stand for.
 * @param {string} text
 */
export function decoded(text) {
  return text.replace(/&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi, (whole, hex, decimal, name) => {
    if (hex) return String.fromCodePoint(Number.parseInt(hex, 16));
    if (decimal) return String.fromCodePoint(Number(decimal));
    return entities[/** @type {keyof typeof entities} */ (name)] ?? whole;
  });
}

/**
 * An attribute's text, or nothing when the element lacks it.
 * @param {Element} element
 * @param {string} name
 */
export function attribute(element, name) {
  const value = element.getAttributeValue(name);
  return value === null ? undefined : decoded(value);
}
