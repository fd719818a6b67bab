import type { Locator, Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Opened, openPage, wakeWorksheets } from './browser.ts';
import { type Case, journey } from './journey.ts';
import { typeOver } from './keyboard.ts';
import { shown as shownOn } from './shown.ts';
import { turns } from './turns.ts';

let opened: Opened;
let page: Page;

beforeEach(async () => {
  opened = await openPage('first-batch/');
  page = opened.page;
  await wakeWorksheets(page);
});
afterEach(async () => {
  expect(opened.complaints).toEqual([]);
  await opened.close();
});

const shown = (sheet: string, result: string) => shownOn(page, sheet, result);
/** Until what one worksheet hands to the next has gone through them all. */
async function still(place: Locator) {
  let before = '';
  const changed = async () => {
    const had = before;
    before = await place.innerText();
    return before !== had;
  };
  await expect.poll(changed, { interval: 250 }).toBe(false);
}
const problem = (id: string) => page.locator(`#${id}-problem`);

const LB = 0.45359237;
const GALLON = 3.785411784e-3;
const FOOT = 0.3048;

/** Nobody's example: sand, a smaller bucket, and slabs of two sizes. */
const own: Case = {
  pieces: [
    { count: ['6', 6], length: ['520', 0.52], width: ['310', 0.31], thickness: ['70', 0.07] },
    { count: ['4', 4], length: ['260', 0.26], width: ['240', 0.24], thickness: ['55', 0.055] },
  ],
  settling: ['4', 0.04],
  waste: ['7', 0.07],
  density: ['900', 900],
  waterCement: ['0.45', 0.45],
  sandCement: ['1', 1],
  calcium: ['61', 0.061],
  magnesium: ['9', 0.009],
  tare: ['1.02', 1.02],
  foam: ['2.28', 2.28],
  vessel: ['15', 0.015],
  partsWater: ['30', 30],
  load: ['35', 0.035],
  blend: ['15.9', 15.9],
  row: '16.00',
};

const demo: Case = {
  pieces: [
    { count: ['12', 12], length: ['450', 0.45], width: ['300', 0.3], thickness: ['60', 0.06] },
  ],
  settling: ['3', 0.03],
  waste: ['5', 0.05],
  density: ['600', 600],
  waterCement: ['0.4', 0.4],
  sandCement: ['0', 0],
  calcium: ['95', 0.095],
  magnesium: ['18', 0.018],
  tare: ['0.85', 0.85],
  foam: ['2.45', 2.45],
  vessel: ['20', 0.02],
  partsWater: ['40', 40],
  load: ['40', 0.04],
  blend: ['13.65', 13.65],
  row: '13.5',
};

/** Near the demo numbers, as people write them. */
const mixed: Case = {
  pieces: [
    {
      count: ['12', 12],
      length: ['17 3/4 in', (17.75 * FOOT) / 12],
      width: ['1 ft', FOOT],
      thickness: ['6 cm', 0.06],
    },
  ],
  settling: ['3,0', 0.03],
  waste: ['5\u00a0%', 0.05],
  density: ['37½ lb/ft3', (37.5 * LB) / FOOT ** 3],
  waterCement: ['0,4', 0.4],
  sandCement: ['0,0', 0],
  calcium: ['0,095 g/L', 0.095],
  magnesium: ['1.8e1', 0.018],
  tare: ['850 g', 0.85],
  foam: ['2,45', 2.45],
  vessel: ['5 1/4 gal', 5.25 * GALLON],
  partsWater: ['40,0', 40],
  load: ['10½ gal', 10.5 * GALLON],
  blend: ['30 lb', 30 * LB],
  row: '13.5',
};

describe('the whole journey by keyboard comes to what core works out', () => {
  // Typed over other numbers: an example that stands in the page already would say nothing.
  test('with numbers of one’s own, then the demo numbers, then units, commas and fractions', async () => {
    for (const typed of [own, demo, mixed]) await journey(page, typed);
  });
});

describe('units', () => {
  test('an amount is echoed, and a hardness read, in the unit that was typed', async () => {
    await typeOver(page, 'foam-density-vessel', '5 1/4 gal');
    await expect
      .poll(() => page.locator('#foam-density-vessel-echo').innerText())
      .toContain('19.873');
    await page.locator('#water-hardness-method').selectOption('total');
    await typeOver(page, 'water-hardness-total', '17½ °dH');
    await expect.poll(() => shown('water-hardness', 'german')).toMatch(/^17\.5/);
  });

  test('turn for the whole page, and back without drift', async () => {
    await typeOver(page, 'foam-density-full', '2.45');
    const before = await shown('foam-density', 'density');
    const turn = page.locator('[data-units]');
    await turn.click();
    await expect.poll(() => page.locator('#foam-density-full').inputValue()).toBe('5.4013');
    await expect.poll(() => shown('proportion', 'cement')).toContain('lb');
    await turn.click();
    await expect.poll(() => page.locator('#foam-density-full').inputValue()).toBe('2.45');
    expect(await shown('foam-density', 'density')).toBe(before);
  });
});

test('the tap that enters a field types over its example, a second places the caret', async () => {
  const load = page.locator('#proportion-load');
  expect(await load.inputValue()).toBe('40');
  await load.click();
  await page.keyboard.type('5');
  expect(await load.inputValue()).toBe('5');
  const density = page.locator('#proportion-wetDensity');
  await density.click();
  await density.click();
  await page.keyboard.press('End');
  await page.keyboard.type('5');
  expect(await density.inputValue()).toBe('6005');
  // What is the reader's own is not selected.
  await load.click();
  await page.keyboard.press('End');
  await page.keyboard.type('1');
  expect(await load.inputValue()).toBe('51');
});

describe('what cannot be', () => {
  test('a way leads from the summary to the field', async () => {
    await typeOver(page, 'correct-full', 'x');
    await page.keyboard.press('Tab');
    await page.locator('[data-worksheet="correct"] .withheld a').click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('correct-full');
  });

  test('a target heavier than the base mix is refused with the limit named', async () => {
    await typeOver(page, 'proportion-wetDensity', '1990');
    await page.keyboard.press('Tab');
    await expect.poll(() => problem('proportion-wetDensity').innerText()).toContain('1951');
  });
});

test('beside a worksheet a caution stands whole the first time, then by its title', async () => {
  const found = await page.locator('.caution').evaluateAll((all) =>
    all.map((caution) => ({
      id: new URL(caution.querySelector('a')!.href).hash,
      again: caution.querySelector('strong') !== null,
      beside: caution.closest('.worksheet') !== null,
    })),
  );
  const seen = found.map(({ id }, at) => found.slice(0, at).some((before) => before.id === id));
  expect(seen.filter((above, at) => above && found[at]!.beside).length).toBeGreaterThan(2);
  expect(found.map(({ again }) => again)).toEqual(
    found.map(({ beside }, at) => beside && seen[at]),
  );
});

describe('what is heard and printed', () => {
  test('a result is announced once, a second after the last key', async () => {
    await page.clock.install();
    await opened.go('first-batch/');
    await wakeWorksheets(page);
    const heard = page.locator('[data-worksheet="foam-density"] [role="status"].unseen');
    expect((await heard.innerText()).trim()).toBe('');
    await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 60_000);
    await typeOver(page, 'foam-density-full', '2.65');
    await page.clock.runFor(999);
    expect((await heard.innerText()).trim()).toBe('');
    // It begins to count once the result has been drawn.
    await page.clock.runFor(100);
    expect(await heard.innerText()).toMatch(/^(Good|Look again|Stop)\. .*90\.0\sg\/L/);
  });

  test('of the worksheets that a change reaches, the one worked in speaks', async () => {
    await page.clock.install();
    await opened.go('first-batch/');
    await wakeWorksheets(page);
    const heard = async () => {
      const all = await page.locator('.worksheet [role="status"].unseen').allInnerTexts();
      return all.map((text) => text.trim()).filter(Boolean);
    };
    await typeOver(page, 'pieces-pieces-0-count', 'x');
    await expect.poll(heard, { timeout: 3000 }).toEqual([expect.stringContaining('‘x’')]);
    await typeOver(page, 'pieces-pieces-0-count', '12');
    await page.locator('[data-units]').click();
    await expect.poll(heard, { timeout: 3000 }).toEqual([expect.stringContaining('gal')]);
    await page.clock.runFor(3000);
    await turns(page);
    expect(await heard()).toHaveLength(1);
  });

  test('a field says itself whose number it holds', async () => {
    const described = (id: string) =>
      page.locator(`#${id}`).evaluate((field) => {
        const ids = field.getAttribute('aria-describedby')?.split(' ') ?? [];
        return ids.map((id) => document.getElementById(id)!.textContent!.replace(/\s+/g, ' '));
      });
    expect(await described('foam-density-tare')).toEqual(['example']);
    expect(await described('pieces-pieces')).toEqual(['Inside measures of the form.', 'example']);
    expect(await described('pieces-pieces-0-count')).toEqual(['example']);
    await typeOver(page, 'foam-density-tare', '0.9');
    await expect.poll(() => described('foam-density-tare')).toEqual([]);
    await expect
      .poll(async () => (await described('proportion-foamDensity')).at(-1))
      .toBe('from How heavy is my foam?, which still rests on the example');
  });

  test('a verdict that is not good names what is still the example’s, too', async () => {
    const verdict = page.locator('[data-worksheet="foam-density"] .verdict');
    await typeOver(page, 'foam-density-full', '1.4');
    await expect
      .poll(() => verdict.innerText())
      .toMatch(/^(Look again|Stop)\. .* Still the example’s: “/s);
  });

  /** A case that fills the bench sheet, field by field; where there are more pieces, each of its own size. */
  const full: [name: string, pieces: number, typed: Record<string, string>][] = [
    ['the example', 1, {}],
    [
      'sand, a small bucket and a second piece',
      2,
      {
        'target-density-density': '900 kg/m3',
        'target-density-sandCement': '1',
        'foam-density-tare': '1.02 kg',
        'foam-density-full': '2.22 kg',
        'foam-density-vessel': '15 L',
      },
    ],
    [
      'five kinds of piece and all weighings one’s own',
      5,
      {
        'target-density-density': '910 kg/m3',
        'target-density-waterCement': '0.41',
        'target-density-sandCement': '1',
        'foam-density-tare': '1.02 kg',
        'foam-density-full': '2.23 kg',
        'foam-density-vessel': '15.1 L',
        'proportion-partsWater': '41',
        'proportion-load': '20 L',
        'correct-full': '14.7 kg',
      },
    ],
    [
      'slabs that are filled from two loads, with sand',
      1,
      {
        'target-density-density': '910 kg/m3',
        'target-density-sandCement': '1',
        'pieces-pieces-0-count': '11',
        // Four loads of 24 L: less than the bucket holds would have no table.
        'proportion-load': '25 L',
      },
    ],
  ];
  test('slabs filled from two loads are said to get a joint, and are made in loads of whole ones', async () => {
    await page.locator('#pieces-pieces-0-count').fill('4');
    // 4 × 8.1 L, 3 and 5 % more: 35 L, two loads of 18 L or one of 40.
    await page.locator('#proportion-load').fill('12 L');
    const joints = page.locator('[data-worksheet="proportion"] [data-joints]');
    const sheet = page.locator('.bench-sheet');
    await expect.poll(() => joints.innerText()).toMatch(/3 loads for 4 pieces: some are filled/);
    await expect.poll(() => sheet.innerText()).toContain('4 loads of 1 piece avoid it');
    await joints.getByRole('button', { name: 'Make it in 4 loads' }).click();
    await expect.poll(() => shown('proportion', 'loads')).toBe('4');
    expect(await joints.count()).toBe(0);
    await expect.poll(() => sheet.innerText()).not.toContain('avoid it');
  });

  test.each(full)('the bench sheet prints on one page: %s', async (_, pieces, typed) => {
    const add = page.getByRole('button', { name: 'Add another piece' });
    for (let at = 1; at < pieces; at++) await add.click();
    for (let at = 1; at < pieces; at++)
      await page.locator(`#pieces-pieces-${at}-length`).fill(`${451 + at} mm`);
    for (const [id, text] of Object.entries(typed)) await page.locator(`#${id}`).fill(text);
    for (const system of ['metric', 'us']) {
      if (system === 'us') await page.locator('[data-units]').click();
      const weighs = { metric: 'Bucket weighs, kg', us: 'Bucket weighs, lb' }[system]!;
      await expect.poll(() => page.locator('.bench-sheet').innerText()).toContain(weighs);
      await still(page.locator('.bench-sheet'));
      for (const format of ['A4', 'Letter']) {
        const pdf = (await page.pdf({ format })).toString('latin1');
        expect(pdf.match(/\/Type\s*\/Page\b/g), `${format}, ${system}`).toHaveLength(1);
      }
    }
  });
});
