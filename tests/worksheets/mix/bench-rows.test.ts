import { expect, test } from 'vitest';
import { correctionTable } from '../../../src/core/mix/correction-table.ts';
import { toUnit } from '../../../src/core/quantity/convert.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { BENCH_COLUMNS, benchRows } from '../../../src/worksheets/mix/bench-rows.ts';
import correct from '../../../src/worksheets/mix/correct.tsx';
import several from '../../../src/worksheets/mix/correct-buckets.tsx';
import { roundReadings } from '../../../src/worksheets/mix/round-readings.ts';
import { oneUnit } from '../../../src/worksheets/shared/words/one-unit.ts';

/** The demo bucket, or another, and the demo mix, with so much of it in a mixer. */
const rows = (massInHand: number, system: 'metric' | 'us', over = {}) =>
  benchRows(
    {
      massInHand,
      targetDensity: 600,
      foamDensity: 80,
      baseDensity: 1951,
      tolerance: 30,
      tare: 0.85,
      vessel: 0.02,
      load: 0.06,
      ...over,
    },
    { waterCement: 0.55, sandCement: 0 },
    speaker(system),
  );

/** The units that a column's amounts are in. */
const units = (cells: readonly string[]) => [
  ...new Set(cells.flatMap((cell) => cell.match(/(?<=\d\u00a0)[A-Za-z]+/g)?.join(' and ') ?? [])),
];

test.each([
  [21.02, 'us', 'qt and oz', 'lb'],
  [5, 'us', 'qt and oz', 'lb'],
  [21.02, 'metric', 'L and g', 'kg'],
  [5, 'metric', 'L and g', 'g'],
] as const)('%s kg in the mixer, %s: each column has one unit', (mass, system, foam, base) => {
  const table = rows(mass, system, mass < 10 ? { vessel: 0.005 } : {});
  expect(units(table.map(([, , cell]) => cell!))).toEqual([foam]);
  expect(units(table.map(([, , , cell]) => cell ?? ''))).toEqual([base]);
});

test('the verdict and its table give foam in one unit, with two digits at least', () => {
  const us = speaker('us');
  // 14.3 kg in a bucket of 20 L with a tare of 0.85 kg: 672.5 kg/m³, a little more than near enough.
  const entries = {
    'correct.full': { t: '31.5', u: 'lb' },
    'correct.mass': { t: '21.02', u: 'kg' },
  };
  const found = answer(correct, readWorksheet(correct, entries, {}, us), us);
  if (!found.ok) throw new Error('no answer');
  const result = found.result as ReturnType<typeof correct.work>;
  const inVerdict = /Add ([^ ]+) of foam \(([^ ]+) by weight\)/.exec(found.judgement.say)!;
  const inTable = benchRows(result.common, { waterCement: 0.4, sandCement: 0 }, us);
  const amounts = inTable.flatMap(([, , cell]) => cell!.match(/^([^ ]+) \(([^ ]+)\)$/) ?? []);
  const unit = (text: string) => text.split('\u00a0')[1];
  expect([unit(inVerdict[1]!), unit(inVerdict[2]!)]).toEqual(['qt', 'oz']);
  expect([unit(amounts[1]!), unit(amounts[2]!)]).toEqual(['qt', 'oz']);
  expect(amounts[1]).toMatch(/^\d\.\d\u00a0/);
});

test.each([
  ['metric', /^\d+\.[05]$/],
  ['us', /^\d+$/],
] as const)('the table to print has round readings of the scale, %s', (system, round) => {
  const voice = speaker(system);
  const found = answer(several, readWorksheet(several, {}, {}, voice), voice);
  if (!found.ok) throw new Error('no answer');
  const toPrint = several.tables!.at(-1)!.rows(found.result as never, found.values as never, voice);
  // Six lines either way of the one nearest to the target, 0.85 kg + 600 kg/m³ × 20 L: 12.85 kg, 28.3 lb.
  expect(toPrint).toHaveLength(13);
  const readings = toPrint.map(([cell]) => cell!.split('\u00a0')[0]!);
  for (const reading of readings) expect(reading).toMatch(round);
  expect(Number(readings[6])).toBe(system === 'us' ? 28 : 13);
  // And the density beside it is of that reading: (13 − 0.85) ÷ 0.02; 28 lb are 12.701 kg, 592.5 kg/m³.
  expect(toPrint[6]![1]).toBe(system === 'us' ? '37.0\u00a0lb/ft³' : '608\u00a0kg/m³');
});

test('a table to print never begins below an empty bucket', () => {
  const sheet = { tare: 0.85, vessel: 0.0001, target: 600, step: 500, lines: 20 };
  const { densities } = roundReadings(sheet, speaker('metric'));
  expect(Math.min(...densities)).toBeGreaterThan(0);
});

test.each([
  // 12 L at 100 kg/m³ a step are 1.2 kg, to which 1 kg is nearest; 400 kg/m³ are 4.8 kg, and five lines down is empty.
  ['metric', { tare: 0, vessel: 0.012, target: 400, step: 100, lines: 6 }, [1, 11]],
  // A gallon at 35 lb/ft³ holds 4.68 lb; at 6 lb/ft³ a step 0.80 lb, to which 1 lb is nearest.
  ['us', { tare: 0, vessel: 0.003785411784, target: 560.6, step: 96.11, lines: 6 }, [1, 11]],
  // 0.85 kg are 17 steps of 0.05 kg, and 1.45 kg 29.
  ['metric', { tare: 0.85, vessel: 0.002, target: 300, step: 25, lines: 20 }, [0.9, 2.45]],
] as const)(
  'no line of a table to print is an empty bucket: %s, %j',
  (system, sheet, [from, to]) => {
    const { step, densities } = roundReadings(sheet, speaker(system));
    const reading = (density: number) =>
      toUnit(sheet.tare + density * sheet.vessel, 'mass', step.units[system]);
    expect(reading(densities[0]!)).toBeCloseTo(from, 9);
    expect(reading(densities.at(-1)!)).toBeCloseTo(to, 9);
  },
);

test('every line of a table to print can be corrected, whatever the bucket', () => {
  const mix = { massInHand: 20, foamDensity: 50, baseDensity: 1951, tolerance: 30 };
  const sizes = [0.00001, 0.001, 0.003785411784, 0.005, 0.012, 0.02];
  for (const system of ['metric', 'us'] as const)
    for (const tare of [0, 0.05, 0.45359237, 0.85, 2])
      for (const vessel of sizes)
        for (let target = 100; target <= 1900; target += 50)
          for (const step of [10, 16.02, 25, 96.11, 100, 500]) {
            const sheet = { tare, vessel, target, step, lines: 20 };
            const { densities } = roundReadings(sheet, speaker(system));
            const lines = correctionTable({ ...mix, ...sheet, targetDensity: target, densities });
            expect(lines.length).toBeGreaterThan(0);
          }
});

test('the unit is chosen by the median of the amounts above 0', () => {
  const unit = (...kg: number[]) => oneUnit('mass', kg, speaker('metric')).units.metric;
  expect(unit(0, 0, 0.2, 0.9, 1.4)).toBe('g');
  expect(unit(0, 0.2, 1.1, 1.4)).toBe('kg');
  expect(unit(0, 0)).toBe('kg');
});

test('a reading that would take more than a correction has no amount', () => {
  const mix = { massInHand: 40, foamDensity: 80, baseDensity: 1500, tolerance: 40, tare: 0.85 };
  const table = benchRows(
    { ...mix, targetDensity: 1300, vessel: 0.02, load: 0.06 },
    { waterCement: 0.4, sandCement: 0 },
    speaker('metric'),
  );
  // By hand: half of the mass at 1300 ÷ (1 + ½ (1 − 1300/1500)) = 1218.75 kg/m³, in 20 L with the tare 25.225 kg.
  const byReading = table.map((row) => [Number.parseFloat(row[0]!), row.at(-1)!] as const);
  const light = byReading.filter(([reading]) => reading < 25.225);
  expect(light.length).toBeGreaterThan(0);
  expect(light.every(([, cell]) => cell === 'weigh again')).toBe(true);
  expect(byReading.find(([reading]) => reading > 25.225)![1]).toMatch(/^\d.*kg \(/);
});

/** The cells of the row at this reading of the scale. */
const at = (table: readonly string[][], reading: string) =>
  table.find(([first]) => first === `${reading}\u00a0kg`)!.slice(2);

test('a bucket that holds more than the whole mix gets no amount', () => {
  // 12.5 kg fills 20 L at 625 kg/m³ and less: 13.35 kg with the tare.
  const table = rows(12.5, 'metric');
  expect(at(table, '10.5')[1]).toMatch(/kg \(/);
  for (const reading of ['13.5', '14.0', '15.0'])
    expect(at(table, reading)).toEqual(['weigh a smaller vessel']);
  // As planned, 10 kg are 16.7 L: there is nothing to read.
  expect(rows(10, 'metric')).toEqual([]);
});

test('where the mixer has no room for it, some comes out first, and the amount is for what is left', () => {
  // By hand, 10.5 kg at 482.5 kg/m³: 21.02 kg are 43.565 L, and 600 − 482.5 over 1951 − 600 times that,
  // 3.7889 L or 7.392 kg of base mix, make 47.354 L. Of 35 L, 32.2 L are in there before: 5.464 kg.
  const light = at(rows(21.02, 'metric', { load: 0.035 }), '10.5');
  expect(light[1]).toMatch(/^first take out all but 32\sL, then 5\.5\skg \(.*\)$/);
  expect(at(rows(21.02, 'metric'), '10.5')[1]).toMatch(/^7\.4\skg \([^;]*$/);
  // 14.5 kg at 682.5: 30.798 L, and 82.5/520 of that in foam, 4.886 L; 35.684 L in all, of 30 L 4.108 L.
  const heavy = at(rows(21.02, 'metric', { load: 0.03 }), '14.5');
  expect(heavy[0]).toMatch(/^first take out all but 26\sL, then 4\.1\sL/);
  expect(heavy[1]).toBe('—');
  // The paddle’s room is enough for the foam that a full mixer is corrected with.
  expect(at(rows(21.02, 'metric', { load: 0.035 }), '14.5')[1]).toBe('—');
});

test.each([2000, 100_000])('%s kg: amounts for what is left of it keep their digits', (mass) => {
  const cells = rows(mass, 'us', { load: 0.2 }).flatMap(([, , ...cells]) => cells);
  const added = cells.filter((cell) => cell.startsWith('first take out'));
  expect(added.length).toBeGreaterThan(4);
  for (const cell of added) {
    const [, amount, weight] = /then ([\d.]+).*\(([\d.]+)/.exec(cell)!;
    for (const digits of [amount!, weight!])
      expect(digits.replace(/^0?\./, '').length, cell).toBeGreaterThan(1);
  }
});

test('the head of the base mix names each part of it, sand too', () => {
  const mix = { massInHand: 21.02, targetDensity: 600, foamDensity: 80, baseDensity: 2131 };
  const table = benchRows(
    { ...mix, tolerance: 30, tare: 0.85, vessel: 0.02, load: 0.06 },
    { waterCement: 0.4, sandCement: 1 },
    speaker('metric'),
  );
  // 2.4 parts: by hand (600 − 482.5) ÷ (1 − 600/2131) × 21.02/482.5 is 7.125 kg, a part 2.969 kg.
  expect(at(table, '10.5')[1]).toBe('7.1\u00a0kg (3.0 + 1.2 + 3.0)');
  expect(BENCH_COLUMNS[3]).toBe('or base mix (cement + water + any sand)');
});

test('a jar has as many rows as a bucket', () => {
  const table = rows(0.3, 'metric', { tare: 0.02, vessel: 0.2e-3 });
  expect(table.length).toBeGreaterThan(rows(21.02, 'metric').length / 2);
  // 5 g in 200 mL are 25 kg/m³.
  expect(table.map(([reading]) => reading)).toContain('0.150\u00a0kg');
});

const AT_700 = { targetDensity: 700, tolerance: 35 };

test('the two limits of what is left alone are lines of their own, rounded inwards', () => {
  // 0.85 kg and 20 L of 665 and of 735 kg/m³.
  const table = rows(25, 'metric', AT_700);
  expect(at(table, '14.15')).toEqual(['—', 'from here: leave it, place it']);
  expect(at(table, '15.55')).toEqual(['—', 'to here: leave it, place it']);
  const after = table[table.findIndex(([first]) => first === '15.55\u00a0kg') + 1]!;
  expect(after[2]).toMatch(/L \(/);
  // 19 L of 575.7 and 636.3 kg/m³ are 10.9383 and 12.0897 kg.
  const odd = { targetDensity: 606, tolerance: 30.3, vessel: 0.019, tare: 0.85 };
  const readings = rows(25, 'metric', odd).map(([first]) => first);
  expect(readings).toContain('11.79\u00a0kg');
  expect(readings).toContain('12.93\u00a0kg');
  // A limit on a step is one line.
  const even = rows(25, 'metric', { tare: 0.6 });
  expect(even.filter(([first]) => /^12\.00?\u00a0/.test(first!))).toHaveLength(1);
  expect(at(even, '12.00')[1]).toBe('from here: leave it, place it');
  // Nor are there limits of a bucket that cannot tell, or that the mix does not fill there.
  const small = rows(14.3, 'metric', AT_700).map((row) => row.at(-1));
  expect(small).not.toContain('to here: leave it, place it');
});

test('between two lines lie at most some 25 kg/m³, in no more lines than a page has room for', () => {
  for (const system of ['metric', 'us'] as const)
    for (const vessel of [0.005, 0.0098, 0.012, 0.015, 0.0189, 0.0192, 0.02])
      for (let target = 300; target <= 1600; target += 50) {
        const over = { targetDensity: target, tolerance: target / 20, vessel };
        const table = rows(60, system, over);
        expect(table.length, `${target}, ${vessel}`).toBeLessThanOrEqual(15);
        const unit = system === 'us' ? 0.45359237 : 1;
        const lines = table.map(
          ([reading]) => (Number.parseFloat(reading!) * unit - 0.85) / vessel,
        );
        // A limit is rounded to a hundredth of the unit.
        const most = Math.max(30, 0.03 * target) + (0.011 * unit) / vessel;
        // Far too heavy may be coarser, and is told.
        expect(lines.at(-1)!).toBeGreaterThan(1.35 * target - most);
        for (const [i, density] of lines.entries())
          if (i > 0 && density < 1.1 * target && !table[i]![3]?.startsWith('to here'))
            expect(density - lines[i - 1]!, `${target}, ${vessel}`).toBeLessThan(most);
        // What is left alone, and some either side of it, is on it.
        expect(lines[0]!).toBeLessThan(0.95 * target - 1);
      }
});
