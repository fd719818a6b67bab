// What a browser needs to install the site as an app: icon, colours, manifest.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { attribute } from '../pages.mjs';
import { sizeOfPng } from './png.mjs';

/** @typedef {import('../pages.mjs').Page} Page */
/** @typedef {import('./card.mjs').Site} Site */
/** @typedef {{ src: string, sizes: string, type?: string, purpose?: string }} Icon */

/**
 * Whether these files exist is checked by the rule on links.
 * @param {Page} page
 * @returns {string[]}
 */
export function installFaults({ root }) {
  const faults = [];
  for (const rel of ['icon', 'manifest'])
    if (root.querySelectorAll(`head > link[rel="${rel}"][href]`).length !== 1)
      faults.push(`does not have one link to its ${rel}`);
  const colours = root.querySelectorAll('head > meta[name="theme-color"][content]');
  for (const scheme of ['light', 'dark'])
    if (!colours.some((tag) => attribute(tag, 'media') === `(prefers-color-scheme: ${scheme})`))
      faults.push(`has no theme colour for the ${scheme} scheme`);
  return faults;
}

/**
 * @param {Site} site
 * @returns {string[]}
 */
export function manifestFaults({ folder, files, base }) {
  const name = 'manifest.webmanifest';
  if (!files.includes(name)) return [`${name}: is missing`];
  const manifest = JSON.parse(readFileSync(join(folder, name), 'utf8'));
  /** @type {Icon[]} */
  const icons = manifest.icons ?? [];
  const faults = [];
  for (const key of ['name', 'short_name', 'display', 'theme_color', 'background_color'])
    if (!manifest[key]) faults.push(`has no ${key}`);
  for (const key of ['start_url', 'scope'])
    if (manifest[key] !== base) faults.push(`${key} is ${manifest[key]}, not ${base}`);
  for (const size of ['192x192', '512x512'])
    if (!icons.some((icon) => icon.sizes === size && icon.type === 'image/png'))
      faults.push(`has no icon of ${size}`);
  if (!icons.some(({ purpose }) => purpose?.split(' ').includes('maskable')))
    faults.push('has no maskable icon');
  for (const { src, sizes, type } of icons) {
    const file = src.startsWith(base) ? src.slice(base.length) : src;
    if (!files.includes(file)) faults.push(`names an icon that is not there: ${src}`);
    else if (type === 'image/png') {
      const { width, height } = sizeOfPng(readFileSync(join(folder, file)));
      if (`${width}x${height}` !== sizes) faults.push(`${src} is ${width}x${height}, not ${sizes}`);
    }
  }
  return faults.map((fault) => `${name}: ${fault}`);
}
