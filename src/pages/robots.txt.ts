import type { APIRoute } from 'astro';
import { link } from '../components/link.ts';

/** Only read if the site is served at the root of its host; elsewhere it does no harm. */
export const GET: APIRoute = ({ site }) =>
  new Response(
    `User-agent: *\nAllow: /\n\nSitemap: ${new URL(link('sitemap-index.xml'), site).href}\n`,
  );
