// In every page's policy, Astro lists the hash of every script and style it might have inlined. A
// page needs to allow only those it contains.

import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesOf } from './pages.mjs';

const POLICY = /(<meta http-equiv="content-security-policy" content=")([^"]*)(">)/;
const INLINE = /<(?:script|style)(?![^>]*\ssrc=)[^>]*>([\s\S]*?)<\/(?:script|style)>/g;

/**
 * Removes from each page's policy the hashes of what the page does not contain.
 * @param {string} folder
 */
export function tightenPolicies(folder) {
  for (const file of filesOf(folder)) {
    if (!file.endsWith('.html')) continue;
    const path = join(folder, file);
    const html = readFileSync(path, 'utf8');
    const tight = tightened(html);
    if (tight !== html) writeFileSync(path, tight);
  }
}

/** @param {string} html */
export function tightened(html) {
  const held = new Set([...html.matchAll(INLINE)].map(([, text = '']) => hashOf(text)));
  return html.replace(POLICY, (_, before, policy, after) => {
    const kept = policy.replace(
      / '(sha256-[^']+)'/g,
      (/** @type {string} */ all, /** @type {string} */ hash) => (held.has(hash) ? all : ''),
    );
    return `${before}${kept}${after}`;
  });
}

/** @param {string} text */
const hashOf = (text) => `sha256-${createHash('sha256').update(text).digest('base64')}`;
