import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const FOLDER = 'content/chapters/';
/** Pages that need no <Decide> or <Next>, each with the reason. None so far. */
const EXCEPT: Readonly<Record<string, string>> = {};

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

test('the chapters are found, and every exception is a page', () => {
  expect(pages.length).toBeGreaterThan(60);
  for (const page of Object.keys(EXCEPT)) expect(globSync(FOLDER + page)).toHaveLength(1);
});

describe.each(pages)('%s', (page) => {
  const text = body(page);

  test('opens with what can be decided after it', () => {
    expect(text.indexOf('<Decide>')).toBe(0);
    const decisions = text.slice(0, text.indexOf('</Decide>')).match(/^- .+[;.]$/gm) ?? [];
    expect(decisions.length).toBeGreaterThan(0);
  });

  test('ends with what to do next, once', () => {
    expect(text.match(/<Next to="\/[^"]*">\S[\s\S]*?<\/Next>$/)).not.toBeNull();
    expect(text.match(/<Next /g)).toHaveLength(1);
  });
});
