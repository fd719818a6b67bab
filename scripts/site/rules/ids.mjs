// Ids are unique, and every reference to one within the page has a target.

import { attribute } from '../pages.mjs';

/** @typedef {import('../pages.mjs').Page} Page */

const pointing = ['for', 'aria-labelledby', 'aria-describedby', 'aria-controls'];

/**
 * The ids of a page.
 * @param {Page} page
 */
export const idsOf = ({ root }) =>
  new Set(root.querySelectorAll('[id]').map((element) => attribute(element, 'id')));

/**
 * @param {Page} page
 * @returns {string[]}
 */
export function idFaults(page) {
  const faults = [];
  const given = new Set();
  for (const element of page.root.querySelectorAll('[id]')) {
    const id = attribute(element, 'id');
    if (given.has(id)) faults.push(`has the id "${id}" twice`);
    given.add(id);
  }
  for (const name of pointing) {
    for (const element of page.root.querySelectorAll(`[${name}]`)) {
      const ids = (attribute(element, name) ?? '').split(/\s+/).filter(Boolean);
      for (const id of ids) {
        if (!given.has(id)) faults.push(`${name}="${id}" names nothing on the page`);
      }
    }
  }
  return faults;
}
