import { expect, test } from 'vitest';
import { eachInItsFolder, faults, faultsOf, listed, page, put, rest } from './small-site.ts';

eachInItsFolder();

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
  put('a.css', '@font-face { src: url(//example.org/a.woff2) }');
  expect((await faultsOf({})).join()).toContain('a.css: loads something from another host');
});

test('two pages of one title are found', async () => {
  const found = await faultsOf({ title: 'Page index.html' });
  expect(found.join()).toContain('shares with foam/index.html its title: "Page index.html"');
});

test('a site without its 404 page is found', async () => {
  rest();
  for (const file of listed) page(file);
  expect(await faults()).toEqual(['404.html: is missing']);
});
