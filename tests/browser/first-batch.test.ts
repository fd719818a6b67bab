import { readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { foamDensity } from '../../src/core/foam/density.ts';
import { correctMix } from '../../src/core/mix/correct.ts';
import { mixerLoads } from '../../src/core/mix/loads.ts';
import { proportion } from '../../src/core/mix/proportion.ts';
import { batchVolume } from '../../src/core/placing/volume.ts';
import { formatQuantity } from '../../src/core/quantity/format.ts';
import type { Kind } from '../../src/core/quantity/kinds.ts';
import { hardnessFromIons } from '../../src/core/water/hardness.ts';
import { type Opened, openPage, wakeWorksheets } from './browser.ts';
import { fill, tabTo } from './keyboard.ts';

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

/** A result as the page shows it. */
const shown = (sheet: string, result: string) =>
  page
    .locator(`[data-worksheet="${sheet}"] [data-result="${result}"] .number`)
    .innerText()
    .then((text) => text.replace(/\s+/g, ' ').trim());
const becomes = (sheet: string, result: string, text: string) =>
  expect.poll(() => shown(sheet, result), { timeout: 5000 }).toBe(text.replace(/\s+/g, ' '));
const say = (si: number, kind: Kind, unit: string, significant = 3) =>
  formatQuantity(si, kind, unit, { significant }).text;
const problem = (id: string) => page.locator(`#${id}-problem`);

describe('the whole journey by keyboard', () => {
  test('with the demo numbers comes to what core works out', async () => {
    await fill(page, 'pieces-pieces-0-count', '12');
    await fill(page, 'pieces-pieces-0-length', '450');
    await fill(page, 'pieces-pieces-0-width', '300');
    await fill(page, 'pieces-pieces-0-thickness', '60');
    await fill(page, 'pieces-settling', '3');
    await fill(page, 'pieces-waste', '5');
    await fill(page, 'target-density-density', '600');
    await fill(page, 'target-density-waterCement', '0.4');
    await fill(page, 'water-hardness-calcium', '95');
    await fill(page, 'water-hardness-magnesium', '18');
    await fill(page, 'foam-density-tare', '0.85');
    await fill(page, 'foam-density-full', '2.45');
    await fill(page, 'foam-density-vessel', '20');
    await fill(page, 'proportion-partsWater', '40');
    await fill(page, 'proportion-load', '40');
    await fill(page, 'correct-full', '13.65');

    const slab = { shape: 'slab', length: 0.45, width: 0.3, thickness: 0.06 } as const;
    const volume = batchVolume({
      pieces: [{ piece: slab, count: 12 }],
      settling: 0.03,
      waste: 0.05,
    });
    await becomes('pieces', 'total', say(volume.total, 'volume', 'L'));

    const water = hardnessFromIons({ calcium: 0.095, magnesium: 0.018 });
    expect(await shown('water-hardness', 'total')).toContain(
      say(water.total, 'hardness', 'mg/L CaCO3').split('\u00a0')[0],
    );
    const foam = foamDensity({ tare: 0.85, full: 2.45, vessel: 0.02 });
    expect(await shown('foam-density', 'density')).toContain(foam.apparent.toFixed(1));

    const mix = proportion({
      volume: volume.total,
      target: { wetDensity: 600 },
      waterCement: 0.4,
      foamDensity: foam.apparent,
    });
    const loads = mixerLoads({ batch: mix, largestLoad: 0.04, foamBucket: 0.02 });
    await becomes('proportion', 'cement', say(mix.cement, 'mass', 'kg'));
    await becomes('proportion', 'water', say(mix.water, 'mass', 'kg'));
    await becomes('proportion', 'foamVolume', say(mix.foamVolume, 'volume', 'L'));
    await becomes('proportion', 'loads', String(loads.count));

    const fix = correctMix({
      measuredDensity: 640,
      massInHand: mix.mass / loads.count,
      targetDensity: mix.wetDensity,
      foamDensity: foam.apparent,
      baseDensity: mix.baseDensity,
      tolerance: 30,
    });
    // The ± of the weighings leaves two digits of it.
    const twoDigits = formatQuantity(fix.foamVolume, 'volume', 'L', { significant: 2 }).number;
    await expect
      .poll(() => shown('correct', 'addFoam'))
      .toMatch(new RegExp(`^${twoDigits} ± [\\d.]+ L$`));

    const sheet = page.locator('.bench-sheet');
    const cement = say(mix.cement / loads.count, 'mass', 'kg');
    await expect.poll(() => sheet.innerText()).toContain(cement);
    await expect.poll(() => sheet.innerText()).toContain('Full of foam it weighs 2.45\u00a0kg');
    await expect.poll(() => sheet.innerText()).toMatch(/Bucket weighs, kg[\s\S]*13\.5\s+633/);
  });

  test('with typed units, commas and fractions comes to the same', async () => {
    await fill(page, 'foam-density-tare', '850 g');
    await fill(page, 'foam-density-full', '2,45');
    await fill(page, 'foam-density-vessel', '5 1/4 gal');
    const foam = foamDensity({ tare: 0.85, full: 2.45, vessel: 5.25 * 3.785411784e-3 });
    await expect.poll(() => shown('foam-density', 'density')).toContain(foam.apparent.toFixed(1));
    await expect
      .poll(() => page.locator('#foam-density-vessel-echo').innerText())
      .toContain('19.873');

    await page.locator('#water-hardness-method').selectOption('total');
    await fill(page, 'water-hardness-total', '17½ °dH');
    await expect.poll(() => shown('water-hardness', 'german')).toMatch(/^17\.5/);
  });

  test('units turn for the whole page, and back without drift', async () => {
    await fill(page, 'foam-density-full', '2.45');
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

describe('nonsense', () => {
  test.each([
    ['', 'is empty'],
    ['two and a bit', 'is not a number'],
    ['-1', 'must be at least'],
    ['1,234', 'can be read as 1.234 or as 1234'],
    ['1e30', 'must be at most'],
    ['12 furlongs', 'is not one of mass'],
    ['5 L', 'is a volume'],
    ['10 20 30', 'more than one number'],
  ])('%j gets a sentence by its field and no result', async (text, words) => {
    await fill(page, 'foam-density-full', text);
    if (text === '') await page.keyboard.press('Delete');
    await page.keyboard.press('Tab');
    await expect.poll(() => problem('foam-density-full').innerText()).toContain(words);
    await expect.poll(() => page.locator('#foam-density-full').inputValue()).toBe(text);
    expect(await page.locator('[data-worksheet="foam-density"] .results').count()).toBe(0);
    expect(await page.locator('#foam-density-full').getAttribute('aria-invalid')).toBe('true');
  });

  test('a way leads from the summary to the field', async () => {
    await fill(page, 'correct-full', 'x');
    await page.keyboard.press('Tab');
    await page.locator('[data-worksheet="correct"] .withheld a').click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('correct-full');
  });

  test('a target heavier than the base mix is refused with the limit named', async () => {
    await fill(page, 'proportion-wetDensity', '1990');
    await page.keyboard.press('Tab');
    await expect.poll(() => problem('proportion-wetDensity').innerText()).toContain('1951');
  });
});

describe('what is heard and printed', () => {
  test('a result is announced once, a second after the last key', async () => {
    const heard = page.locator('[data-worksheet="foam-density"] [role="status"].unseen');
    expect((await heard.innerText()).trim()).toBe('');
    await fill(page, 'foam-density-full', '2.65');
    expect((await heard.innerText()).trim()).toBe('');
    await expect
      .poll(() => heard.innerText(), { timeout: 3000 })
      .toMatch(/^Foam density: 90\.0\sg\/L\.$/);
  });

  test.each(['A4', 'Letter'])('the bench sheet prints on one page of %s', async (format) => {
    await tabTo(page, 'pieces-settling');
    const pdf = await page.pdf({ format });
    const file = join(tmpdir(), `bench-sheet-${format}.pdf`);
    writeFileSync(file, pdf);
    const pages = readFileSync(file, 'latin1').match(/\/Type\s*\/Page\b/g) ?? [];
    expect(pages.length).toBe(1);
  });
});
