import { defineMiddleware } from 'astro:middleware';
import { keptTogether } from './components/markdown/kept-together.ts';
import { pointsAligned } from './components/markdown/points-aligned.ts';

/**
 * Post-processes every page, whoever wrote its sentences: chapters, worksheets, cautions, glossary.
 */
export const onRequest = defineMiddleware(async (_, next) => {
  const response = await next();
  if (!response.headers.get('content-type')?.startsWith('text/html')) return response;
  return new Response(pointsAligned(keptTogether(await response.text())), response);
});
