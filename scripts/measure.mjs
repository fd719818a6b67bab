// Builds the site, measures it, and prints what the README shows: each budget beside what was measured,
// then every page. Takes some minutes, and an otherwise idle machine.
//
//   npm run measure

import { join } from 'node:path';
import { buildSite } from './build.mjs';
import { HEAVIER, MOST } from './site/rules/weight.mjs';
import { weighSite } from './site/weights.mjs';
import { isMain, root, run } from './tools.mjs';

const tested = { into: '.build/tested', base: '/slurry/' };
const MOST_SECONDS = 30;

/** @param {number} bytes */
const kB = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;

/** @param {readonly (readonly (string | number)[])[]} rows */
function table(rows) {
  const [head = [], ...rest] = rows;
  const line = (/** @type {readonly (string | number)[]} */ cells) => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rest.map(line)].join('\n');
}

/** What the browser tests of speed say of themselves. */
async function inBrowser() {
  const files = ['speed', 'lighthouse'].map((name) => `tests/browser/${name}.test.ts`);
  const { output } = await run('vitest', ['run', '--project', 'browser', ...files], {
    quiet: true,
    env: { TELL: '1', NO_COLOR: '1', TESTED_SITE: tested.into, TESTED_BASE: tested.base },
  });
  const presses = [...output.matchAll(/^SPEED \S* (\S+) ([\d.]+)$/gm)].map(
    ([, sheet = '', ms]) => ({
      sheet,
      ms: Number(ms),
    }),
  );
  const scores = [...output.matchAll(/^LIGHTHOUSE \S+ (\{.*\})$/gm)].map(
    ([, json = '{}']) => /** @type {Record<string, number>} */ (JSON.parse(json)),
  );
  if (presses.length === 0 || scores.length === 0) throw new Error(output);
  return { presses, scores };
}

async function measure() {
  const begun = performance.now();
  await buildSite(tested);
  const seconds = (performance.now() - begun) / 1000;
  const { pages, kept } = weighSite(join(root, tested.into), tested.base);
  const { presses, scores } = await inBrowser();

  const heaviest = (/** @type {(page: typeof pages[number]) => number} */ of) =>
    pages.reduce((most, page) => (of(page) > of(most) ? page : most));
  const live = pages.filter(({ islands }) => islands > 0);
  const prose = pages.filter(({ islands }) => islands === 0);
  const home = pages.find(({ path }) => path === '');
  const html = heaviest((page) => page.html);
  const script = heaviest((page) => page.js);
  const middle = live.map(({ js }) => js).sort((a, b) => a - b)[Math.floor(live.length / 2)] ?? 0;
  const slowest = presses.reduce((most, press) => (press.ms > most.ms ? press : most));
  const least = (/** @type {string} */ name) =>
    Math.min(...scores.map((score) => score[name] ?? 0));

  console.log(
    `\nMeasured on ${new Date().toISOString().slice(0, 10)}. Weights are compressed (gzip).\n`,
  );
  console.log(
    table([
      ['What', 'Most or least', 'Measured'],
      ['HTML of a page', kB(MOST.html), `${kB(html.html)} (${html.path || 'home'})`],
      ['CSS of a page', kB(MOST.css), kB(heaviest((page) => page.css).css)],
      ['JavaScript of a page of prose', kB(MOST.prose), kB(Math.max(...prose.map(({ js }) => js)))],
      [
        'JavaScript of a page with all its worksheets awake',
        `${kB(MOST.script)}; ${Object.keys(HEAVIER).length} pages more`,
        `half of them under ${kB(middle)}; most ${kB(script.js)} (${script.path})`,
      ],
      ['Home’s first view, HTML and CSS', kB(MOST.home), kB((home?.html ?? 0) + (home?.css ?? 0))],
      ['All that is kept offline', kB(MOST.kept), kB(kept.compressed)],
      ['Build', `${MOST_SECONDS} s`, `${seconds.toFixed(1)} s`],
      [
        'Key press to results, processor slowed four times, median',
        '16 ms',
        `slowest ${slowest.ms} ms (${slowest.sheet}, of ${presses.length} worksheets)`,
      ],
      ...['performance', 'accessibility', 'best-practices', 'seo'].map((name) => [
        `Lighthouse, mobile, ${name}, least of ${scores.length} pages`,
        '0.99',
        least(name),
      ]),
    ]),
  );
  console.log('\n');
  console.log(
    table([
      ['Page', 'HTML', 'CSS', 'JavaScript', 'only when asked for', 'worksheets and live parts'],
      ...[...pages]
        .sort((a, b) => b.js - a.js || b.html - a.html)
        .map(({ path, html, css, js, request, islands }) => [
          `/${path}`,
          ...[html, css, js, request].map(kB),
          islands,
        ]),
    ]),
  );
}

if (isMain(import.meta)) await measure();
