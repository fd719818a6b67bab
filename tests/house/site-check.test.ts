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
}

/** Writes a page that is right in all that is not given. */
function page(file: string, { head = '', body = '', title = `Page ${file}` }: Parts = {}) {
  const path = join(folder, file);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(
    path,
    `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>${title}</title>
    <meta name="description" content="A page that stands for a page of the handbook">${head}</head>
    <body><main><h1>Heading</h1>${body}</main></body></html>`,
  );
}

const faults = async () => (await checkSite(folder, { base: '/slurry/' })).faults;

/** A site that is right but for one page. */
async function faultsOf(parts: Parts): Promise<string[]> {
  page('index.html');
  page('404.html');
  page('water/hardness/index.html', { body: '<h2 id="units">Units</h2>' });
  page('foam/index.html', parts);
  return faults();
}

test('a sound site has no faults', async () => {
  const body = `<a href="/slurry/">home</a> <a href="/slurry/water/hardness/#units">units</a>
    <a href="../water/hardness/">hardness</a> <a href="#here">here</a> <p id="here">5 &lt; 6</p>
    <a href="/slurry/#v1=abc">a batch</a> <a href="https://example.org/">elsewhere</a>`;
  expect(await faultsOf({ body })).toEqual([]);
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
  ['a second heading', '<h1>Two</h1>', 'has 2 <h1>'],
  ['an id twice', '<p id="a">x</p><p id="a">y</p>', 'the id "a" twice'],
  ['a label for nothing', '<label for="mass">x</label>', 'for="mass" names nothing'],
  ['a lost value', '<p>Add undefined kg.</p>', 'shows a lost value'],
  ['a number that is none', '<p>Add NaN&nbsp;kg.</p>', 'shows a lost value'],
  ['an object for a word', '<p>Add [object Object].</p>', 'shows a lost value'],
  ['a lost value in a label', '<p><svg role="img" aria-label="NaN kg"></svg></p>', 'aria-label'],
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
  expect((await faultsOf({ title: 'Page 404.html' })).join()).toContain('the same title');
});

test('a site without its 404 page is found', async () => {
  page('index.html');
  expect(await faults()).toEqual(['404.html: is missing']);
});
