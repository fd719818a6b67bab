import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

/** The handbook's pages. `<chapter>/index` opens a chapter; `first-batch` comes before them all. */
const chapters = defineCollection({
  loader: glob({ base: './content/chapters', pattern: '**/*.mdx', retainBody: false }),
  schema: z
    .object({
      title: z.string().min(3).max(70),
      summary: z.string().min(30).max(200),
      /** The position among the pages of its chapter; the chapter's opening page has none. */
      order: z.number().int().optional(),
      /** Search terms, including US spellings and symptoms. */
      keywords: z.array(z.string().min(2)).min(1),
      /** More search terms, by the section of the page that the search opens for them. */
      answers: z.record(z.string(), z.array(z.string().min(2)).min(1)).optional(),
      /**
       * On a chapter's opening page: the chapter's short name, and its position among the chapters.
       */
      chapter: z.string().min(3).max(30).optional(),
      chapterOrder: z.number().int().optional(),
    })
    .strict(),
});

export const collections = { chapters };
