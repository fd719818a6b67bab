import type { Page } from 'playwright-core';

/** A phone is this many times slower than the machine the budgets were set on. */
const SLOWER = 4;
/** What that machine took for `work`, ms: the least of many. */
const REFERENCE = 10.4;

/**
 * How many times this machine's processor is to be slowed for it to be such a phone: less than four
 * times when it is slower than that machine, more when it is faster.
 */
export async function slowdown(page: Page): Promise<number> {
  const here = await page.evaluate(pace);
  return Math.max(1, (SLOWER * REFERENCE) / here);
}

/** How many times slower than that machine this one is; 1 for one that is no slower. */
export async function slowness(page: Page): Promise<number> {
  return Math.max(1, (await page.evaluate(pace)) / REFERENCE);
}

/** The least time for some work of the kind that pages do, ms: objects, text, sums, and boxes laid out. */
async function pace(): Promise<number> {
  const work = () => {
    const rows = Array.from({ length: 400 }, (_, i) => ({ id: `row-${i}`, value: Math.sin(i) }));
    const known = new Map(rows.map((row) => [row.id, row]));
    let sum = 0;
    for (let i = 0; i < 40_000; i++) sum += Math.exp(-(i % 97) / 50) * (i & 7);
    const text = JSON.stringify(rows.map(({ id }) => ({ ...known.get(id), sum })));
    const box = document.createElement('div');
    for (const { id, value } of JSON.parse(text) as typeof rows) {
      const line = document.createElement('p');
      line.textContent = `${id}: ${value.toPrecision(4)}`;
      box.append(line);
    }
    document.body.append(box);
    const { height } = box.getBoundingClientRect();
    box.remove();
    return height;
  };
  let least = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < 40; turn++) {
    await new Promise((done) => setTimeout(done, 5));
    const begun = performance.now();
    // A browser's clock is too coarse for one.
    for (let i = 0; i < 4; i++) work();
    least = Math.min(least, performance.now() - begun);
  }
  return least;
}
