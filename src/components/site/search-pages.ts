import { wordsOf } from './search-words.ts';

/** One page as the index found it for one word. */
export interface Hit<Page> {
  readonly id: string;
  readonly score: number;
  readonly data: () => Promise<Page>;
}
export interface Index<Page> {
  search(words: string): Promise<{ readonly results: readonly Hit<Page>[] }>;
}

/** What a page that lacks one of the words still gets of its score. */
const PARTLY = 0.6;
/** A page with less than this share of the best one's score is not what was asked for. */
const LEAST = 0.1;

/**
 * The pages for a question, best first. The index itself finds only pages that hold every word,
 * and a question in plain words has always one that no page holds; so each word is searched by
 * itself, a rare word counting for more, and a page with more of the words comes before one with
 * fewer.
 */
export async function findPages<Page>(
  index: Index<Page>,
  asked: string,
): Promise<readonly Hit<Page>[]> {
  const words = wordsOf(asked);
  const [whole, ...each] = await Promise.all([
    index.search(words.map(([word]) => word).join(' ')),
    ...words.map((family) => searchFamily(index, family)),
  ]);
  const known = each.filter((hits) => hits.size > 0);
  const ids = new Set(known.flatMap((hits) => [...hits.keys()]));
  const excerpts = new Map(whole?.results.map((hit) => [hit.id, hit]));
  const scored = [...ids]
    .map((id) => {
      const hits = known.flatMap((found) => found.get(id) ?? []);
      const best = hits.reduce((a, b) => (b.score > a.score ? b : a));
      const score =
        hits.reduce((sum, hit) => sum + hit.score, 0) * PARTLY ** (known.length - hits.length);
      // The excerpt that shows all the words, where there is one.
      return { id, score, data: (excerpts.get(id) ?? best).data };
    })
    .sort((a, b) => b.score - a.score);
  return scored.filter(({ score }) => score >= LEAST * scored[0]!.score);
}

/** So many pages stand first, whatever their chapter: whoever asks reads no further. */
const FIRST = 3;

/** The pages found, best first, as they are shown: the best, then the others under their chapters. */
export const groupsOf = <Page>(
  found: readonly Page[],
  chapterOf: (page: Page) => string,
): readonly (readonly [head: string, pages: readonly Page[]])[] => [
  ['Most likely', found.slice(0, FIRST)],
  ...Map.groupBy(found.slice(FIRST), chapterOf),
];

/** The best hit of each page for any word of a family. */
async function searchFamily<Page>(index: Index<Page>, family: readonly string[]) {
  const found = await Promise.all(family.map((word) => index.search(word)));
  const best = new Map<string, Hit<Page>>();
  for (const hit of found.flatMap(({ results }) => results)) {
    const other = best.get(hit.id);
    if (!other || hit.score > other.score) best.set(hit.id, hit);
  }
  return best;
}
