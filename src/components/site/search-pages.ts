import { isMeant, plain, wordsOf } from './search-words.ts';

/** The parts of a result that do not depend on the search: a page's text and metadata. */
interface Text {
  readonly content: string;
  readonly meta: { readonly keywords?: string };
}
/** A page that the index found for one word. */
interface Hit<Page> {
  readonly id: string;
  readonly score: number;
  /** Positions of the word in the page's text; empty if it occurs only in the metadata. */
  readonly words: readonly number[];
  readonly data: () => Promise<Page>;
}
export interface Index<Page> {
  search(words: string): Promise<{ readonly results: readonly Hit<Page>[] }>;
}

/** The index as Pagefind provides it, in chunks fetched on demand. */
export interface Parted<Page> extends Index<Page> {
  /** Fetches the chunks that could hold these words. */
  preload(words: string): Promise<void>;
}

/** Sorts after any word that begins with the text before it. */
const AFTER_ALL = 'zzzz';

/**
 * An index whose answers do not depend on earlier searches. Pagefind itself looks for words with
 * the same beginning in every chunk it happens to have, and fetches only the first that could hold
 * one.
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

/** The factor on the score of a page that lacks one of the words. */
const PARTLY = 0.6;
/** A page scoring less than this share of the best is not shown. */
const LEAST = 0.1;

/**
 * The pages for a question, best first. The index itself finds only pages that hold every word, and
 * a question in plain words always has one that no page holds. So each word is searched separately,
 * and rare words count for more. A page with more of the words comes before one with fewer. A page
 * that has the question itself among its keywords comes first: “how much cement” leaves one word,
 * which most pages hold, and “what can I make” leaves none.
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
      // The excerpt that shows all the words, if there is one.
      return { id, score, data: (excerpts.get(id) ?? best).data, named: named.has(id) };
    })
    .sort((a, b) => Number(b.named) - Number(a.named) || b.score - a.score);
  const most = Math.max(...scored.map(({ score }) => score));
  return {
    hits: scored.filter(({ score, named }) => named || score >= LEAST * most),
    unknown: words.flatMap(([word], i) => (each[i]!.size > 0 ? [] : word!)),
  };
}

/** This many pages come first, whatever their chapter: few readers look further. */
const FIRST = 3;

/**
 * The pages found, best first, grouped for display: the best ones, then the others under their
 * chapters.
 */
export const groupsOf = <Page>(
  found: readonly Page[],
  chapterOf: (page: Page) => string,
): readonly (readonly [head: string, pages: readonly Page[]])[] => {
  // Written out because browsers of 2023 lack `Map.groupBy`.
  const chapters = new Map<string, Page[]>();
  for (const page of found.slice(FIRST)) {
    const chapter = chapterOf(page);
    chapters.set(chapter, [...(chapters.get(chapter) ?? []), page]);
  }
  return [['Most likely', found.slice(0, FIRST)], ...chapters];
};

/** The pages with a keyword that is the question, or begins with it. */
async function pagesNamed<Page extends Text>(index: Index<Page>, phrase: string) {
  // Quotation marks ask for the words in sequence.
  const { results } = await index.search(`"${phrase}"`);
  const ids = results.map(async ({ id, data }) => {
    const keywords = (await data()).meta.keywords?.split(',') ?? [];
    return (
      keywords.some((keyword) => `${plain(keyword).join(' ')} `.startsWith(`${phrase} `)) && id
    );
  });
  return new Set(await Promise.all(ids));
}

/** The best hit of each page for any word of a family of synonyms. */
async function searchFamily<Page extends Text>(index: Index<Page>, family: readonly string[]) {
  const found = await Promise.all(family.map((word) => searchWord(index, word)));
  const best = new Map<string, Hit<Page>>();
  for (const hit of found.flat()) {
    const other = best.get(hit.id);
    if (!other || hit.score > other.score) best.set(hit.id, hit);
  }
  return best;
}

/** How many of the best pages are checked for the word itself. */
const LOOKED_INTO = 3;

/**
 * The pages that hold a word. If one of the best only holds a word with the same beginning, all
 * pages are checked.
 */
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
