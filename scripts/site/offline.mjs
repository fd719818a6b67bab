// Writes the service worker, which stores the whole site for offline use.

import { generateSW } from 'workbox-build';

/**
 * Writes sw.js for the files in a folder. Every file is fetched before the worker takes over, and
 * it waits until the reader accepts, so that a page never gets files of another build.
 * @param {string} folder
 * @returns {Promise<{ files: number, bytes: number }>}
 */
export async function keepOffline(folder) {
  const { count, size, warnings } = await generateSW({
    globDirectory: folder,
    swDest: `${folder}/sw.js`,
    inlineWorkboxRuntime: true,
    sourcemap: false,
    globPatterns: [
      '**/*.{html,css,js,json,svg,webp,avif,png,ico,woff2,webmanifest}',
      'pagefind/**/*.{pf_meta,pf_index,pf_fragment,pagefind}',
    ],
    globIgnores: ['sw.js'],
    maximumFileSizeToCacheInBytes: 4 * 1024 * 1024,
    dontCacheBustURLsMatching: /\/_astro\//,
    // Pagefind requests its entry file with the time in `ts`, to bypass caches; ours must answer.
    ignoreURLParametersMatching: [/^utm_/, /^ts$/],
    // An unknown page, requested without a network, gets the 404 page.
    runtimeCaching: [
      {
        urlPattern: ({ request }) => request.mode === 'navigate',
        handler: 'NetworkOnly',
        options: { precacheFallback: { fallbackURL: '404.html' } },
      },
    ],
    cleanupOutdatedCaches: true,
    clientsClaim: true,
    skipWaiting: false,
  });
  if (warnings.length > 0) throw new Error(warnings.join('\n'));
  return { files: count, bytes: size };
}
