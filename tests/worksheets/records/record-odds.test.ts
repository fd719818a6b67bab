import { expect, test } from 'vitest';
import type { BatchRecord } from '../../../src/bench/records/record.ts';
import { CEMENT_DENSITY_KEY } from '../../../src/worksheets/live/records/cement-density.ts';
import { demoBatches } from '../../../src/worksheets/live/records/demo-batches.ts';
import { learnFrom } from '../../../src/worksheets/live/records/lessons.ts';
import { oddsOf, timesIn100 } from '../../../src/worksheets/live/records/record-odds.ts';

const demo = demoBatches();
const { learned } = learnFrom(demo).lessons.find(({ lesson }) => lesson === 'survival')!;
const of = (bench: BatchRecord['bench'], readings: BatchRecord['readings'] = {}): BatchRecord => ({
  ...demo[0]!,
  bench,
  readings: { ...demo[0]!.readings, ...readings },
});

test('the odds of landing go by the batch’s own cement', () => {
  // The denser its base mix, the more foam it takes, and the more the foam decides.
  const odds = ['2000', '3150', '4000'].map(
    (t) => oddsOf(of({ [CEMENT_DENSITY_KEY]: { t, u: 'kg/m3' } }), learned)!,
  );
  const [light, usual, heavy] = odds.map(({ before }) => before) as [number, number, number];
  expect(usual).toBe(oddsOf(of({}), learned)!.before);
  expect(light).toBeGreaterThan(usual);
  expect(heavy).toBeLessThan(usual);
  for (const { before, after } of odds) expect(after).toBeGreaterThan(before);
});

test('the odds use the survival’s distribution, and split damp sand into sand and water', () => {
  // Base mix of 2092.37: its foam for 1000 kg/m³ weighs 1050 and 950 at shares of 0.9046 and 1.1054, with a tenth
  // more of foam of 0.8138 and 0.9953. Of Student's t with one degree, ½ + atan(x)/π, about 0.90 ± 0.02: 39.6 and 86.2.
  const found = { ...learned, estimate: 0.9, t: { mean: 0.9, scale: 0.02, freedom: 1 } };
  const kg = (t: string) => ({ t, u: 'kg' });
  const odds = (water: string, sand: string, kept: BatchRecord['kept'] = {}) => {
    const weighed = { cement: kg('8'), water: kg(water), sand: kg(sand) };
    const more = { planned: { t: '1000', u: 'kg/m3' }, foamDensity: { t: '80', u: 'kg/m3' } };
    return oddsOf({ ...of({}, { ...weighed, ...more }), kept }, found);
  };
  expect(odds('4', '8')).toEqual({ target: 1000, before: 40, after: 86 });
  expect(odds('3.36', '8.64', { 'mix.sandFree': { v: 0.64 / 8.64, from: '' } })).toEqual(
    odds('4', '8'),
  );
});

test('are missing without a plan, and for one out of reach', () => {
  expect(oddsOf(of({}, { planned: { t: '' } }), learned)).toBeUndefined();
  expect(oddsOf(of({}, { planned: { t: '2500', u: 'kg/m3' } }), learned)).toBeUndefined();
  expect(oddsOf(of({}), { ...learned, count: 0 })).toBeUndefined();
});

test('one in 100 is worded as once', () => {
  expect([0, 1, 2].map(timesIn100)).toEqual(['0 times in 100', 'once in 100', '2 times in 100']);
});
