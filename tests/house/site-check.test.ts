import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { checkSite } from '../../scripts/site/check.mjs';

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'site-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

interface Parts {
  head?: string;
  body?: string;
  title?: string;
  /** A change to the head of a right page. */
  turn?: readonly [RegExp, string];
}

/** The first bytes of a picture of this size. */
function png(width: number, height: number): Buffer {
  const bytes = Buffer.alloc(24);
  bytes.write('\x89PNG\r\n\x1a\n\0\0\0\rIHDR', 'latin1');
  bytes.writeUInt32BE(width, 16);
  bytes.writeUInt32BE(height, 20);
  return bytes;
}

const own = (file: string) => `https://suds.example/slurry/${file.replace(/index\.html$/, '')}`;

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

const manifest = {
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

const locs = (places: readonly string[]) =>
  `<x>${places.map((place) => `<loc>${place}</loc>`).join('')}</x>`;
const listed = ['index.html', 'water/hardness/index.html', 'foam/index.html'];

/** Writes a file of the site that is no page. */
const put = (file: string, content: string | Buffer) => writeFileSync(join(folder, file), content);

/** Writes all that a right site has beside its pages. */
function rest() {
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
function page(file: string, { head = '', body = '', title = `Page ${file}`, turn }: Parts = {}) {
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
const faults = async () => (await checkSite(folder, { base: '/slurry/', site })).faults;

/** Writes a page that has no address of its own. */
const unlisted = (file: string) =>
  page(file, {
    turn: [/<link rel="canonical".*\n.*og:url.*/, '<meta name="robots" content="noindex">'],
  });

/** A site that is right but for one page, or for what is changed beside the pages. */
async function faultsOf(parts: Parts, beside: () => void = () => {}): Promise<string[]> {
  rest();
  page('index.html');
  unlisted('404.html');
  page('water/hardness/index.html', { body: '<h2 id="units">Units</h2>' });
  page('foam/index.html', parts);
  beside();
  return faults();
}

test('a sound site has no faults', async () => {
  const body = `<a href="/slurry/">home</a> <a href="/slurry/water/hardness/#units">units</a>
    <a href="../water/hardness/">hardness</a> <a href="#here">here</a> <p id="here">5 &lt; 6</p>
    <a href="/slurry/#v1=abc">a batch</a> <a href="https://example.org/">elsewhere</a>`;
  const drawn = `<figure><svg role="img" aria-label="Foam 80 g/L"><text>80 g/L</text>
    <text class="soft">100</text><text>7 days</text></svg><figcaption>For 7 days.</figcaption></figure>
    <svg aria-hidden="true"><path d="M0 0"/></svg>`;
  expect(await faultsOf({ body: `${body} ${drawn}` })).toEqual([]);
});

test.each([
  ['a page that is not there', '<a href="/slurry/water/softness/">x</a>', 'page that is not there'],
  ['a link without its slash', '<a href="/slurry/water/hardness">x</a>', 'lacks the slash'],
  ['an anchor that is not there', '<a href="/slurry/water/hardness/#salts">x</a>', '#salts'],
  ['an anchor missing on its own page', '<a href="#salts">x</a>', 'anchor that is not there'],
  ['a link past the base path', '<a href="/water/hardness/">x</a>', 'out of the base path'],
  ['an empty link', '<a href="">x</a>', 'without an address'],
  ['a script link', '<a href="javascript:void(0)">x</a>', 'link of kind javascript:'],
  ['an image of another host', '<img src="https://example.org/a.png" alt="a">', 'another host'],
  ['a picture that is not there', '<img src="/slurry/a.png" alt="a">', 'not there: /slurry/a.png'],
  ['a level of headings left out', '<h3>Deep</h3>', 'goes from h1 to h3: "Deep"'],
  ['an empty heading', '<h2> </h2>', 'has an empty <h2>'],
  ['a second heading', '<h1>Two</h1>', 'has 2 <h1>'],
  ['an id twice', '<p id="a">x</p><p id="a">y</p>', 'the id "a" twice'],
  ['a label for nothing', '<label for="mass">x</label>', 'for="mass" names nothing'],
  ['a lost value', '<p>Add undefined kg.</p>', 'shows a lost value'],
  ['a number that is none', '<p>Add NaN&nbsp;kg.</p>', 'shows a lost value'],
  ['an object for a word', '<p>Add [object Object].</p>', 'shows a lost value'],
  ['a lost value in a label', '<p><svg role="img" aria-label="NaN kg"></svg></p>', 'aria-label'],
  ['a drawing without words', '<svg role="img"><path d="M0 0"/></svg>', 'a drawing without words'],
  ['a drawing that is no image', '<svg aria-label="Foam"></svg>', 'a drawing without words for it'],
  ['words that are hidden', '<svg aria-hidden="true"><text>foam</text></svg>', 'hides a drawing'],
  [
    'words without the numbers',
    '<svg role="img" aria-label="The mix"><text class="soft">5</text></svg>',
    'leave its numbers out: “The mix”',
  ],
  [
    'a number left out of the words',
    '<svg role="img" aria-label="Foam 80 g/L"><text>foam 80 g/L</text><text>60 s</text></svg>',
    'shows “60 s” and does not say 60',
  ],
  ['markup that HTML forbids', '<ul><p>x</p></ul>', 'element-permitted-content'],
])('%s is found', async (_, body, fault) => {
  const found = await faultsOf({ body });
  expect(found.join('\n')).toContain(fault);
  expect(found.join('\n')).toContain('foam/index.html');
});

test('a stylesheet of another host is found', async () => {
  const head = '<link rel="stylesheet" href="https://example.org/a.css">';
  expect((await faultsOf({ head })).join()).toContain('another host');
});

test('a stylesheet that loads from another host is found', async () => {
  writeFileSync(join(folder, 'a.css'), '@font-face { src: url(//example.org/a.woff2) }');
  expect((await faultsOf({})).join()).toContain('a.css: loads something from another host');
});

test('two pages of one title are found', async () => {
  const found = await faultsOf({ title: 'Page index.html' });
  expect(found.join()).toContain('shares with foam/index.html its title: "Page index.html"');
});

test.each<[string, RegExp, string, string]>([
  ['a description cut short', /A page at.*handbook/, 'Short', 'of 5 characters, not 50 to 160'],
  ['a long description', /A page at/, 'A page '.repeat(25), 'characters, not 50 to 160'],
  ['a missing description', /<meta name="desc.*/, '', 'has 0 descriptions'],
  ['a shared description', /at foam\/index/, 'at index', 'its description: "A page at index'],
  ['a missing canonical link', /<link rel="canonical.*/, '', 'has 0 canonical links'],
  ['a canonical link elsewhere', /(canonical".*)foam/, '$1water', 'another page as its canonical'],
  ['a canonical link of another host', /(canonical".*)suds\./, '$1duds.', 'another page as its'],
  ['another address on its card', /(og:url".*)foam/, '$1water', 'og:url is not'],
  ['a card without a title', /<meta property="og:title.*/, '', 'has no og:title'],
  ['a card without a description', /<meta property="og:desc.*/, '', 'has no og:description'],
  ['a card without a kind', /<meta property="og:type.*/, '', 'has no og:type'],
  ['a card without the site', /<meta property="og:site.*/, '', 'has no og:site_name'],
  ['a card without its shape', /<meta name="twitter.*/, '', 'has no twitter:card'],
  ['a social image without words', /<meta property="og:image:alt.*/, '', 'has no og:image:alt'],
  ['a social image not there', /social\.png/, 'none.png', 'social image that is not there'],
  ['a social image not absolute', /https:.*social/, '/slurry/social', 'social image that is not'],
  ['a social image of another size', /1200/, '1300', 'says its social image is 1300 × 630'],
  ['a page without a dark colour', /<meta name="theme.*dark.*/, '', 'no theme colour for the dark'],
  ['a page without a light colour', /<meta name="theme.*light.*/, '', 'colour for the light'],
  ['a page without an icon', /<link rel="icon.*/, '', 'does not have one link to its icon'],
  ['a page without a manifest', /<link rel="mani.*/, '', 'does not have one link to its manifest'],
  ['an icon that is not there', /icon\.svg/, 'icon.gif', 'not there: /slurry/icon.gif'],
  ['an unlisted page with an address', /$/, '<meta name="robots" content="noindex">', 'unlisted'],
])('%s is found', async (_, from, to, fault) => {
  expect((await faultsOf({ turn: [from, to] })).join('\n')).toContain(fault);
});

const changed = (change: object) => () =>
  put('manifest.webmanifest', JSON.stringify({ ...manifest, ...change }));
const [small, large] = manifest.icons;

test.each<[string, () => void, string]>([
  ['an icon of the wrong size', () => put('icon-512.png', png(500, 512)), 'is 500x512, not 512'],
  ['an icon that is no picture', () => put('icon-192.png', 'x'), 'is 0x0, not 192x192'],
  ['a missing large icon', changed({ icons: [small] }), 'has no icon of 512x512'],
  ['a missing small icon', changed({ icons: [large] }), 'has no icon of 192x192'],
  ['no maskable icon', changed({ icons: [large] }), 'has no maskable icon'],
  ['a lost icon', changed({ icons: [{ ...small, src: '/slurry/x.png' }] }), 'not there: /slurry/x'],
  ['a manifest of another base', changed({ scope: '/' }), 'scope is /, not /slurry/'],
  ['a manifest without a name', changed({ name: '' }), 'has no name'],
  ['no manifest', () => rmSync(join(folder, 'manifest.webmanifest')), 'manifest.webmanifest: is'],
  ['no sitemap', () => rmSync(join(folder, 'sitemap-index.xml')), 'sitemap-index.xml: is missing'],
  [
    'a sitemap that is not there',
    () => rmSync(join(folder, 'sitemap-0.xml')),
    'names a file that is not there',
  ],
  [
    'a page in no sitemap',
    () => put('sitemap-0.xml', locs(listed.slice(1).map(own))),
    'index.html: is in no sitemap',
  ],
  [
    'a sitemap with a page that is not there',
    () => put('sitemap-0.xml', locs([...listed, 'x/index.html'].map(own))),
    'lists what is no page to be found: https://suds.example/slurry/x/',
  ],
  [
    'a sitemap with an unlisted page',
    () => put('sitemap-0.xml', locs([...listed, '404.html'].map(own))),
    'lists what is no page to be found: https://suds.example/slurry/404.html',
  ],
  ['robots that are told nothing', () => put('robots.txt', ''), 'does not name the sitemap'],
])('%s is found', async (_, beside, fault) => {
  expect((await faultsOf({}, beside)).join('\n')).toContain(fault);
});

test('a site without its 404 page is found', async () => {
  rest();
  for (const file of listed) page(file);
  expect(await faults()).toEqual(['404.html: is missing']);
});
