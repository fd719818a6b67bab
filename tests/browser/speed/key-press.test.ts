import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { FRAME, LOADS, PRESSES, ROUNDS } from '../../../scripts/site/rules/speed.mjs';
import { type Opened, openPage, site, wakeWorksheets } from '../browser.ts';
import { slowdown } from './pace.ts';

// Other work on the machine is no fault of the page: the quietest of some rounds counts. How a browser compiles what is
// worked often is a matter of luck, and a machine does not keep its pace: a page over the frame is loaded anew, and the
// machine's pace measured anew before that.
/** Told, the quietest of all is wanted; else it is enough that one is quiet. */
const ENOUGH = process.env.TELL ? 0 : FRAME;

const computing = site.pages.filter((path) =>
  readFileSync(
    join(site.folder, path, path.endsWith('.html') ? '' : 'index.html'),
    'utf8',
  ).includes('data-worksheet='),
);

describe('from key press to results', () => {
  let opened: Opened;
  let rate: number;
  const measurePace = async () => {
    await opened.go('');
    rate = await slowdown(opened.page);
    if (process.env.TELL) console.log(`PACE ${rate.toFixed(2)}`);
  };
  beforeAll(async () => {
    opened = await openPage('');
    await measurePace();
  });
  afterAll(() => opened.close());

  test.each(computing)('/%s', async (path) => {
    const best = new Map<string, number>();
    for (let load = 0; load < LOADS; load++) {
      if (load > 0) await measurePace();
      for (const [id, median] of await mediansOn(path))
        best.set(id, Math.min(median, best.get(id) ?? Number.POSITIVE_INFINITY));
      if ([...best.values()].every((median) => median <= FRAME)) break;
    }
    const slow: string[] = [];
    for (const [id, median] of best) {
      if (process.env.TELL) console.log(`SPEED ${path} ${id} ${median.toFixed(1)}`);
      // A worksheet of which no field moves the result at once has not been timed.
      if (Number.isNaN(median)) slow.push(`${id}: no field moved its results`);
      if (median > FRAME) slow.push(`${id}: ${median.toFixed(1)} ms`);
    }
    expect(slow).toEqual([]);
  });

  /** The median time of a key press on each worksheet of a page, loaded anew. */
  async function mediansOn(path: string): Promise<[id: string, median: number][]> {
    const { page, context } = opened;
    // What was typed on the page before may leave a field of this one waiting.
    await page.evaluate(() => localStorage.clear());
    await opened.go(path);
    await wakeWorksheets(page);
    const cdp = await context.newCDPSession(page);
    const sheets = page.locator('[data-worksheet]:has(.live)');
    await cdp.send('Emulation.setCPUThrottlingRate', { rate });
    const medians: [string, number][] = [];
    for (const sheet of await sheets.all()) {
      const id = (await sheet.getAttribute('data-worksheet')) ?? '';
      const median = await sheet.evaluate(
        async (section, { presses, rounds, enough }) => {
          const timed = async (change: () => void) => {
            await new Promise((done) => setTimeout(done, 10));
            const begun = performance.now();
            change();
            // Preact draws in a microtask; the box is asked for so that the layout counts too.
            await Promise.resolve();
            await Promise.resolve();
            section.getBoundingClientRect();
            return performance.now() - begun;
          };
          const shown = () =>
            section.querySelector('.withheld')
              ? ''
              : [...section.querySelectorAll('.results')].map((list) => list.textContent).join();
          const write = (input: HTMLInputElement | HTMLTextAreaElement, text: string) => () => {
            input.value = text;
            input.dispatchEvent(new Event('input', { bubbles: true }));
          };
          const all = (selector: string) => [
            ...section.querySelectorAll<HTMLInputElement>(selector),
          ];
          const lines = [...section.querySelectorAll<HTMLTextAreaElement>('.lines textarea')];
          // A correction, and back: the number half as large, one line less, or another choice.
          const corrections = [
            ...all('.field input[type="text"]').map((input) => [
              write(input, String(Number(input.value) / 2)),
              write(input, input.value),
            ]),
            ...lines.map((area) => [
              write(area, area.value.trim().split('\n').slice(0, -1).join('\n')),
              write(area, area.value),
            ]),
            ...all('input[type="radio"]:not(:checked)').map((radio) => {
              const had = section.querySelector<HTMLInputElement>(`[name="${radio.name}"]:checked`);
              return [() => radio.click(), () => had?.click()];
            }),
          ] as [() => void, () => void][];
          // Some fields cost more than others: each is tried, and the costliest timed.
          let costliest: readonly [there: () => void, back: () => void] | undefined;
          let most = 0;
          for (const [there, back] of corrections) {
            const before = shown();
            const took = await timed(there);
            const moved = shown() && shown() !== before;
            await timed(back);
            if (!moved || took <= most) continue;
            // Of two, for one may fall on a busy moment.
            const cost = Math.min(took, await timed(there));
            await timed(back);
            if (cost <= most) continue;
            most = cost;
            costliest = [there, back];
          }
          if (!costliest) return Number.NaN;
          const [there, back] = costliest;
          let least = Number.POSITIVE_INFINITY;
          for (let round = 0; round < rounds && least > enough; round++) {
            const times: number[] = [];
            for (let i = 0; i < presses; i++) times.push(await timed(i % 2 ? back : there));
            least = Math.min(least, times.sort((a, b) => a - b)[Math.floor(presses / 2)]!);
            if (presses % 2) await timed(back);
          }
          return least;
        },
        { presses: PRESSES, rounds: ROUNDS, enough: ENOUGH },
      );
      medians.push([id, median]);
    }
    await cdp.detach();
    return medians;
  }
});
