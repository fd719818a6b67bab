import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { foamDensity } from '../../src/core/foam/density.ts';
import { foamingSolution } from '../../src/core/foam/solution.ts';
import { correctMix } from '../../src/core/mix/correct.ts';
import { mixerLoads } from '../../src/core/mix/loads.ts';
import { proportion } from '../../src/core/mix/proportion.ts';
import { batchVolume } from '../../src/core/placing/volume.ts';
import { formatQuantity } from '../../src/core/quantity/format.ts';
import type { Kind } from '../../src/core/quantity/kinds.ts';
import { hardnessFromIons } from '../../src/core/water/hardness.ts';
import { fill, press, tabTo } from './keyboard.ts';
import { shown } from './shown.ts';

/** A number as it is typed, and what it is in SI. */
type Typed = readonly [text: string, si: number];
interface Slabs {
  readonly count: Typed;
  readonly length: Typed;
  readonly width: Typed;
  readonly thickness: Typed;
}

/** All that First batch asks for, from the form to the bucket on the scale. */
export interface Case {
  readonly pieces: readonly Slabs[];
  readonly settling: Typed;
  readonly waste: Typed;
  readonly density: Typed;
  readonly waterCement: Typed;
  readonly sandCement: Typed;
  readonly calcium: Typed;
  readonly magnesium: Typed;
  readonly tare: Typed;
  /** The vessel full of foam, and later of mix. */
  readonly foam: Typed;
  readonly vessel: Typed;
  readonly partsWater: Typed;
  readonly load: Typed;
  readonly blend: Typed;
  /** A reading of the scale in the printed table, kg, as it is printed. */
  readonly row: string;
}

/** What nobody types here and stands as the example: glycerol, waste at the lance, what fills the hose. */
const LEFT = { glycerolShare: 0.02, lanceLoss: 0.1, priming: 0.0005 } as const;

const say = (si: number, kind: Kind, unit: string, significant = 3) =>
  formatQuantity(si, kind, unit, { significant }).text.replace(/\s+/g, ' ');

/** Types a whole case by keys, in the order of the page, and holds every step against core. */
export async function journey(page: Page, a: Case): Promise<void> {
  await typeIn(page, a);

  const volume = batchVolume({
    pieces: a.pieces.map(({ count, length, width, thickness }) => ({
      count: count[1],
      piece: { shape: 'slab', length: length[1], width: width[1], thickness: thickness[1] },
    })),
    settling: a.settling[1],
    waste: a.waste[1],
  });
  const water = hardnessFromIons({ calcium: a.calcium[1], magnesium: a.magnesium[1] });
  const foam = foamDensity({ tare: a.tare[1], full: a.foam[1], vessel: a.vessel[1] });
  const mix = proportion({
    volume: volume.total,
    target: { wetDensity: a.density[1] },
    waterCement: a.waterCement[1],
    sandCement: a.sandCement[1],
    foamDensity: foam.apparent,
  });
  const loads = mixerLoads({ batch: mix, largestLoad: a.load[1], foamBucket: a.vessel[1] });
  const solution = foamingSolution({
    foamVolume: mix.foamVolume,
    foamDensity: foam.apparent,
    partsWater: a.partsWater[1],
    ...LEFT,
  });
  const fix = correctMix({
    measuredDensity: (a.blend[1] - a.tare[1]) / a.vessel[1],
    massInHand: mix.mass / loads.count,
    targetDensity: mix.wetDensity,
    foamDensity: foam.apparent,
    baseDensity: mix.baseDensity,
    tolerance: 0.05 * mix.wetDensity,
  });

  const becomes = (sheet: string, result: string, text: string | RegExp) =>
    expect.poll(() => shown(page, sheet, result)).toMatch(text);
  const exactly = (text: string) => new RegExp(`^${text.replaceAll('.', '\\.')}$`);
  await becomes('pieces', 'total', exactly(say(volume.total, 'volume', 'L')));
  const hardness = formatQuantity(water.total, 'hardness', 'mg/L CaCO3', { significant: 3 });
  await becomes('water-hardness', 'total', new RegExp(`^${hardness.number}\\b`));
  await becomes('foam-density', 'density', surely(foam.apparent, 'g/L'));
  await becomes('proportion', 'cement', exactly(say(mix.cement, 'mass', 'kg')));
  await becomes('proportion', 'water', exactly(say(mix.water, 'mass', 'kg')));
  if (mix.sand > 0) await becomes('proportion', 'sand', exactly(say(mix.sand, 'mass', 'kg')));
  await becomes('proportion', 'foamVolume', exactly(say(mix.foamVolume, 'volume', 'L')));
  const concentrate = say(solution.concentrateVolume, 'volume', 'mL');
  await becomes('proportion', 'concentrate', exactly(concentrate));
  await becomes('proportion', 'loads', exactly(String(loads.count)));
  await becomes('correct', 'addFoam', surely(fix.foamVolume * 1000, 'L'));

  const sheet = page.locator('.bench-sheet');
  const reading = (Number(a.row) - a.tare[1]) / a.vessel[1];
  const density = formatQuantity(reading, 'density', 'kg/m3').number;
  const bucket = say(a.foam[1], 'mass', 'kg');
  for (const text of [
    new RegExp(say(mix.cement / loads.count, 'mass', 'kg').replace(' ', '\\s')),
    new RegExp(`Full of foam it weighs ${bucket.replace(' ', '\\s')}`),
    new RegExp(`Bucket weighs, kg[\\s\\S]*${a.row}\\s+${density}\\b`),
  ])
    await expect.poll(() => sheet.innerText()).toMatch(text);
}

/** A number with its ± and unit: the ± decides the digits, and to these it is ours. */
const surely = (value: number, unit: string) => {
  const digits = [0, 1, 2].map((decimals) => value.toFixed(decimals).replace('.', '\\.'));
  return new RegExp(`^(?:${digits.join('|')}) ± [\\d.]+ ${unit}$`);
};

/** Types each field over, and sees that it holds what was typed and no example. */
async function typeIn(page: Page, a: Case): Promise<void> {
  // From the head of the page: Tab goes down it.
  await page.locator('.skip').focus();
  const typed: [id: string, text: string][] = [];
  const type = async (id: string, [text]: Typed) => {
    await fill(page, id, text);
    typed.push([id, text]);
  };
  for (let there = await pieces(page); there > a.pieces.length; there--)
    await press(page, `Remove piece ${there}`);
  for (const [at, piece] of a.pieces.entries()) {
    if (at >= (await pieces(page))) {
      await press(page, 'Add another piece');
      await tabTo(page, `pieces-pieces-${at}-count`);
    }
    for (const name of ['count', 'length', 'width', 'thickness'] as const)
      await type(`pieces-pieces-${at}-${name}`, piece[name]);
  }
  await type('pieces-settling', a.settling);
  await type('pieces-waste', a.waste);
  await type('target-density-density', a.density);
  await type('target-density-waterCement', a.waterCement);
  await type('target-density-sandCement', a.sandCement);
  await type('water-hardness-calcium', a.calcium);
  await type('water-hardness-magnesium', a.magnesium);
  await type('foam-density-tare', a.tare);
  await type('foam-density-full', a.foam);
  await type('foam-density-vessel', a.vessel);
  await type('proportion-partsWater', a.partsWater);
  await type('proportion-load', a.load);
  await type('correct-full', a.blend);
  await page.keyboard.press('Tab');
  for (const [id, text] of typed) {
    expect(await page.locator(`#${id}`).inputValue(), id).toBe(text);
    expect(await page.locator(`[data-origin="example"] #${id}`).count(), id).toBe(0);
  }
}

const pieces = (page: Page) => page.locator('[id^="pieces-pieces-"][id$="-count"]').count();
