// Headings go down one level at a time, so that readers who navigate by them miss nothing.

/** @typedef {import('../pages.mjs').Page} Page */

/**
 * @param {Page} page
 * @returns {string[]}
 */
export function headingFaults({ root }) {
  const faults = [];
  let level = 0;
  for (const heading of root.querySelectorAll('h1, h2, h3, h4, h5, h6')) {
    const next = Number(heading.tagName.slice(1));
    const words = heading.textContent.replace(/\s+/g, ' ').trim();
    if (!words) faults.push(`has an empty <${heading.tagName}>`);
    if (next > level + 1) faults.push(`goes from h${level} to h${next}: "${words}"`);
    level = next;
  }
  return faults;
}
