// Words that show that a value went missing on its way to the page.

import { attribute, decoded } from '../pages.mjs';

/** @typedef {import('../pages.mjs').Page} Page */
/** @typedef {import('html-validate').HtmlElement} Element */

const lost = /\[object \w+\]|\bundefined\b|\bNaN\b|(?<![\w])-?\bInfinity\b/;
/** Marks prose that must contain one of these words, for instance about a format. */
const allowed = 'data-literal';
const unread = new Set(['script', 'style', 'template', 'annotation']);
const readAloud = [
  'alt',
  'title',
  'aria-label',
  'aria-description',
  'placeholder',
  'value',
  'content',
];

/**
 * @param {Element} element
 * @param {string[]} found
 */
function look(element, found) {
  if (unread.has(element.tagName) || element.hasAttribute(allowed)) return;
  for (const name of readAloud) {
    const value = attribute(element, name);
    if (value !== undefined && lost.test(value)) found.push(`${name}="${value}"`);
  }
  for (const child of element.childNodes) {
    if (child.nodeName !== '#text') continue;
    const text = decoded(child.textContent);
    const at = text.search(lost);
    if (at >= 0)
      found.push(`"…${text.slice(Math.max(0, at - 40), at + 40).replace(/\s+/g, ' ')}…"`);
  }
  for (const child of element.childElements) look(child, found);
}

/**
 * @param {Page} page
 * @returns {string[]}
 */
export function textFaults({ root }) {
  /** @type {string[]} */
  const found = [];
  look(root, found);
  return found.map((where) => `shows a lost value: ${where}`);
}
