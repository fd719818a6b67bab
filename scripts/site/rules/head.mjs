// What every page must have exactly once: a heading, a title, a description, a language.

import { attribute, decoded } from '../pages.mjs';

/** @typedef {import('../pages.mjs').Page} Page */

/** The length of a description that search engines show, in characters. */
const SHORTEST = 50;
const LONGEST = 160;

/**
 * @param {Page} page
 * @returns {string[]}
 */
export function headFaults({ root }) {
  const faults = [];
  const headings = root.querySelectorAll('h1');
  if (headings.length !== 1) faults.push(`has ${headings.length} <h1>, not one`);
  else if (!headings[0]?.textContent.trim()) faults.push('has an empty <h1>');

  const titles = root.querySelectorAll('head > title');
  if (titles.length !== 1) faults.push(`has ${titles.length} <title>, not one`);
  else if (decoded(titles[0]?.textContent ?? '').trim().length < 3)
    faults.push('has no real title');

  const descriptions = root.querySelectorAll('head > meta[name="description"]');
  const description = descriptions[0] && attribute(descriptions[0], 'content')?.trim();
  if (descriptions.length !== 1) faults.push(`has ${descriptions.length} descriptions, not one`);
  else if (!description || description.length < SHORTEST || description.length > LONGEST)
    faults.push(
      `has a description of ${description?.length ?? 0} characters, not ${SHORTEST} to ${LONGEST}`,
    );

  const html = root.querySelector('html');
  if (!html || !attribute(html, 'lang')) faults.push('does not say its language');
  return faults;
}

/**
 * Titles and descriptions tell pages apart in tabs, histories and search results.
 * @param {readonly Page[]} pages
 * @returns {string[]}
 */
export function sharedHeads(pages) {
  /** @type {Map<string, string>} */
  const first = new Map();
  const faults = [];
  for (const { file, root } of pages) {
    const title = decoded(root.querySelector('head > title')?.textContent ?? '').trim();
    const tag = root.querySelector('head > meta[name="description"]');
    const description = (tag && attribute(tag, 'content')?.trim()) ?? '';
    for (const words of [`title: "${title}"`, `description: "${description}"`]) {
      const other = first.get(words);
      if (other) faults.push(`${file}: shares with ${other} its ${words}`);
      else first.set(words, file);
    }
  }
  return faults;
}
