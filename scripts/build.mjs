// Builds the site: pages, search, checks, offline copy; then puts it in place of the last build.
// A build that fails at any step leaves the last good one as it was.
//
//   node scripts/build.mjs [--into dist] [--base /]

import { existsSync, mkdirSync, rmSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { checkSite } from './site/check.mjs';
import { keepOffline } from './site/offline.mjs';
import { tightenPolicies } from './site/policy.mjs';
import { renderPages } from './site/render.mjs';
import { weightFaults } from './site/rules/weight.mjs';
import { indexPages } from './site/search.mjs';
import { swap } from './site/swap.mjs';
import { weighSite } from './site/weights.mjs';
import { isMain, root } from './tools.mjs';

/**
 * A base path with a slash at both ends. One that a URL would encode differently is refused.
 * @param {string} base
 */
export function tidyBase(base) {
  const tidy = `/${base}/`.replace(/\/+/g, '/');
  if (/[^\w.~/-]/.test(tidy) || new URL(tidy, 'http://local.invalid').pathname !== tidy)
    throw new Error(
      `A base path is of letters a to z, digits, ".", "_", "~" and "-" between slashes, not "${base}".`,
    );
  return tidy;
}

/**
 * Runs one step, prints how long it took, and names the step if it fails.
 * @template T
 * @param {string} name
 * @param {() => T | Promise<T>} work
 * @param {(result: Awaited<T>) => string} [summary]
 * @returns {Promise<Awaited<T>>}
 */
async function step(name, work, summary = () => '') {
  const begun = performance.now();
  try {
    const result = await work();
    const seconds = ((performance.now() - begun) / 1000).toFixed(1).padStart(5);
    console.log(`  ${name.padEnd(8)} ${seconds} s  ${summary(result)}`.trimEnd());
    return result;
  } catch (error) {
    throw new Error(`The build failed at "${name}".\n${/** @type {Error} */ (error).message}`);
  }
}

/**
 * Builds the site into a folder.
 * @param {{ into?: string, base?: string, site?: string | undefined }} [options]
 * @returns {Promise<string>} the folder
 */
export async function buildSite({
  into = 'dist',
  base = process.env.BASE_PATH ?? '/',
  site = process.env.SITE_URL,
} = {}) {
  const place = resolve(root, into);
  const next = join(root, '.build', `next-${basename(place)}`);
  const tidy = tidyBase(base);
  rmSync(next, { recursive: true, force: true });
  mkdirSync(join(root, '.build'), { recursive: true });

  console.log(`Building the site for ${tidy}`);
  if (!existsSync(join(root, 'src/styles/fonts/maths.woff2'))) {
    const { makeFonts } = await import('./fonts.mjs');
    await step('fonts', makeFonts);
  }
  const env = { BASE_PATH: tidy, ...(site ? { SITE_URL: site } : {}) };
  await step('pages', async () => {
    await renderPages(next, env);
    tightenPolicies(next);
  });
  await step(
    'search',
    () => indexPages(next),
    (pages) => `${pages} pages can be found`,
  );
  await step(
    'check',
    async () => {
      const { pages, faults } = await checkSite(next, { base: tidy, site });
      if (faults.length > 0) throw new Error(faults.join('\n'));
      return pages;
    },
    (pages) => `${pages} pages, links and markup sound`,
  );
  await step(
    'offline',
    () => keepOffline(next),
    ({ files, bytes }) => `${files} files, ${(bytes / 1e6).toFixed(2)} MB`,
  );
  await step(
    'weigh',
    () => {
      const { pages, kept } = weighSite(next, tidy);
      const faults = weightFaults(pages, kept.compressed);
      if (faults.length > 0) throw new Error(faults.join('\n'));
      return kept.compressed;
    },
    (bytes) => `${(bytes / 1e6).toFixed(2)} MB compressed in all`,
  );
  swap(next, place);
  console.log(`Built into ${into}`);
  return place;
}

if (isMain(import.meta)) {
  const { values } = parseArgs({ options: { into: { type: 'string' }, base: { type: 'string' } } });
  try {
    await buildSite(values);
  } catch (error) {
    console.error(`\n${/** @type {Error} */ (error).message}\n`);
    console.error('The last good build, if there is one, is still in place.');
    process.exitCode = 1;
  }
}
