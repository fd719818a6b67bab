import { link } from '../components/link.ts';

/** What a browser needs to install the handbook. Generated, because it must know the base path. */
export const GET = () =>
  new Response(
    JSON.stringify({
      name: 'Suds & Slurry',
      short_name: 'Suds & Slurry',
      description: 'A handbook for small-batch foamed concrete that computes while it explains.',
      lang: 'en-GB',
      start_url: link(''),
      scope: link(''),
      display: 'standalone',
      background_color: '#f4f6f3',
      theme_color: '#f4f6f3',
      icons: [
        { src: link('icon.svg'), sizes: 'any', type: 'image/svg+xml' },
        { src: link('icon-192.png'), sizes: '192x192', type: 'image/png', purpose: 'any maskable' },
        { src: link('icon-512.png'), sizes: '512x512', type: 'image/png', purpose: 'any maskable' },
      ],
    }),
    { headers: { 'Content-Type': 'application/manifest+json' } },
  );
