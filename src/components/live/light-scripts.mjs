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

const groups = [
  // Every page has these, worksheets or not, as one file: they must not bring the mechanism along.
  {
    name: 'site',
    test: /src[\\/](bench[\\/](notices|local-store|arrived)|components[\\/]site[\\/](site|save-button)\.ts|layouts[\\/]Site\.astro.*type=script)|preload-helper/,
    priority: 3,
  },
  // With two small files that nearly all worksheets want: each was a request of its own.
  {
    name: 'mechanism',
    test: /node_modules[\\/]preact|nanostores|src[\\/](islands[\\/](engine|parts[\\/](?!Slider|Learned|Offers)|hooks|use-stored|fields\.ts|Worksheet)|worksheets[\\/]shared[\\/]amounts|core[\\/](quantity|note|domain-error|uncertainty[\\/]first-order)|bench[\\/](entries|page-at|shapes|store|storage))/,
    priority: 1,
  },
];
