import { setPersistentEngine } from '@nanostores/persistent';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

/** The stores as a page has them that has just been opened, with nothing on it that listens to them. */
let bench: typeof import('../../src/bench/store.ts');
let kept: Record<string, string>;
const deaf = { addEventListener() {}, removeEventListener() {} };

beforeEach(async () => {
  vi.resetModules();
  bench = await import('../../src/bench/store.ts');
  kept = {
    'suds.bench.1.bucket.tare': '{"t":"0.9"}',
    'suds.kept.1.mix.planned': '{"v":600,"from":"x"}',
    'suds.used.1.proportion': 'yes',
    'suds.units': 'us',
  };
  setPersistentEngine(kept, deaf);
});
afterEach(() => setPersistentEngine({}, deaf));

test('an empty bench in its place is empty in the browser too, on any page; the units stay', () => {
  bench.replaceBench({ entries: {} });
  expect(kept).toEqual({ 'suds.units': 'us' });
});

test('what was on the bench is put back whole, with what its worksheets kept', () => {
  const before = { ...kept };
  const was = bench.onBench();
  bench.replaceBench({ entries: {} });
  bench.replaceBench(was);
  expect(kept).toEqual(before);
});

test('another bench in its place leaves nothing of the one before', () => {
  bench.replaceBench({ entries: { 'correct.full': { t: '13.4' } } });
  expect(kept).toEqual({ 'suds.bench.1.correct.full': '{"t":"13.4"}', 'suds.units': 'us' });
});

test('a result kept again as it was puts nothing behind: two tabs would go on for ever', () => {
  const behind = () => Object.keys(kept).filter((key) => key.startsWith('suds.behind.'));
  bench.keep('mix.planned', { v: 600, from: 'x' });
  expect(behind()).toEqual([]);
  bench.keep('mix.planned', { v: 601, from: 'x' });
  expect(behind()).toHaveLength(1);
});

test('what could not be read again is not put on the bench, and what was there stays', () => {
  bench.enter('correct.full', { t: '13.4', u: 'kg' });
  bench.enter('correct.full', { t: '1'.repeat(4001), u: 'kg' });
  bench.enter('correct.full', { t: '13.4', u: 'kg', p: '1'.repeat(201) });
  bench.enter('foam.rows', { rows: Array(41).fill({}) });
  expect(Object.keys(kept).filter((key) => key.includes('foam.rows'))).toEqual([]);
  expect(kept['suds.bench.1.correct.full']).toBe('{"t":"13.4","u":"kg"}');
  bench.enter('correct.full', { t: '1'.repeat(4000), u: 'kg' });
  expect(kept['suds.bench.1.correct.full']).toContain('1111');
});
