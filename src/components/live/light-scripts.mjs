/**
 * Keeps what a page sends to the browser small. The mechanism of all worksheets is one file: it
 * compresses better than its thirty parts, and is fetched once for the whole site. Preload lists
 * are left out, since they weighed more than the time they saved was worth. Constants are inlined;
 * otherwise a file of them would be fetched whole for one.
 * @returns {import('vite').Plugin}
 */
export function lightScripts() {
  return {
    name: 'light-scripts',
    enforce: 'pre',
    configEnvironment: (name) =>
      name === 'client'
        ? {
            build: {
              modulePreload: false,
              rolldownOptions: {
                optimization: { inlineConst: { mode: 'all', pass: 2 } },
                output: { codeSplitting: { groups }, entryFileNames },
              },
            },
          }
        : undefined,
    // With nothing to preload, Vite's helper only has to import.
    transform: {
      filter: { id: /vite\/preload-helper\.js/ },
      handler: () => 'export const __vitePreload = (load) => load();',
    },
  };
}

/** Short names, because every page lists its scripts. */
const entryFileNames = (/** @type {{ name: string }} */ { name }) =>
  `_astro/${name.replace(/\..*/, '')}.[hash].js`;

/**
 * One file for what every page has, with or without worksheets; it must not pull in the mechanism.
 */
const SITE = [
  'src/bench/notices',
  'src/bench/local-store',
  'src/bench/arrived',
  'src/components/site/site.ts',
  'src/components/site/save-button.ts',
  'src/layouts/Site.astro.*type=script',
  'preload-helper',
];

/**
 * Includes the units and the range note, which nearly all worksheets need; each was a request of
 * its own.
 */
const MECHANISM = [
  'node_modules/preact',
  'nanostores',
  'src/islands/engine/',
  'src/islands/parts/(?!Slider|Learned|Offers)',
  'src/islands/hooks',
  'src/islands/use-stored',
  'src/islands/fields.ts',
  'src/islands/Worksheet',
  'src/worksheets/shared/words/amounts',
  'src/core/quantity/',
  'src/core/note',
  'src/core/domain-error',
  'src/core/uncertainty/first-order',
  'src/bench/entries',
  'src/bench/page-at',
  'src/bench/shapes',
  'src/bench/store',
  'src/bench/storage',
];

/** The two bundles, each with the paths of its parts as regular expressions. */
export const TOGETHER = { site: SITE, mechanism: MECHANISM };

const anyOf = (/** @type {readonly string[]} */ paths) =>
  new RegExp(paths.join('|').replaceAll('/', '[\\\\/]'));

const groups = [
  { name: 'site', test: anyOf(SITE), priority: 3 },
  { name: 'mechanism', test: anyOf(MECHANISM), priority: 1 },
];
