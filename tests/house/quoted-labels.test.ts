import { readdirSync, readFileSync } from 'node:fs';
import { extname, join, resolve } from 'node:path';
import { expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '../..');

const textsOf = (folder: string, ...kinds: string[]): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => kinds.includes(extname(file)))
    .map((file) => readFileSync(join(root, folder, file), 'utf8'));

const spaced = (text: string) => text.replace(/\\u00a0|&nbsp;|\s+/g, ' ');
const uncommented = (text: string) =>
  text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/[^\n]*/g, '$1');

/** Buttons, fields, choices, worksheets and pages begin with a capital; a reading given as an example holds a number. */
const quotedIn = (text: string): string[] =>
  [...spaced(text).matchAll(/“([A-Z][^”$\d{}]*)”/g)].map(([, name]) => name!);

const code = textsOf('src', '.ts', '.tsx', '.astro').map(uncommented);
const chapters = textsOf('content', '.mdx', '.json');

/** What is quoted does not vouch for itself. */
const unquoted = code.map((text) => spaced(text).replace(/“[^”]*”/g, '')).join('\n');
const titles = chapters.flatMap((text) =>
  [...text.matchAll(/^(?:title: |##+ )(.*?)(?: \{ #.*)?$/gm)].map(([, title]) => title!),
);

/** A label is a whole literal or all that stands between two tags or braces: no words within a sentence. What qualifies it after a comma may stay unquoted. */
const isLabel = (name: string): boolean =>
  titles.includes(name) ||
  new RegExp(`['"\`>}{] ?${name.replace(/[^\w ’,-]/g, '\\$&')} ?['"\`<{,]`).test(unquoted);

test('every button, field, worksheet or page that a text quotes by name is called that', () => {
  const quoted = [...code, ...chapters].flatMap(quotedIn);
  expect(quoted.length).toBeGreaterThan(40);
  expect([...new Set(quoted)].filter((name) => !isLabel(name))).toEqual([]);
});

test('a name that nothing has is found out, and so are words from within a sentence', () => {
  expect(quotedIn('Press “Put mine back”, “about 14” or “Hardness 17”.')).toEqual([
    'Put mine back',
  ]);
  expect(isLabel('Save batch')).toBe(true);
  expect(isLabel('Put mine back')).toBe(false);
  expect(isLabel('Had every bubble of the')).toBe(false);
});
