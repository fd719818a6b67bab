import { afterEach, expect, test } from 'vitest';
import {
  $behind,
  dropBehind,
  enter,
  keep,
  onBench,
  replaceBench,
  use,
} from '../../src/bench/store.ts';
import { swapBench } from '../../src/bench/swap-bench.ts';
import { clearBench } from './clear-bench.ts';

const mine = {
  entries: { 'bucket.tare': { t: '0.9' }, 'correct.full': { t: '13.4' } },
  kept: { 'mix.planned': { v: 600, from: 'x' } },
  used: { proportion: 'yes' },
};
const other = {
  entries: { 'bucket.tare': { t: '1.2' }, 'bucket.volume': { t: '10' } },
  kept: { 'mix.planned': { v: 700, from: 'x' } },
};
afterEach(clearBench);

test('another bench is put in place of mine, and mine comes back whole', () => {
  replaceBench(mine);
  const back = swapBench(other);
  expect(onBench()).toEqual({ ...other, used: {} });
  back();
  expect(onBench()).toEqual(mine);
});

test('what was typed, kept or used since stays', () => {
  replaceBench(mine);
  const back = swapBench(other);
  enter('bucket.tare', { t: '0.85' });
  enter('foam.assumed', { t: '80' });
  keep('mix.planned', { v: 650, from: 'x' });
  use('batch', true);
  back();
  expect(onBench()).toEqual({
    entries: {
      'bucket.tare': { t: '0.85' },
      'correct.full': { t: '13.4' },
      'foam.assumed': { t: '80' },
    },
    kept: { 'mix.planned': { v: 650, from: 'x' } },
    used: { proportion: 'yes', batch: 'yes' },
  });
});

test('what a bench brings along is noted to be worked out anew, which is no reader’s doing: mine comes back whole', () => {
  replaceBench(mine);
  // What other files left in the store is not in the map until it is read, and `set` would leave it there.
  dropBehind(Object.keys($behind.get()));
  const back = swapBench(other);
  expect(Object.values($behind.get()).sort()).toEqual([
    'bucket.tare',
    'bucket.volume',
    'mix.planned',
  ]);
  // As what catches up does.
  keep('mix.planned', { v: 650, from: 'x' });
  keep('mix.cement', { v: 13, from: 'x' });
  back();
  expect(onBench()).toEqual(mine);
});

test('so it is of a bench that was cleared', () => {
  replaceBench(mine);
  const back = swapBench({ entries: {} });
  enter('correct.full', { t: '12' });
  back();
  expect(onBench().entries).toEqual({ ...mine.entries, 'correct.full': { t: '12' } });
});
