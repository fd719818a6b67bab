import { globSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { expect, test } from 'vitest';
import { cautionOf, cautions, sourceOf, sources } from '../../src/components/library.ts';
import { livePartOf, worksheetOf, worksheets } from '../../src/components/live/catalogue.ts';
import { keysIn, sourcesIn } from '../../src/components/source-keys.ts';
import { RUN_STEPS } from '../../src/worksheets/live/run/RunSteps.tsx';
import { readTables } from '../published/rows.ts';

/** What is written and never shown, or asked for and not there, would otherwise come to light in the build or not at all. */
const read = (pattern: string) => globSync(pattern).map((file) => readFileSync(file, 'utf8'));
const chapters = read('content/chapters/**/*.mdx');
const pages = [...chapters, ...read('src/pages/**/*.astro')];
const named = (texts: readonly string[], pattern: RegExp) =>
  new Set(texts.flatMap((text) => [...text.matchAll(pattern)].map(([, id]) => id!)));

const shown = {
  worksheets: named(chapters, /<Worksheet\s[^>]*?\bid="([^"]+)"/g),
  live: named(pages, /<Live\s[^>]*?\bid="([^"]+)"/g),
  cautions: named(pages, /<Caution\s[^>]*?\bid="([^"]+)"/g),
  sources: named(pages, /<Source\s[^>]*?\bk="([^"]+)"/g),
};
const sheets = [...worksheets.values()];
const ofSheets = new Set(sheets.flatMap((sheet) => sheet.cautions));
const cited = new Set([
  ...shown.sources,
  ...sheets.flatMap((sheet) => sheet.sources),
  ...[...cautions.values()].flatMap((caution) => caution.sources),
  ...readTables('tests/published').flatMap(({ rows }) => rows.map(({ source }) => source)),
  ...read('src/**/*.{ts,tsx}').flatMap((code) => sourcesIn(code).flatMap(keysIn)),
]);
const missing = (all: Iterable<string>, used: { has(id: string): boolean }) =>
  [...all].filter((id) => !used.has(id));

test('every worksheet stands in a chapter, and every live part on a page', () => {
  expect(missing(worksheets.keys(), shown.worksheets)).toEqual([]);
  const live = globSync('src/worksheets/live/*.tsx').map((file) => basename(file, '.tsx'));
  expect(missing(live, shown.live)).toEqual([]);
});

test('every caution stands beside a worksheet or a step at the bench', () => {
  const beside = new Set<string>([...ofSheets, ...RUN_STEPS.flatMap(({ cautions }) => cautions)]);
  expect(missing(cautions.keys(), beside)).toEqual([]);
});

test('every source is cited', () => {
  expect(missing(sources.keys(), cited)).toEqual([]);
});

test('what worksheets, chapters and pages name is there, and a caution where its links lead', () => {
  for (const id of shown.worksheets) worksheetOf(id, 'a chapter');
  for (const id of shown.live) livePartOf(id, 'a page');
  for (const id of [...ofSheets, ...shown.cautions]) cautionOf(id, 'a worksheet or a page');
  for (const sheet of sheets) for (const key of sheet.sources) sourceOf(key, sheet.id);
  for (const key of shown.sources) sourceOf(key, 'a page');
});

test('every folder of worksheets is listed for the script that wakes them', () => {
  const folders = new Set(
    globSync('src/worksheets/*/*.tsx').map((file) => file.replaceAll('\\', '/').split('/')[2]!),
  );
  for (const folder of folders) {
    const list = `src/components/live/listed/${folder}.ts`;
    const text = globSync(list).map((file) => readFileSync(file, 'utf8'));
    expect(text, `${list} must stand beside its like, or no page wakes its worksheets`).toEqual([
      `export default import.meta.glob('../../../worksheets/${folder}/*.tsx');\n`,
    ]);
  }
});
