import { expect, test } from 'vitest';
import { findPages, groupsOf, type Index } from '../../src/components/site/search-pages.ts';
import { wordsOf } from '../../src/components/site/search-words.ts';

const first = (asked: string) => wordsOf(asked).map(([word]) => word);

test.each([
  ['When can I demold?', ['demould']],
  ["Won't it set in the cold?", ['set', 'cold']],
  ['fiber color odor center', ['fibre', 'colour', 'odour', 'centre']],
  ['neutralize', ['neutralise']],
  ['size of a liter meter', ['size', 'litre', 'metre']],
  ['700 mg/L', ['mg/l']],
  ['20 gpg', ['gpg']],
  ['load-bearing wall', ['load-bearing', 'wall']],
  ['0.207', ['0.207']],
  ['what is it', ['what', 'is', 'it']],
  ['  ', []],
])('%j asks for %j', (asked, words) => {
  expect(first(asked)).toEqual(words);
});

test('a word brings those that mean the same', () => {
  expect(wordsOf('gallons')[0]).toContain('gal');
  expect(wordsOf('30 lb/ft3')[0]).toContain('lb/ft³');
  expect(wordsOf('mold')[0]).toEqual(expect.arrayContaining(['mould', 'form']));
});

/** An index that knows these pages by their words, each word counting one. */
const indexOf = (pages: Record<string, string>): Index<string> => ({
  search: async (words) => ({
    results: Object.entries(pages)
      .filter(([, text]) => words.split(' ').every((word) => text.split(' ').includes(word)))
      .map(([id]) => ({ id, score: 1, data: async () => `${id} for ${words}` })),
  }),
});

test('a page with more of the words comes first, and one lacking a word is still found', async () => {
  const index = indexOf({ a: 'foam', b: 'foam collapse wet', c: 'wet foam' });
  const hits = await findPages(index, 'my foam is wet and collapses');
  expect(hits.map(({ id }) => id)).toEqual(['b', 'c', 'a']);
});

test('a word that no page holds takes nothing away', async () => {
  const index = indexOf({ a: 'foam' });
  const [hit] = await findPages(index, 'foam zzqqx');
  expect(hit?.score).toBe(1);
  expect(await findPages(index, 'zzqqx')).toEqual([]);
});

test('the excerpt is of all the words where a page holds them all', async () => {
  const [hit] = await findPages(indexOf({ a: 'foam wet' }), 'wet foam');
  expect(await hit?.data()).toBe('a for wet foam');
});

test('a page far below the best is left out', async () => {
  const scores: Record<string, number> = { foam: 1, wet: 20 };
  const index: Index<string> = {
    search: async (words) => ({
      results: words.split(' ').flatMap((word) => ({
        id: word === 'wet' ? 'b' : 'a',
        score: scores[word] ?? 0,
        data: async () => word,
      })),
    }),
  };
  expect((await findPages(index, 'wet foam')).map(({ id }) => id)).toEqual(['b']);
});

test('the best three are shown first, whatever their chapters, and the others by theirs', () => {
  const found = ['safety/a', 'mix/a', 'safety/b', 'mix/b', 'safety/c', 'mix/c'];
  expect(groupsOf(found, (page) => page.split('/')[0]!)).toEqual([
    ['Most likely', ['safety/a', 'mix/a', 'safety/b']],
    ['mix', ['mix/b', 'mix/c']],
    ['safety', ['safety/c']],
  ]);
});
