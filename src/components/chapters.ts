import { type CollectionEntry, getCollection } from 'astro:content';

export interface Page {
  readonly entry: CollectionEntry<'chapters'>;
  /** The address below the base path, such as `foam/weighing/`. */
  readonly path: string;
  readonly title: string;
  readonly summary: string;
}

export interface Chapter {
  readonly id: string;
  readonly name: string;
  readonly opening: Page;
  readonly pages: readonly Page[];
}

/**
 * The chapters in reading order, each with its pages in order. Throws, naming the file, on a gap.
 */
export async function readChapters(): Promise<readonly Chapter[]> {
  const entries = await getCollection('chapters');
  const byChapter = Map.groupBy(entries, (entry) => entry.id.split('/')[0]!);
  return [...byChapter]
    .map(([id, all]) => {
      const opening = all.find((entry) => entry.id === id || entry.id === `${id}/index`);
      const { chapter, chapterOrder } = opening?.data ?? {};
      if (!opening || !chapter || chapterOrder === undefined)
        throw new Error(
          `content/chapters/${id}/index.mdx must exist and have 'chapter' and 'chapterOrder'`,
        );
      const pages = all.filter((entry) => entry !== opening);
      for (const { id, data } of pages)
        if (data.order === undefined) throw new Error(`content/chapters/${id}.mdx has no 'order'`);
      pages.sort((a, b) => a.data.order! - b.data.order!);
      return {
        id,
        name: chapter,
        at: chapterOrder,
        opening: page(opening),
        pages: pages.map(page),
      };
    })
    .sort((a, b) => a.at - b.at);
}

const page = (entry: CollectionEntry<'chapters'>): Page => ({
  entry,
  path: `${entry.id.replace(/\/index$/, '')}/`,
  title: entry.data.title,
  summary: entry.data.summary,
});

/** Every page in reading order. */
export const inOrder = (chapters: readonly Chapter[]): readonly Page[] =>
  chapters.flatMap(({ opening, pages }) => [opening, ...pages]);
