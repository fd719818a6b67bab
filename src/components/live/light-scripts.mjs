/**
 * Keeps what a page sends to the browser small. The mechanism of all worksheets is one file, which
 * compresses better than its thirty parts and is fetched once for the whole site; and no list says
 * which files each worksheet would preload: that list weighed more than the moment it saved. A constant is
 * written where it is used: a file of them would be fetched whole for one.
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
    // With nothing to preload there is nothing for Vite's helper to do but to fetch.
    transform: {
      filter: { id: /vite\/preload-helper\.js/ },
      handler: () => 'export const __vitePreload = (load) => load();',
    },
  };
}

/** Every page names its scripts: in short. */
const entryFileNames = (/** @type {{ name: string }} */ { name }) =>
  `_astro/${name.replace(/\..*/, '')}.[hash].js`;

/** Every page has these, worksheets or not, as one file: they must not bring the mechanism along. */
const SITE = [
  'src/bench/notices',
  'src/bench/local-store',
  'src/bench/arrived',
  'src/components/site/site.ts',
  'src/components/site/save-button.ts',
  'src/layouts/Site.astro.*type=script',
  'preload-helper',
];

/** With the units and the note of a range, which nearly all worksheets want: each was a request of its own. */
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

/** The two files, and the paths of what goes into each, as regular expressions. */
export const TOGETHER = { site: SITE, mechanism: MECHANISM };

const anyOf = (/** @type {readonly string[]} */ paths) =>
  new RegExp(paths.join('|').replaceAll('/', '[\\\\/]'));

const groups = [
  { name: 'site', test: anyOf(SITE), priority: 3 },
  { name: 'mechanism', test: anyOf(MECHANISM), priority: 1 },
];
