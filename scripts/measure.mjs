// Builds the site, measures it, and prints what the README shows: each budget beside what was measured,
// then every page. Takes some minutes, and an otherwise idle machine.
//
//   npm run measure

import { join } from 'node:path';
import { buildSite } from './build.mjs';
import { FRAME, LEAST_SCORE, LOADS, PRESSES, ROUNDS } from './site/rules/speed.mjs';
import { MOST_SECONDS, timeFaults } from './site/rules/time.mjs';
import { MOST, WANTED } from './site/rules/weight.mjs';
import { weighSite } from './site/weights.mjs';
import { tested } from './tested.mjs';
import { isMain, root, run } from './tools.mjs';

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
  const { output } = await run('vitest', ['run', '--project', 'speed'], {
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
  const light = live.filter(
    ({ path, js }) => js <= (WANTED.heavyPages.includes(path) ? WANTED.heavy : WANTED.script),
  ).length;
  const middle = live.map(({ js }) => js).sort((a, b) => a - b)[Math.floor(live.length / 2)] ?? 0;
  const slowest = presses.reduce((most, press) => (press.ms > most.ms ? press : most));
  const least = (/** @type {string} */ name) =>
    Math.min(...scores.map((score) => score[name] ?? 0));

  const first = (home?.html ?? 0) + (home?.css ?? 0);
  const css = heaviest((page) => page.css).css;
  const text = Math.max(...prose.map(({ js }) => js));
  /** @type {{ what: string, budget: string, measured: string, held: boolean }[]} */
  const budgets = [
    {
      what: 'HTML of a page',
      budget: kB(MOST.html),
      measured: `${kB(html.html)} (\`${html.path || 'home'}\`)`,
      held: html.html <= MOST.html,
    },
    { what: 'CSS of a page', budget: kB(MOST.css), measured: kB(css), held: css <= MOST.css },
    {
      what: 'JavaScript of a page of prose',
      budget: kB(MOST.prose),
      measured: kB(text),
      held: text <= MOST.prose,
    },
    {
      what: 'JavaScript of a page, all its worksheets awake',
      budget: `${kB(WANTED.script)}; heat and landing ${kB(WANTED.heavy)}`,
      measured: `${light} of ${live.length} pages; half under ${kB(middle)}, most ${kB(script.js)} (\`${script.path}\`)`,
      held: light === live.length,
    },
    {
      what: 'Home’s first view, HTML and CSS',
      budget: kB(MOST.home),
      measured: kB(first),
      held: first <= MOST.home,
    },
    {
      what: 'All that is kept offline',
      budget: kB(MOST.kept),
      measured: `${kB(kept.compressed)}, ${kB(kept.plain)} unpacked`,
      held: kept.compressed <= MOST.kept,
    },
    {
      what: 'Build',
      budget: `${MOST_SECONDS} s`,
      measured: `${seconds.toFixed(1)} s`,
      held: timeFaults(seconds).length === 0,
    },
    {
      what: `Key press to results in the costliest field, processor slowed four times: median of ${PRESSES}, quietest of ${ROUNDS} rounds, up to ${LOADS} loads; figures, tables and working come later`,
      budget: `${FRAME} ms`,
      measured: `slowest ${slowest.ms} ms (\`${slowest.sheet}\`, of ${new Set(presses.map(({ sheet }) => sheet)).size} worksheets where they stand)`,
      held: slowest.ms <= FRAME,
    },
    ...['performance', 'accessibility', 'best-practices', 'seo'].map((name) => ({
      what: `Lighthouse on a phone, ${name}, least of ${scores.length} pages`,
      budget: `${LEAST_SCORE}`,
      measured: `${least(name)}`,
      held: least(name) >= LEAST_SCORE,
    })),
  ];
  console.log(
    `\nMeasured on ${new Date().toISOString().slice(0, 10)}. Weights are compressed with gzip.\n`,
  );
  console.log(
    table([
      ['What', 'Budget', 'Measured', 'Held'],
      ...budgets.map(({ what, budget, measured, held }) => [
        what,
        budget,
        measured,
        held ? 'yes' : '**no**',
      ]),
    ]),
  );
  // The build has refused what breaks a ceiling; here too, what is over its budget is a failure.
  for (const { what, held } of budgets) if (!held) console.error(`Over its budget: ${what}`);
  process.exitCode = budgets.every(({ held }) => held) ? 0 : 1;
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
