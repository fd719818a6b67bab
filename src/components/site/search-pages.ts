import { isMeant, plain, wordsOf } from './search-words.ts';

/** A page's text and what stands beside it, the same whatever was searched. */
interface Text {
  readonly content: string;
  readonly meta: { readonly keywords?: string };
}
/** One page as the index found it for one word. */
interface Hit<Page> {
  readonly id: string;
  readonly score: number;
  /** Where in the page's text the word stands; nowhere if only beside the text. */
  readonly words: readonly number[];
  readonly data: () => Promise<Page>;
}
export interface Index<Page> {
  search(words: string): Promise<{ readonly results: readonly Hit<Page>[] }>;
}

/** The index as it comes, in parts that are fetched as they are asked for. */
export interface Parted<Page> extends Index<Page> {
  /** Fetches the parts that could hold these words. */
  preload(words: string): Promise<void>;
}

/** After any word that begins with what stands before it. */
const AFTER_ALL = 'zzzz';

/**
 * An index that answers alike whatever was asked before. As it comes it looks for words that begin as the one asked
 * does in all parts it happens to have, and fetches only the first that could hold one.
 */
export const whole = <Page>(parted: Parted<Page>): Index<Page> => ({
  async search(words) {
    await Promise.all(words.split(' ').map((word) => parted.preload(word + AFTER_ALL)));
    return parted.search(words);
  },
});

/** The pages for a question, best first, and the words of it that no page holds. */
interface Pages<Page> {
  readonly hits: readonly Omit<Hit<Page>, 'words'>[];
  readonly unknown: readonly string[];
}

/** What a page that lacks one of the words still gets of its score. */
const PARTLY = 0.6;
/** A page with less than this share of the best one's score is not what was asked for. */
const LEAST = 0.1;

/**
 * The pages for a question, best first. The index itself finds only pages that hold every word,
 * and a question in plain words has always one that no page holds; so each word is searched by
 * itself, a rare word counting for more, and a page with more of the words comes before one with
 * fewer. A page that has the question itself among its keywords comes before all: of “how much cement” one word is
 * left, and most pages hold it; of “what can I make” none.
 */
export async function findPages<Page extends Text>(
  index: Index<Page>,
  asked: string,
): Promise<Pages<Page>> {
  const words = wordsOf(asked);
  const phrase = plain(asked);
  const [named, together, ...each] = await Promise.all([
    phrase.length > 1 || /\d/.test(asked) ? pagesNamed(index, phrase.join(' ')) : new Set(),
    index.search(words.map(([word]) => word).join(' ')),
    ...words.map((family) => searchFamily(index, family)),
  ]);
  const known = each.filter((hits) => hits.size > 0);
  const ids = new Set(known.flatMap((hits) => [...hits.keys()]));
  const excerpts = new Map(together?.results.map((hit) => [hit.id, hit]));
  const scored = [...ids]
    .map((id) => {
      const hits = known.flatMap((found) => found.get(id) ?? []);
      const best = hits.reduce((a, b) => (b.score > a.score ? b : a));
      const score =
        hits.reduce((sum, hit) => sum + hit.score, 0) * PARTLY ** (known.length - hits.length);
      // The excerpt that shows all the words, where there is one.
      return { id, score, data: (excerpts.get(id) ?? best).data, named: named.has(id) };
    })
    .sort((a, b) => Number(b.named) - Number(a.named) || b.score - a.score);
  const most = Math.max(...scored.map(({ score }) => score));
  return {
    hits: scored.filter(({ score, named }) => named || score >= LEAST * most),
    unknown: words.flatMap(([word], i) => (each[i]!.size > 0 ? [] : word!)),
  };
}

/** So many pages stand first, whatever their chapter: whoever asks reads no further. */
const FIRST = 3;

/** The pages found, best first, as they are shown: the best, then the others under their chapters. */
export const groupsOf = <Page>(
  found: readonly Page[],
  chapterOf: (page: Page) => string,
): readonly (readonly [head: string, pages: readonly Page[]])[] => {
  // By hand: a telephone of 2023 has no `Map.groupBy`.
  const chapters = new Map<string, Page[]>();
  for (const page of found.slice(FIRST)) {
    const chapter = chapterOf(page);
    chapters.set(chapter, [...(chapters.get(chapter) ?? []), page]);
  }
  return [['Most likely', found.slice(0, FIRST)], ...chapters];
};

/** The pages that have a question, or one that begins with it, among their keywords. */
async function pagesNamed<Page extends Text>(index: Index<Page>, phrase: string) {
  // In quotes, its words are found as they follow each other.
  const { results } = await index.search(`"${phrase}"`);
  const ids = results.map(async ({ id, data }) => {
    const keywords = (await data()).meta.keywords?.split(',') ?? [];
    return (
      keywords.some((keyword) => `${plain(keyword).join(' ')} `.startsWith(`${phrase} `)) && id
    );
  });
  return new Set(await Promise.all(ids));
}

/** The best hit of each page for any word of a family. */
async function searchFamily<Page extends Text>(index: Index<Page>, family: readonly string[]) {
  const found = await Promise.all(family.map((word) => searchWord(index, word)));
  const best = new Map<string, Hit<Page>>();
  for (const hit of found.flat()) {
    const other = best.get(hit.id);
    if (!other || hit.score > other.score) best.set(hit.id, hit);
  }
  return best;
}

/** So many of the best pages are looked into for the word itself. */
const LOOKED_INTO = 3;

/** The pages that hold a word: all are looked into where one of the best holds only one that begins alike. */
async function searchWord<Page extends Text>(index: Index<Page>, word: string) {
  const { results } = await index.search(word);
  const meant = (hits: typeof results) =>
    Promise.all(
      hits.map(async (hit) => (await foundIn(hit)).some((other) => isMeant(word, other))),
    );
  if ((await meant(results.slice(0, LOOKED_INTO))).every(Boolean)) return results;
  const held = await meant(results);
  return results.filter((_, i) => held[i]);
}

async function foundIn<Page extends Text>({ words, data }: Hit<Page>): Promise<string[]> {
  const { content, meta } = await data();
  if (words.length === 0) return Object.values(meta).join(' ').split(/\s+/);
  const all = content.split(/\s+/);
  return words.map((at) => all[at] ?? '');
}
