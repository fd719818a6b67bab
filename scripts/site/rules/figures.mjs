// Every drawing is either decoration or has a label that says what it shows, with its numbers.

import { decoded } from '../pages.mjs';

/** @typedef {import('../pages.mjs').Page} Page */

const drawing = /<svg\b([^>]*)>([\s\S]*?)<\/svg>(?:\s*<figcaption[^>]*>([\s\S]*?)<\/figcaption>)?/g;
const lettering = /<text\b([^>]*)>([\s\S]*?)<\/text>/g;

/** @param {string} text */
const bare = (text) => decoded(text.replace(/<[^>]*>/g, ''));
/** @param {string} text */
const numbersOf = (text) => text.match(/\d+(?:\.\d+)?/g) ?? [];

/**
 * @param {Page} page
 * @returns {string[]}
 */
export function figureFaults({ html }) {
  const faults = [];
  for (const [, about = '', inside = '', caption = ''] of html.matchAll(drawing)) {
    const drawn = [...inside.matchAll(lettering)].map(([, how = '', text = '']) => ({
      // Axis names and ticks say nothing by themselves.
      soft: /class="[^"]*\b(?:soft|axis-name)\b/.test(how),
      text: bare(text),
    }));
    const shown = drawn[0] ? `“${drawn[0].text}”` : about.trim();
    if (/\baria-hidden="true"/.test(about)) {
      if (drawn.length > 0) faults.push(`hides a drawing that has words: ${shown}`);
      continue;
    }
    const label = decoded(/\baria-label="([^"]*)"/.exec(about)?.[1] ?? '');
    if (!/\brole="img"/.test(about) || !label) {
      faults.push(`has a drawing without words for it: ${shown}`);
      continue;
    }
    const told = new Set(numbersOf(`${label} ${bare(caption)}`));
    if (numbersOf(drawn.map(({ text }) => text).join(' ')).length > 0 && !/\d/.test(label))
      faults.push(`has a drawing whose words leave its numbers out: “${label}”`);
    for (const { soft, text } of drawn) {
      const untold = soft ? undefined : numbersOf(text).find((number) => !told.has(number));
      if (untold)
        faults.push(`has a drawing that shows “${text}” and does not say ${untold}: “${label}”`);
    }
  }
  return faults;
}
