import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach } from 'vitest';
import { checkSite } from '../../scripts/site/check.mjs';

// A site of four pages that is right, and ways to make it wrong.

let folder: string;

/** Gives each test of the file that calls this a folder of its own. */
export function eachInItsFolder() {
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'site-'));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));
}

interface Parts {
  head?: string;
  body?: string;
  title?: string;
  /** A change to the head of a right page. */
  turn?: readonly [RegExp, string];
}

/** The first bytes of a picture of this size. */
export function png(width: number, height: number): Buffer {
  const bytes = Buffer.alloc(24);
  bytes.write('\x89PNG\r\n\x1a\n\0\0\0\rIHDR', 'latin1');
  bytes.writeUInt32BE(width, 16);
  bytes.writeUInt32BE(height, 20);
  return bytes;
}

export const own = (file: string) =>
  `https://suds.example/slurry/${file.replace(/index\.html$/, '')}`;

/** What the head of a right page says, one part a line. */
const headOf = (file: string) => `
    <meta name="description" content="A page at ${file} that stands for a page of the handbook">
    <link rel="canonical" href="${own(file)}">
    <meta property="og:url" content="${own(file)}">
    <meta property="og:title" content="Heading">
    <meta property="og:description" content="A page of the handbook">
    <meta property="og:type" content="website">
    <meta property="og:site_name" content="Handbook">
    <meta property="og:image" content="https://suds.example/slurry/social.png">
    <meta property="og:image:width" content="1200">
    <meta property="og:image:height" content="630">
    <meta property="og:image:alt" content="A bucket">
    <meta name="twitter:card" content="summary_large_image">
    <meta name="theme-color" content="#fff" media="(prefers-color-scheme: light)">
    <meta name="theme-color" content="#000" media="(prefers-color-scheme: dark)">
    <link rel="icon" href="/slurry/icon.svg">
    <link rel="manifest" href="/slurry/manifest.webmanifest">`;

export const manifest = {
  name: 'Handbook',
  short_name: 'Handbook',
  display: 'standalone',
  theme_color: '#fff',
  background_color: '#fff',
  start_url: '/slurry/',
  scope: '/slurry/',
  icons: [
    { src: '/slurry/icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any maskable' },
    { src: '/slurry/icon-512.png', sizes: '512x512', type: 'image/png' },
  ],
};

export const locs = (places: readonly string[]) =>
  `<x>${places.map((place) => `<loc>${place}</loc>`).join('')}</x>`;
export const listed = ['index.html', 'water/hardness/index.html', 'foam/index.html'];

/** Writes a file of the site that is no page. */
export const put = (file: string, content: string | Buffer) =>
  writeFileSync(join(folder, file), content);

/** Takes a file of the site away. */
export const drop = (file: string) => rmSync(join(folder, file));

/** Writes all that a right site has beside its pages. */
export function rest() {
  put('icon.svg', '<svg xmlns="http://www.w3.org/2000/svg"/>');
  put('social.png', png(1200, 630));
  put('icon-192.png', png(192, 192));
  put('icon-512.png', png(512, 512));
  put('manifest.webmanifest', JSON.stringify(manifest));
  put('robots.txt', `User-agent: *\nSitemap: ${own('sitemap-index.xml')}\n`);
  put('sitemap-index.xml', locs([own('sitemap-0.xml')]));
  put('sitemap-0.xml', locs(listed.map(own)));
}

/** Writes a page that is right in all that is not given; `turn` changes its head. */
export function page(
  file: string,
  { head = '', body = '', title = `Page ${file}`, turn }: Parts = {},
) {
  const path = join(folder, file);
  mkdirSync(dirname(path), { recursive: true });
  const right = headOf(file);
  const turned = turn ? right.replace(...turn) : right;
  if (turn && turned === right) throw new Error(`nothing in the head is ${turn[0]}`);
  writeFileSync(
    path,
    `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>${title}</title>
    ${turned}${head}</head>
    <body><main><h1>Heading</h1>${body}</main></body></html>`,
  );
}

const site = 'https://suds.example';
export const faults = async () => (await checkSite(folder, { base: '/slurry/', site })).faults;

/** Writes a page that has no address of its own. */
const unlisted = (file: string) =>
  page(file, {
    turn: [/<link rel="canonical".*\n.*og:url.*/, '<meta name="robots" content="noindex">'],
  });

/** A site that is right but for one page, or for what is changed beside the pages. */
export async function faultsOf(parts: Parts, beside: () => void = () => {}): Promise<string[]> {
  rest();
  page('index.html');
  unlisted('404.html');
  page('water/hardness/index.html', { body: '<h2 id="units">Units</h2>' });
  page('foam/index.html', parts);
  beside();
  return faults();
}
