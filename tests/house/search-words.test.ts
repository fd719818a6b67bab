import { expect, test } from 'vitest';
import { apart } from '../../scripts/site/search.mjs';
import { findPages, groupsOf, type Index, whole } from '../../src/components/site/search-pages.ts';
import { bestSection, type Found, wholly } from '../../src/components/site/search-sections.ts';
import { isMeant, wordsOf } from '../../src/components/site/search-words.ts';

const first = (asked: string) => wordsOf(asked).map(([word]) => word);

test.each([
  ['When can I demold?', ['demould']],
  ["Won't it set in the cold?", ['set', 'cold']],
  ['fiber color odor center', ['fibre', 'colour', 'odour', 'centre']],
  ['neutralize', ['neutralise']],
  ['labor in the laboratory', ['labour', 'laboratory']],
  ['size of a liter in centimeters', ['size', 'litre', 'centimetres']],
  ['a TDS meter', ['tds', 'meter']],
  ['sulphate or sulfonate', ['sulfate', 'sulfonate']],
  ['700 mg/L', ['mg/l']],
  ['20 gpg', ['gpg']],
  ['load-bearing wall', ['load-bearing', 'wall']],
  ['0.207', ['0.207']],
  ['3 %', ['3%']],
  ['what is it', ['what', 'is', 'it']],
  ['  ', []],
])('%j asks for %j', (asked, words) => {
  expect(first(asked)).toEqual(words);
});

test('a word brings those that mean the same', () => {
  expect(wordsOf('gallons')[0]).toContain('gal');
  expect(wordsOf('30 lb/ft3')[0]).toContain('lb/ft³');
  expect(wordsOf('cubic meters')[1]).toContain('metre');
  expect(wordsOf('mold')[0]).toEqual(expect.arrayContaining(['mould', 'form']));
});

test.each([
  ['hardn', 'hardness,'],
  ['stripping', 'strip'],
  ['demoulded', 'Demoulding'],
  ['curing', '“cured”'],
  ['sticky', 'sticks;'],
  ['calendar', 'iCalendar'],
  ['load-bearing', 'load-bearing.'],
  ['stickier', 'sticky'],
  ['runniest', 'runny'],
  ['thickest', 'thickness'],
  ['safest', 'safe,'],
  ['wooden', 'wood'],
  ['exposed', 'exposure'],
  ['mg/l', 'mg/L;'],
])('%j is meant by %j', (asked, found) => {
  expect(isMeant(asked, found)).toBe(true);
});

test.each([
  ['perlite', 'per'],
  ['pregnant', 'pre-mix,'],
  ['barbecue', 'bars.'],
  ['birdbath', 'birds'],
  ['shelf', 'S.;'],
  ['lightning', 'light'],
  ['basin', 'base'],
])('%j is not meant by %j, which only begins alike', (asked, found) => {
  expect(isMeant(asked, found)).toBe(false);
});

interface Page {
  readonly content: string;
  readonly meta: { readonly title?: string; readonly keywords?: string };
  readonly asked: string;
}

/** A page found for a word, which stands where the page has it; `as` what the index took for it. */
const hit = (id: string, content: string, asked: string, { score = 1, as = asked } = {}) => ({
  id,
  score,
  words: content.split(' ').flatMap((word, at) => (as.split(' ').includes(word) ? at : [])),
  data: async (): Promise<Page> => ({ content, meta: {}, asked }),
});

/** An index that knows these pages by their words, each word counting one. */
const indexOf = (pages: Record<string, string>): Index<Page> => ({
  search: async (asked) => ({
    results: Object.entries(pages)
      .filter(([, text]) => asked.split(' ').every((word) => text.split(' ').includes(word)))
      .map(([id, text]) => hit(id, text, asked)),
  }),
});

test('a page with more of the words comes first, and one lacking a word is still found', async () => {
  const index = indexOf({ a: 'foam', b: 'foam collapse wet', c: 'wet foam' });
  const { hits } = await findPages(index, 'my foam is wet and collapses');
  expect(hits.map(({ id }) => id)).toEqual(['b', 'c', 'a']);
});

test('a word that no page holds takes nothing away, and is told', async () => {
  const index = indexOf({ a: 'foam' });
  const { hits, unknown } = await findPages(index, 'foam zzqqx');
  expect(hits[0]?.score).toBe(1);
  expect(unknown).toEqual(['zzqqx']);
  expect((await findPages(index, 'zzqqx')).hits).toEqual([]);
});

test('a word that the index only takes for another finds nothing', async () => {
  const index: Index<Page> = {
    search: async (asked) => ({ results: [hit('a', 'mass per volume', asked, { as: 'per' })] }),
  };
  expect(await findPages(index, 'perlite')).toEqual({ hits: [], unknown: ['perlite'] });
  expect((await findPages(index, 'per')).hits).toHaveLength(1);
});

test('a page that holds the word is found behind others that only begin alike', async () => {
  const alike = ['a', 'b', 'c'].map((id) =>
    hit(id, 'in proportion', 'props', { as: 'proportion' }),
  );
  const index: Index<Page> = {
    search: async (asked) => ({ results: [...alike, hit('d', 'it props itself up', asked)] }),
  };
  const { hits, unknown } = await findPages(index, 'props');
  expect(hits.map(({ id }) => id)).toEqual(['d']);
  expect(unknown).toEqual([]);
});

test('what begins as a word does is fetched to its end, whatever was fetched before', async () => {
  const parts = { a: ['foam', 'out'], b: ['outside', 'water'] } as const;
  const fetched = new Set<keyof typeof parts>();
  /** The first part whose last word comes no earlier. */
  const partOf = (word: string) => (word <= parts.a.at(-1)! ? 'a' : 'b');
  const index = whole<Page>({
    async preload(word) {
      fetched.add(partOf(word));
    },
    async search(asked) {
      fetched.add(partOf(asked));
      const held = [...fetched].flatMap((part) => parts[part]);
      return {
        results: held
          .filter((word) => word.startsWith(asked))
          .map((word) => hit(word, word, asked)),
      };
    },
  });
  const found = async () => (await index.search('out')).results.map(({ id }) => id).sort();
  expect(await found()).toEqual(['out', 'outside']);
  await index.search('water');
  expect(await found()).toEqual(['out', 'outside']);
});

test('a word beside the text of a page is held by it', async () => {
  const index: Index<Page> = {
    search: async (asked) => ({
      results: [
        {
          id: 'a',
          score: 1,
          words: [],
          data: async () => ({ content: 'foam', meta: { title: 'Sources' }, asked }),
        },
      ],
    }),
  };
  expect((await findPages(index, 'source')).hits).toHaveLength(1);
});

test('the excerpt is of all the words where a page holds them all', async () => {
  const { hits } = await findPages(indexOf({ a: 'foam wet' }), 'wet foam');
  expect((await hits[0]?.data())?.asked).toBe('wet foam');
});

test('a page that has the question among its keywords comes first, however little is left of it', async () => {
  const scores: Record<string, number> = { a: 9, b: 1, c: 5 };
  const keywords: Record<string, string> = {
    a: 'cement, how much',
    b: 'recipe, how much cement do I need, cement paste',
  };
  const index: Index<Page> = {
    search: async (asked) => ({
      results: Object.keys(scores).map((id) => ({
        ...hit(id, 'cement', asked, { score: scores[id]!, as: 'cement' }),
        data: async () => ({ content: 'cement', asked, meta: { keywords: keywords[id] ?? '' } }),
      })),
    }),
  };
  const order = async (asked: string) => (await findPages(index, asked)).hits.map(({ id }) => id);
  expect(await order('How much cement do I need?')).toEqual(['b', 'a', 'c']);
  expect(await order('how much cement')).toEqual(['b', 'a', 'c']);
  expect(await order('cement paste')).toEqual(['b', 'a', 'c']);
  // The question is more than the keyword, and a word alone is asked as ever.
  expect(await order('how much cement do I need today')).toEqual(['a', 'c', 'b']);
  expect(await order('cement')).toEqual(['a', 'c', 'b']);
});

test('a page far below the best is left out', async () => {
  const scores: Record<string, number> = { foam: 1, wet: 20 };
  const index: Index<Page> = {
    search: async (asked) => ({
      results: asked
        .split(' ')
        .map((word) => hit(word, 'wet foam', word, { score: scores[word] ?? 0 })),
    }),
  };
  const { hits } = await findPages(index, 'wet foam');
  expect(hits.map(({ id }) => id)).toEqual(['wet']);
});

test.each([
  ['… °C (68 °F), the least that …', '… the least that …'],
  ['… (68 °F), the least that …', '… the least that …'],
  ['… “sinks” in the text [Weaire 1999]', '… “sinks” in the text [Weaire 1999]'],
  ['… kg/m³ of foam and 20 …', '… of foam and …'],
  ['… g of it goes in for 1.5–2 …', '… of it goes in for …'],
  ['Begins here, and is 20 …', 'Begins here, and is …'],
  ['… strip at <mark>20</mark> …', '… strip at <mark>20</mark> …'],
  ['… <mark>kg</mark> a load', '… <mark>kg</mark> a load'],
  ['°C is a unit; ends at 20', '°C is a unit; ends at 20'],
])('an excerpt parts no number from its unit: %s', (excerpt, whole) => {
  expect(wholly(excerpt).replaceAll('\u00a0', ' ')).toBe(whole);
});

test('a quantity of an excerpt stays on one line', () => {
  expect(
    wholly('… if the <mark>foam</mark> is 10 kg/m³ (0.62 lb/ft³) <mark>heavier</mark> …'),
  ).toBe('… if the <mark>foam</mark> is 10\u00a0kg/m³ (0.62\u00a0lb/ft³) <mark>heavier</mark> …');
});

/** A page whose section on burns holds fewer of the words than another. */
const found: Found = {
  url: '/skin/',
  excerpt: '',
  content: '',
  meta: { keywords: 'burn, cement on my skin', answers: '{"first":["burn","it didn’t hurt"]}' },
  anchors: [{ id: 'first', text: 'If it happens' }],
  sub_results: [
    { url: '/skin/', title: 'Skin', excerpt: 'burn, <mark>cement</mark> on my <mark>skin</mark>' },
    { url: '/skin/#wear', title: 'What to wear', excerpt: '<mark>cement</mark> <mark>skin</mark>' },
    { url: '/skin/#what', title: 'What it does', excerpt: 'the <mark>skin</mark>' },
  ],
};

test.each([
  ['cement skin', '/skin/#wear', 'What to wear'],
  ['a cement burn on the skin', '/skin/#first', 'If it happens'],
  ['It didn’t hurt my skin', '/skin/#first', 'If it happens'],
  ['skin of a sunburn', '/skin/#wear', 'What to wear'],
])('%j opens %s of a page', (asked, url, title) => {
  expect(bestSection(found, asked)).toMatchObject({ url, title });
});

test('the best three are shown first, whatever their chapters, and the others by theirs', () => {
  const found = ['safety/a', 'mix/a', 'safety/b', 'mix/b', 'safety/c', 'mix/c'];
  expect(groupsOf(found, (page) => page.split('/')[0]!)).toEqual([
    ['Most likely', ['safety/a', 'mix/a', 'safety/b']],
    ['mix', ['mix/b', 'mix/c']],
    ['safety', ['safety/c']],
  ]);
});

test('a label, its number, its other unit and what is said of them are words of their own', () => {
  const read = (html: string) => apart(html).replace(/<[^>]*>/g, '');
  expect(read('<dt>The water</dt><dd><span>4.38</span></dd><dd class="most">Note</dd>')).toBe(
    'The water 4.38 Note ',
  );
  expect(read('<span> 18 gpg</span><span class="most">Most')).toBe(' 18 gpg Most');
  expect(read('<a href="#p">Pieces</a><a href="#l">Left</a>, with')).toBe('Pieces Left, with');
  expect(read('<text>sand</text><text>air</text>')).toBe('sand air ');
});
