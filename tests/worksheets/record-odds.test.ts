import { expect, test } from 'vitest';
import type { BatchRecord } from '../../src/bench/records/record.ts';
import { CEMENT_DENSITY_KEY } from '../../src/worksheets/shared/cement-density.ts';
import { demoBatches } from '../../src/worksheets/shared/demo-batches.ts';
import { learnFrom } from '../../src/worksheets/shared/lessons.ts';
import { oddsOf, timesIn100 } from '../../src/worksheets/shared/record-odds.ts';

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

test('there are none without a plan, nor for one that no such foam reaches', () => {
  expect(oddsOf(of({}, { planned: { t: '' } }), learned)).toBeUndefined();
  expect(oddsOf(of({}, { planned: { t: '2500', u: 'kg/m3' } }), learned)).toBeUndefined();
  expect(oddsOf(of({}), { ...learned, count: 0 })).toBeUndefined();
});

test('one time is once', () => {
  expect([0, 1, 2].map(timesIn100)).toEqual(['0 times in 100', 'once in 100', '2 times in 100']);
});
