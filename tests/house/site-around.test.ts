import { expect, test } from 'vitest';
import {
  drop,
  eachInItsFolder,
  faultsOf,
  listed,
  locs,
  manifest,
  own,
  png,
  put,
} from './small-site.ts';

eachInItsFolder();

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
  ['no manifest', () => drop('manifest.webmanifest'), 'manifest.webmanifest: is'],
  ['no sitemap', () => drop('sitemap-index.xml'), 'sitemap-index.xml: is missing'],
  ['a sitemap that is not there', () => drop('sitemap-0.xml'), 'names a file that is not there'],
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
