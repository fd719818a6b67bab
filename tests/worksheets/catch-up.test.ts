import { setPersistentEngine } from '@nanostores/persistent';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { type AnyWorksheet, entryKeys, takenKeys } from '../../src/islands/worksheet.ts';
import batch from '../../src/worksheets/mix/batch.tsx';
import proportion from '../../src/worksheets/mix/proportion.tsx';
import shapes from '../../src/worksheets/placing/shapes.tsx';

const deaf = { addEventListener() {}, removeEventListener() {} };
let bench: typeof import('../../src/bench/store.ts');
/** What the browser keeps. */
let stored: Record<string, string>;

// Only fetching a worksheet takes real time: `vi.waitFor` moves the clock on while it waits.
beforeEach(async () => {
  vi.useFakeTimers();
  vi.resetModules();
  // Neither of the two is on the page.
  vi.stubGlobal('document', { querySelector: () => null });
  const restsOn = (sheet: AnyWorksheet) => [sheet.id, [...entryKeys(sheet), ...takenKeys(sheet)]];
  vi.stubGlobal('fetch', () =>
    Promise.resolve(Response.json(Object.fromEntries([shapes, proportion, batch].map(restsOn)))),
  );
  bench = await import('../../src/bench/store.ts');
  stored = {};
  setPersistentEngine(stored as unknown as Storage, deaf);
  for (const [key, sheet] of [
    ['batch.volume', shapes],
    ['mix.cement', proportion],
  ] as const)
    bench.keep(key, { v: 1, from: sheet.question, by: sheet.id });
  bench.$behind.set({});
  (await import('../../src/components/live/catch-up.ts')).follow();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  setPersistentEngine({}, deaf);
  // Files share a worker: the next one is not to enter anything on a bench that is followed.
  vi.resetModules();
});

const kept = (key: string) => {
  const found = bench.$kept.get()[key];
  return found && 'v' in found ? found.v : undefined;
};

test('a key press between two worksheets comes first; both are worked out at the next pause', async () => {
  let cementAtKey: number | undefined;
  let keyAt = Infinity;
  const stop = bench.$kept.listen((_now, _before, key) => {
    if (key !== 'batch.volume') return;
    stop();
    // As soon as the browser is free: after the first worksheet, and before the next.
    setTimeout(() => {
      cementAtKey = kept('mix.cement');
      keyAt = Date.now();
      bench.enter('shapes.count', { t: '3' });
    });
  });
  bench.enter('shapes.count', { t: '2' });
  await vi.waitFor(() => expect(cementAtKey).toBeDefined(), 5000);
  const two = kept('batch.volume')!;
  expect(cementAtKey).toBe(1);
  // What was being fetched at the key has come, and would have been worked out.
  await import('../../src/worksheets/mix/proportion.tsx');
  await vi.advanceTimersByTimeAsync(keyAt + 999 - Date.now());
  expect([kept('batch.volume'), kept('mix.cement')]).toEqual([two, 1]);
  expect(Object.values(bench.$behind.get())).toContain('shapes.count');

  await vi.waitFor(() => expect(bench.$behind.get()).toEqual({}), 5000);
  expect(kept('batch.volume')).toBeCloseTo(1.5 * two, 9);
  expect(kept('mix.cement')).not.toBe(1);
});

test('a note of another tab on the same field is not removed with this tab’s', async () => {
  bench.enter('shapes.count', { t: '2' });
  // That tab writes to the same store, and this one has not heard of it yet.
  stored['suds.behind.another'] = 'shapes.count';
  await vi.waitFor(() => expect(bench.$behind.get()).toEqual({}), 5000);
  const noted = Object.keys(stored).filter((key) => key.startsWith('suds.behind.'));
  expect(noted).toEqual(['suds.behind.another']);
});

test('a plan kept without the foam of a load is worked out again, once', async () => {
  bench.noteLate();
  expect(bench.$behind.get()).toEqual({});
  bench.enter('proportion.volume', { t: '500', u: 'L' });
  bench.enter('mix.largestLoad', { t: '100', u: 'L' });
  await vi.waitFor(() => expect(bench.$behind.get()).toEqual({}), 5000);
  const now = kept('mix.loadFoam')!;
  expect(now).toBeLessThan(kept('mix.foamVolume')! / 2);
  bench.keep('mix.loadFoam', undefined);
  bench.$behind.set({});
  bench.noteLate();
  await vi.waitFor(() => expect(kept('mix.loadFoam')).toBe(now), 5000);
  await vi.waitFor(() => expect(bench.$behind.get()).toEqual({}), 5000);
  bench.noteLate();
  expect(bench.$behind.get()).toEqual({});
});

test('the foam of a load is added by the worksheet that holds the plan', async () => {
  const { noteLate, enter, keep, $behind, $kept } = bench;
  enter('proportion.volume', { t: '500', u: 'L' });
  enter('mix.largestLoad', { t: '30', u: 'L' });
  enter('batch.volume', { t: '60', u: 'L' });
  keep('mix.foamVolume', { v: 1, from: batch.question, by: batch.id });
  noteLate();
  // A page of the other worksheet may be the next one open.
  expect($kept.get()['mix.loadFoam']).toMatchObject({ waits: true, by: batch.id });
  await vi.waitFor(() => expect($behind.get()).toEqual({}), 5000);
  expect($kept.get()['mix.loadFoam']).toMatchObject({ by: batch.id });
  expect(kept('mix.loadFoam')).toBeCloseTo(kept('mix.foamVolume')! / 2, 9);
});

test('results that no worksheet keeps are left out of another bench', async () => {
  const { swapBench } = await import('../../src/bench/swap-bench.ts');
  const made = { v: 20, from: 'How heavy is my foam?', by: 'nothing' };
  swapBench({ entries: { 'shapes.count': { t: '3' } }, kept: { 'foam.density': made } });
  await vi.waitFor(() => expect(bench.$behind.get()).toEqual({}), 5000);
  expect(bench.$kept.get()).toEqual({});
});

test('the results of another bench are worked out from its readings, not taken as kept', async () => {
  const { swapBench } = await import('../../src/bench/swap-bench.ts');
  bench.enter('shapes.count', { t: '2' });
  await vi.waitFor(() => expect(bench.$behind.get()).toEqual({}), 5000);
  const two = kept('batch.volume')!;
  swapBench({
    entries: { 'shapes.count': { t: '3' } },
    kept: { 'batch.volume': { v: 9, from: shapes.question, by: shapes.id } },
  });
  await vi.waitFor(() => expect(kept('batch.volume')).toBeCloseTo(1.5 * two, 9), 5000);
});
