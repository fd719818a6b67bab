import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import foamingSolution from '../../src/worksheets/foam/foaming-solution.tsx';
import BenchSheet from '../../src/worksheets/live/bench-sheet.tsx';
import proportion from '../../src/worksheets/mix/proportion.tsx';

const chapter = (page: string) =>
  readFileSync(join(import.meta.dirname, `../../content/chapters/${page}.mdx`), 'utf8');

/** The parts of the solution, in the order a text names them for the last time. */
const order = (text: string) =>
  ['water', 'glycerol', 'concentrate'].sort(
    (a, b) => text.toLowerCase().lastIndexOf(a) - text.toLowerCase().lastIndexOf(b),
  );
const line = (text: string, opening: string) => {
  const found = text.split('\n').find((each) => each.includes(opening));
  if (found === undefined) throw new Error(`no line with ${opening}`);
  return found;
};

const named = (results: object, water: string) =>
  Object.keys(results)
    .filter((name) => [water, 'glycerol', 'concentrate'].includes(name))
    .join(' ');

/** What froths in the tank is lost to the lance: the concentrate goes in last, wherever it is said. */
describe('the foaming solution is mixed water, glycerol, concentrate', () => {
  const sheet = renderToString(h(BenchSheet, {}));
  const [, steps = ''] = /sheet-steps">(.*?)<\/ol>/s.exec(sheet) ?? [];
  const [, table = ''] = /Foaming solution: (soft water.*?)<\/table>/s.exec(sheet) ?? [];

  test.each([
    ['the page on the solution', line(chapter('foam/solution'), 'Water first')],
    ['the first batch', line(chapter('first-batch/index'), '**Foaming solution.**')],
    ['the steps of the bench sheet', /Foaming solution.*?<\/li>/s.exec(steps)?.[0] ?? ''],
    ['its amounts', table],
    ['the results of a batch', named(proportion.results, 'softWater')],
    ['the results of the solution', named(foamingSolution.results, 'water')],
  ])('%s', (_, text) => {
    for (const part of ['water', 'glycerol', 'concentrate'])
      expect(text.toLowerCase()).toContain(part);
    expect(order(text)).toEqual(['water', 'glycerol', 'concentrate']);
  });
});
