import { markdownToHtml } from 'satteri';
import { expect, test } from 'vitest';
import { scrollingTables } from '../../src/components/markdown/tables.mjs';

const plugin = scrollingTables();
const html = async (text: string) =>
  (await markdownToHtml(text, { hastPlugins: [plugin], features: { gfm: true } })).html;
const names = (text: string) => [...text.matchAll(/aria-label="([^"]*)"/g)].map(([, name]) => name);
const TABLE = '| a | b |\n|---|---|\n| 1 | 2 |\n';

test('the box of a table is called as the heading above it, a second with its number', async () => {
  const text = `${TABLE}\n## One *thing*\n\n${TABLE}\ntext\n\n${TABLE}\n### Another\n\n${TABLE}`;
  const expected = ['Table', 'One thing', 'One thing, 2', 'Another'];
  expect(names(await html(text))).toEqual(expected);
  // The next page begins anew.
  expect(names(await html(TABLE))).toEqual(['Table']);
});

test('the head of a column says so', async () => {
  expect((await html(TABLE)).match(/<th scope="col">/g)).toHaveLength(2);
});
