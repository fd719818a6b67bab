// What each page makes a browser fetch, compressed as by any static host.

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import { filesOf, pagesOf } from './pages.mjs';

/**
 * @typedef {object} Weight  bytes, compressed with gzip
 * @property {string} path   where a reader finds the page, from the base path on
 * @property {number} html
 * @property {number} css
 * @property {number} js       with every worksheet of the page awake and touched
 * @property {number} request  JavaScript fetched only when asked for: to read a file, to save a
 *   batch
 * @property {number} islands  how many worksheets and other live parts it has
 */

/**
 * Scripts that no worksheet of the page needs to compute. They are fetched when the reader hands
 * over a file or a photo, opens a dialog, types into a worksheet before it is awake, loads the
 * invented batches, takes out what could not be stored or read, pauses after changing what
 * worksheets of other pages depend on, or comes from a page that changed a batch.
 */
const ON_REQUEST =
  /^(papaparse|logger-file|save-batch|search|shrink-photo|demo-batches|take-aside|catch-up|learn-anew|typed-early)\b/;

const STATIC = /(?:^|[;}\s])(?:import|export)\s*(?:[^"'`()]*?from\s*)?["'`](\.[^"'`]+\.js)["'`]/g;
const DYNAMIC = /import\(["'`](\.[^"'`]+\.js)["'`]\)/g;
/** The script that wakes a page's worksheets. */
const WAKES = /^Wake\./;
/** In that script, the list of each folder of worksheets; and one line of such a list. */
const LISTS = /listed\/(\w+)\.ts["'`]:\(\)=>[^"'`]*["'`](\.[^"'`]+\.js)["'`]/g;
const LISTED = /worksheets\/(\w+\/[\w-]+)\.tsx["'`]:\(\)=>[^"'`]*["'`](\.[^"'`]+\.js)["'`]/g;

/**
 * Weighs a built site: each page, and everything stored for offline use.
 * @param {string} folder
 * @param {string} base
 */
export const weighSite = (folder, base) => ({
  pages: weighPages(folder, pagesOf(folder), base),
  kept: weighKept(folder, filesOf(folder)),
});

/**
 * Weighs every page of a built site.
 * @param {string} folder
 * @param {readonly { path: string, html: string }[]} pages
 * @param {string} base
 * @returns {Weight[]}
 */
function weighPages(folder, pages, base) {
  const size = once((file) => compressed(readFileSync(file)));
  const imports = once((file) => importsOf(file));
  const islands = islandFiles(join(folder, '_astro'));
  const local = (/** @type {string} */ url) => resolve(folder, url.slice(base.length));

  return pages.map(({ path, html }) => {
    const scripts = [...html.matchAll(/<script[^>]*\ssrc="([^"]+)"/g)].map(([, url]) =>
      local(url ?? ''),
    );
    const inline = [...html.matchAll(/<script type="module">([\s\S]*?)<\/script>/g)];
    const styles = [...html.matchAll(/<link rel="stylesheet" href="([^"]+)"/g)].map(([, url]) =>
      local(url ?? ''),
    );
    const live = [...html.matchAll(/data-island="([\w/-]+)"/g)];
    const awake = live.flatMap(([, place = '']) => {
      const island = islands.get(place);
      if (!island) throw new Error(`${path}: no script is listed for '${place}'`);
      return [island.list, island.file];
    });
    if (live.length > 0) awake.push(...filesNamed(join(folder, '_astro'), /^mount\./));

    const begun = [...scripts, ...awake];
    const all = reached(begun, (file) => {
      const { fixed, later } = imports(file);
      return [...fixed, ...later.filter((to) => !ON_REQUEST.test(basename(to)))];
    });
    const asked = reached(begun, (file) => [...imports(file).fixed, ...imports(file).later]);
    const sum = (/** @type {Iterable<string>} */ files) =>
      [...files].reduce((total, file) => total + size(file), 0);
    const js = sum(all) + inline.reduce((total, [, text]) => total + compressed(text ?? ''), 0);
    return {
      path,
      html: compressed(html),
      css: sum(new Set(styles)),
      js,
      request: sum([...asked].filter((file) => !all.has(file))),
      islands: live.length,
    };
  });
}

/**
 * Everything that is stored for offline use.
 * @param {string} folder
 * @param {readonly string[]} files
 */
function weighKept(folder, files) {
  const bytes = files.map((file) => readFileSync(join(folder, file)));
  const smaller = (/** @type {Buffer} */ b) => Math.min(b.length, compressed(b));
  return {
    plain: bytes.reduce((sum, b) => sum + b.length, 0),
    compressed: bytes.reduce((sum, b) => sum + smaller(b), 0),
  };
}

/** @param {string | Buffer} content */
const compressed = (content) => gzipSync(content, { level: 9 }).length;

/**
 * @param {string} folder
 * @param {RegExp} name
 */
const filesNamed = (folder, name) =>
  readdirSync(folder)
    .filter((file) => name.test(file))
    .map((file) => join(folder, file));

/**
 * The file that holds each island, and the list it is in, as the waking script looks them up.
 * @param {string} folder
 * @returns {Map<string, { list: string, file: string }>}
 */
function islandFiles(folder) {
  const found = (/** @type {string} */ file, /** @type {RegExp} */ pattern) =>
    [...readFileSync(file, 'utf8').matchAll(pattern)].map(
      ([, name = '', to = '']) => /** @type {const} */ ([name, resolve(folder, to)]),
    );
  const lists = filesNamed(folder, WAKES).flatMap((file) => found(file, LISTS));
  return new Map(
    lists.flatMap(([, list]) =>
      found(list, LISTED).map(([place, file]) => [place, { list, file }]),
    ),
  );
}

/** @param {string} file */
function importsOf(file) {
  const text = readFileSync(file, 'utf8');
  const found = (/** @type {RegExp} */ pattern) =>
    [...text.matchAll(pattern)]
      .map(([, to]) => resolve(dirname(file), to ?? ''))
      .filter((to) => existsSync(to));
  // Of a list, only what is on the page is fetched, and it is counted with the page.
  const lists = WAKES.test(basename(file)) || text.search(LISTED) >= 0;
  return { fixed: found(STATIC), later: lists ? [] : found(DYNAMIC) };
}

/**
 * Every file reachable from some files, those included.
 * @param {readonly string[]} from
 * @param {(file: string) => readonly string[]} next
 */
function reached(from, next) {
  const seen = new Set(from);
  for (const file of seen) for (const to of next(file)) seen.add(to);
  return seen;
}

/**
 * @template T
 * @param {(file: string) => T} work
 * @returns {(file: string) => T}
 */
function once(work) {
  /** @type {Map<string, T>} */
  const known = new Map();
  return (file) => {
    const had = known.get(file) ?? work(file);
    known.set(file, had);
    return had;
  };
}
