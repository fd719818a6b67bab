import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** Pages that draw a table of their own, which `Table` could not hold, each with the reason. */
const DRAWS: Readonly<Record<string, string>> = {
  'content/chapters/batch-records/format.mdx': 'code and places to break stand in its cells',
};

/** What of a page's code belongs into the file beside it, where types and lint see it. */
function workedOut(page: string): readonly string[] {
  const withoutMaths = page.replace(/\$\$.*?\$\$/gs, '');
  const exported = withoutMaths.match(/^export .*$/gm) ?? [];
  const called = withoutMaths.match(/\{[^{}]*(?:=>|\.map\()/g) ?? [];
  // One step, from one unit to another, still reads; two or more want a name.
  const steps = (withoutMaths.match(/\{[^{}\n]*\}/g) ?? []).filter(
    (braces) => (braces.match(/ [*/+−-] /g) ?? []).length > 1,
  );
  return [...exported, ...called, ...steps];
}

test('the rule finds calculations in a page', () => {
  expect(
    workedOut('export const a = 1;\n\nText {a.b.toFixed(1)}, {c / HOUR} h. $$a / b / c$$'),
  ).toEqual(['export const a = 1;']);
  expect(workedOut('{rows.map((row) => <b>{row}</b>)}')).toHaveLength(1);
  expect(workedOut('Then {(a - b) / c} is left.')).toEqual(['{(a - b) / c}']);
});

test('pages hold no calculation that needs a name', () => {
  const pages = globSync('content/chapters/**/*.mdx').map((file) => file.replaceAll('\\', '/'));
  expect(pages.length).toBeGreaterThan(60);
  const found = pages.filter((file) => workedOut(readFileSync(file, 'utf8')).length > 0);
  expect(found).toEqual(Object.keys(DRAWS));
});
