// The markup is valid HTML, so that every browser and screen reader reads it alike.

import { HtmlValidate } from 'html-validate';

/** @typedef {import('../pages.mjs').Page} Page */

const validator = new HtmlValidate({ root: true, extends: ['html-validate:standard'] });

/**
 * @param {Page} page
 * @returns {Promise<string[]>}
 */
export async function markupFaults({ file, html }) {
  const { results } = await validator.validateString(html, file);
  return (results[0]?.messages ?? []).map(
    ({ message, ruleId, selector, line, column }) =>
      `${message} (${ruleId}, at ${selector ?? `${line}:${column}`})`,
  );
}
