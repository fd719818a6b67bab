import { expect, test } from 'vitest';
import { speaker } from '../../src/islands/engine/say.ts';
import { benchRows } from '../../src/worksheets/mix/bench-rows.ts';
import { oneUnit } from '../../src/worksheets/shared/one-unit.ts';

/** The demo bucket and its mix, with so much of it in the mixer. */
const rows = (massInHand: number, system: 'metric' | 'us') =>
  benchRows(
    {
      massInHand,
      targetDensity: 600,
      foamDensity: 80,
      baseDensity: 1951,
      tolerance: 30,
      tare: 0.85,
      vessel: 0.02,
    },
    { waterCement: 0.55, sandCement: 0 },
    speaker(system),
  );

/** The units that a column's amounts are in. */
const units = (cells: readonly string[]) => [
  ...new Set(cells.flatMap((cell) => cell.match(/(?<=\d\u00a0)[A-Za-z]+/g)?.join(' and ') ?? [])),
];

test.each([
  [21.02, 'us', 'gal and lb', 'lb'],
  [5, 'us', 'qt and oz', 'lb'],
  [21.02, 'metric', 'L and g', 'kg'],
  [5, 'metric', 'L and g', 'kg'],
] as const)('%s kg in the mixer, %s: one unit down each column', (mass, system, foam, base) => {
  const table = rows(mass, system);
  expect(units(table.map(([, , cell]) => cell!))).toEqual([foam]);
  expect(units(table.map(([, , , cell]) => cell!))).toEqual([base]);
});

test('the middle amount that is none chooses the unit', () => {
  const unit = (...kg: number[]) => oneUnit('mass', kg, speaker('metric')).units.metric;
  expect(unit(0, 0, 0.2, 0.9, 1.4)).toBe('g');
  expect(unit(0, 0.2, 1.1, 1.4)).toBe('kg');
  expect(unit(0, 0)).toBe('kg');
});

test('a reading that would take more than a correction has no amount', () => {
  const mix = { massInHand: 40, foamDensity: 80, baseDensity: 1951, tolerance: 65, tare: 0.85 };
  const table = benchRows(
    { ...mix, targetDensity: 1300, vessel: 0.02 },
    { waterCement: 0.4, sandCement: 0 },
    speaker('metric'),
  );
  // By hand: half of the mass at 1300 ÷ (1 + ½ (1 − 1300/1951)) = 1114.1 kg/m³, in 20 L with the tare 23.13 kg.
  const byReading = table.map((row) => [Number.parseFloat(row[0]!), row[3]!] as const);
  const light = byReading.filter(([reading]) => reading < 23.13);
  expect(light.length).toBeGreaterThan(0);
  expect(light.every(([, cell]) => cell === 'weigh again')).toBe(true);
  expect(byReading.find(([reading]) => reading > 23.13)![1]).toMatch(/^\d.*kg \(/);
});
