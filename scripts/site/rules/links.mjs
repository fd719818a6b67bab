// Every link within the site leads somewhere, and nothing is loaded from another host.

import { attribute, decoded } from '../pages.mjs';

/** @typedef {import('../pages.mjs').Page} Page */

/** Attributes by which a page loads something; `a[href]` is followed by choice instead. */
const loading = [
  ['script', 'src'],
  ['img', 'src'],
  ['img', 'srcset'],
  ['source', 'src'],
  ['source', 'srcset'],
  ['iframe', 'src'],
  ['video', 'src'],
  ['audio', 'src'],
  ['embed', 'src'],
  ['object', 'data'],
  ['use', 'href'],
  ['image', 'href'],
  ['astro-island', 'component-url'],
  ['astro-island', 'renderer-url'],
  ['astro-island', 'before-hydration-url'],
];

/** Links in the head that name a page rather than load a file. */
const naming = new Set(['canonical', 'alternate', 'license', 'author', 'me', 'prev', 'next']);

/**
 * The ids of a page, and those given twice.
 * @param {Page} page
 */
function idsOf({ root }) {
  const ids = new Set();
  const twice = new Set();
  for (const element of root.querySelectorAll('[id]')) {
    const id = attribute(element, 'id');
    if (ids.has(id)) twice.add(id);
    ids.add(id);
  }
  return { ids, twice };
}

/**
 * @param {readonly Page[]} pages
 * @param {{ files: readonly string[], base: string, site?: string | undefined }} where
 *   all files of the site; the base path it is served under, with slashes at both ends; its origin
 * @returns {string[]}
 */
export function linkFaults(pages, { files, base, site }) {
  const host = site ? new URL(site).origin : 'http://site.invalid';
  const present = new Set(files);
  const idsByFile = new Map(pages.map((page) => [page.file, idsOf(page)]));
  const faults = [];

  for (const page of pages) {
    const say = (/** @type {string} */ fault) => faults.push(`${page.file}: ${fault}`);
    const here = new URL(base + page.path, host);
    for (const id of idsByFile.get(page.file)?.twice ?? []) say(`has the id "${id}" twice`);

    /** @param {string} link @param {boolean} loads */
    const follow = (link, loads) => {
      if (/^(data|blob):/.test(link) && loads) return;
      let url;
      try {
        url = new URL(link, here);
      } catch {
        return say(`has a link that is no address: ${link}`);
      }
      if (!/^https?:$/.test(url.protocol)) {
        if (loads || !/^(mailto|tel):$/.test(url.protocol))
          say(`has a link of kind ${url.protocol}`);
        return;
      }
      if (url.origin !== host) {
        if (loads) say(`loads something from another host: ${link}`);
        return;
      }
      if (!url.pathname.startsWith(base)) return say(`links out of the base path: ${link}`);
      const path = decodeURIComponent(url.pathname.slice(base.length));
      const file = path === '' || path.endsWith('/') ? `${path}index.html` : path;
      if (!present.has(file)) {
        const hint = present.has(`${path}/index.html`) ? ' (it lacks the slash at its end)' : '';
        return say(`links to a page that is not there: ${link}${hint}`);
      }
      const anchor = decodeURIComponent(url.hash.slice(1));
      // A batch is carried in the fragment of a link: that is state, not an anchor.
      if (!anchor || anchor.includes('=')) return;
      const known = idsByFile.get(file);
      if (known && !known.ids.has(anchor)) say(`links to an anchor that is not there: ${link}`);
    };

    for (const link of page.root.querySelectorAll('a[href]')) {
      const href = attribute(link, 'href');
      if (href === undefined || href.trim() === '') say('has a link without an address');
      else follow(href, false);
    }
    for (const [tag, name] of loading) {
      for (const element of page.root.querySelectorAll(`${tag}[${name}]`)) {
        const value = attribute(element, name ?? '') ?? '';
        const urls =
          name === 'srcset' ? value.split(',').map((s) => s.trim().split(/\s+/)[0] ?? '') : [value];
        for (const url of urls) if (url) follow(url, true);
      }
    }
    for (const link of page.root.querySelectorAll('link[href]')) {
      const rels = (attribute(link, 'rel') ?? '').split(/\s+/);
      follow(attribute(link, 'href') ?? '', !rels.some((rel) => naming.has(rel)));
    }
    for (const [, url] of decoded(page.html).matchAll(/\burl\(\s*['"]?(https?:[^)'"]+)/g)) {
      if (url) follow(url, true);
    }
    for (const name of ['for', 'aria-labelledby', 'aria-describedby', 'aria-controls']) {
      for (const element of page.root.querySelectorAll(`[${name}]`)) {
        for (const id of (attribute(element, name) ?? '').split(/\s+/).filter(Boolean)) {
          if (!idsByFile.get(page.file)?.ids.has(id))
            say(`${name}="${id}" names nothing on the page`);
        }
      }
    }
  }
  return faults;
}

/**
 * Stylesheets may load only from the site itself.
 * @param {string} file
 * @param {string} css
 * @returns {string[]}
 */
export function styleFaults(file, css) {
  const found = css.match(/(?:url\(\s*['"]?|@import\s+['"])(?:https?:)?\/\/[^)'"\s]+/g) ?? [];
  return found.map((load) => `${file}: loads something from another host: ${load}`);
}
