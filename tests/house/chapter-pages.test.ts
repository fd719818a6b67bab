import { globSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, test } from 'vitest';

const FOLDER = 'content/chapters/';
/** Pages that need no <Decide> or <Next>, each with the reason. None so far. */
const EXCEPT: Readonly<Record<string, string>> = {};
/** Pages without a figure of the invented example in their text, each with the reason. */
const NO_EXAMPLE: Readonly<Record<string, string>> = {};
/** The demo scenario and the six invented batches, as the text names them. */
const EXAMPLE = /\b(?:demo|invented)\b/i;
/** A figure typed, or put in when the page is built. */
const FIGURE = /\d|<Amount |\{[^#}]*\}/;

/** What stands on more pages than one on purpose, each with the reason. */
const SAID_TWICE: Readonly<Record<string, string>> = {
  '112, 999 or 911, whichever is the number where you are. With a splash in the eye, rinse first and let somebody else call':
    'a caustic eye cannot wait for a link',
};
/** So many words in a row are no turn of phrase: one page repeats another. */
const SAME_WORDS = 10;

const pages = globSync(`${FOLDER}*/*.mdx`)
  .map((file) => file.replaceAll('\\', '/').replace(FOLDER, ''))
  .filter((page) => !(page in EXCEPT))
  .sort();

/** The page without what stands before its first sentence: front matter, imports, exports. */
const body = (page: string) =>
  readFileSync(FOLDER + page, 'utf8')
    .replace(/^---[\s\S]*?\n---\n/, '')
    .trim()
    // Imports and what is worked out from them: everything to the next empty line is code.
    .replace(/^(?:(?:import|export|\/\*\*) [\s\S]*?\n\n+)*/, '');

/** What a reader sees of a paragraph: neither what is worked out in it nor where its links lead. */
const withoutCode = (paragraph: string) => paragraph.replace(/\{[^}]*\}|<[^>]*>|\]\([^)]*\)/g, ' ');

test('the chapters are found, and every exception is a page', () => {
  expect(pages.length).toBeGreaterThan(60);
  for (const page of [...Object.keys(EXCEPT), ...Object.keys(NO_EXAMPLE)])
    expect(globSync(FOLDER + page)).toHaveLength(1);
});

test('the page on safety holds every caution, once', () => {
  const shown = [...body('safety/index.mdx').matchAll(/<Caution id="([\w-]+)" \/>/g)];
  const known = globSync('content/cautions/*.json').map((file) => basename(file, '.json'));
  expect(shown.map(([, id]) => id).sort()).toEqual(known.sort());
});

describe.each(pages)('%s', (page) => {
  const text = body(page);

  test('what it works out gives something back', () => {
    // `(text) => {text}` is a body that returns nothing, and leaves a gap in the text where it is used.
    const code = readFileSync(FOLDER + page, 'utf8').match(/^export const .*$/gm) ?? [];
    expect(code.filter((line) => /=>\s*\{\s*\w+\s*\}/.test(line))).toEqual([]);
  });

  test('opens with what can be decided after it', () => {
    expect(text.indexOf('<Decide>')).toBe(0);
    const decisions = text.slice(0, text.indexOf('</Decide>')).match(/^- .+[;.]$/gm) ?? [];
    expect(decisions.length).toBeGreaterThan(0);
  });

  test.skipIf(page in NO_EXAMPLE)('works something of the example out in figures', () => {
    const worked = text
      // A heading may name the example for the paragraph below it.
      .replace(/^(#.*)\n\n/gm, '$1\n')
      .split(/\n\n+/)
      .filter((paragraph) => EXAMPLE.test(withoutCode(paragraph)) && FIGURE.test(paragraph));
    expect(worked).not.toEqual([]);
  });

  test('ends with what to do next, once', () => {
    expect(text.match(/<Next to="\/[^"]*">\S[\s\S]*?<\/Next>$/)).not.toBeNull();
    expect(text.match(/<Next /g)).toHaveLength(1);
  });
});

test('the large links lead from First batch through every page, each once, and back', () => {
  const addressOf = (page: string) =>
    `/${page.replace(/(?:index)?\.mdx$/, '')}/`.replace('//', '/');
  const next = new Map(
    pages.map((page) => [addressOf(page), body(page).match(/<Next to="([^"]*)">/)?.[1] ?? '']),
  );
  const way: string[] = [];
  let at = '/first-batch/';
  for (; next.has(at) && !way.includes(at); at = next.get(at)!) way.push(at);
  expect(at).toBe('/first-batch/');
  expect([...next.keys()].filter((address) => !way.includes(address))).toEqual([]);
});

const wordsOf = (text: string) => (text.toLowerCase().match(/[\p{L}\p{N}’°%/]+/gu) ?? []).join(' ');

test('no page says in the same words what another says', () => {
  const saidOn = new Map<string, string>();
  const repeated: string[] = [];
  const meant = Object.keys(SAID_TWICE).map(wordsOf);
  const used = new Map(meant.map((sentence) => [sentence, 0]));
  for (const page of pages) {
    let text = wordsOf(withoutCode(body(page)));
    for (const sentence of meant) {
      if (text.includes(sentence)) used.set(sentence, used.get(sentence)! + 1);
      text = text.replace(sentence, '·');
    }
    const words = text.split(' ');
    const runs = words
      .slice(SAME_WORDS - 1)
      .map((_, i) => words.slice(i, i + SAME_WORDS).join(' '));
    for (const run of new Set(runs)) {
      const other = saidOn.get(run);
      if (other) repeated.push(`${other} and ${page}: ${run}`);
      saidOn.set(run, page);
    }
  }
  expect(repeated).toEqual([]);
  for (const [sentence, times] of used) expect(times, sentence).toBeGreaterThan(1);
});
