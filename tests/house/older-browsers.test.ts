import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** What the browsers of 2023 lack, and nothing puts in its place: the build lowers how code is written, not what it calls. */
const LATER =
  /\b(Map|Object)\.groupBy\(|Promise\.(withResolvers|try)\(|Array\.fromAsync\(|\.isSubsetOf\(|\.symmetricDifference\(|\bIterator\.from\(|Math\.sumPrecise\(|RegExp\.escape\(/;

/** What runs in the reader's browser; the other components run when the site is built. */
const shipped = globSync([
  'src/{core,bench,islands,worksheets}/**/*.{ts,tsx}',
  'src/components/{live,site}/**/*.ts',
]);

test('the shipped scripts call nothing that browsers of 2023 lack', () => {
  expect(shipped.length).toBeGreaterThan(300);
  expect('const byDay = Map.groupBy(batches, day);').toMatch(LATER);
  expect(shipped.filter((file) => LATER.test(readFileSync(file, 'utf8')))).toEqual([]);
});
