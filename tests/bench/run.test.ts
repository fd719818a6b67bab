import { setPersistentEngine } from '@nanostores/persistent';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Going, RunPlan } from '../../src/bench/run.ts';
import { FakeStorage } from './records/fake-storage.ts';

const plan: RunPlan = {
  ...{ cement: 13.57, water: 5.43, sand: 0, foamVolume: 0.025, wetDensity: 600 },
  ...{ baseDensity: 1950, foamDensity: 80, loads: 1, largestLoad: 0.04, example: false },
  ...{ binder: 14, other: [{ name: 'Fibre', mass: 0.05 }] },
};
const undo: Going['undo'] = {
  name: 'foamAdded',
  made: { weighed: 640.2, foam: 0.0025 },
  sum: { t: '4.5', u: 'L' },
  before: { t: '2' },
  full: { t: '13.65', u: 'kg' },
  out: { before: { t: '0.3', u: 'kg' }, wrote: { t: '2.3', u: 'kg' } },
};
const foam = { t: '2.45', u: 'kg', s: 'metric' } as const;
const foamIn = { tare: { t: '0.5', u: 'kg' }, vessel: { t: '10' } };
const foamMass = { t: '0.8', u: 'kg' };
const going: Going = {
  ...{ id: 'x', step: 2, begun: 1e12, stopped: true },
  ...{ undo, foam, foamMass, foamIn, plan, before: { name: 'One', vessel: foamIn, plan } },
};

let kept: Record<string, string>;
let hear: (event: Pick<StorageEvent, 'key' | 'newValue'>) => void;
/** The run as a tab has it that opens now, with something on its page that shows it. */
const open = async () => {
  vi.resetModules();
  await import('../../src/bench/store.ts');
  setPersistentEngine(kept, {
    addEventListener: (_, listener) => {
      hear = listener as never;
    },
    removeEventListener() {},
  });
  const { $going, $left, runInstead } = await import('../../src/bench/run.ts');
  const seen: (Going | undefined)[] = [];
  $going.subscribe((now) => seen.push(now));
  return { $going, $left, runInstead, seen };
};
const stored = async (value: unknown) => {
  kept['suds.run.1'] = JSON.stringify(value);
  return (await open()).$going.get();
};

beforeEach(() => {
  kept = {};
});
afterEach(() => setPersistentEngine({}, { addEventListener() {}, removeEventListener() {} }));

test('a run is there again after a reload, and gone when it is done', async () => {
  const { $going } = await open();
  $going.set(going);
  expect((await open()).seen).toEqual([going]);
  $going.set(undefined);
  expect(kept).toEqual({});
});

test('a run there is no room for is known, and no older step is taken for it', async () => {
  const { $going } = await open();
  const { forgiving } = await import('../../src/bench/storage.ts');
  const { isRunKept } = await import('../../src/bench/run.ts');
  const full = new FakeStorage();
  const store = full as unknown as Storage;
  setPersistentEngine(forgiving(store) as never, {
    addEventListener() {},
    removeEventListener() {},
  });
  $going.set({ id: 'x', step: 0 });
  expect(isRunKept(store)).toBe(true);
  full.hold(30);
  $going.set(going);
  expect($going.get()).toEqual(going);
  expect(isRunKept(store)).toBe(false);
  full.hold(1000);
  $going.set(going);
  expect(isRunKept(store)).toBe(true);
});

test('of one that is torn the sound parts stay', async () => {
  const { plan: _, ...planless } = going;
  for (const torn of [
    3,
    null,
    {},
    { ...plan, cement: null },
    { ...plan, largestLoad: '25' },
    { ...plan, forms: '9' },
    { ...plan, other: 0 },
    { ...plan, other: [{ name: 'Fibre', mass: '1' }] },
  ])
    expect(await stored({ ...going, plan: torn })).toEqual(planless);
  const { undo: __, ...sure } = going;
  const added = { name: 'foamAdded' };
  for (const torn of [
    ...[null, 3, {}, { name: 'cement' }],
    ...[
      { ...added, full: { t: 3 } },
      { ...added, sum: { t: 3 } },
      { ...added, out: { before: { t: 3 } } },
      { ...added, out: { wrote: { t: 3 } } },
    ],
  ])
    expect(await stored({ ...going, undo: torn })).toEqual(sure);
  const { foam: ___, ...unweighed } = going;
  for (const torn of [null, 3, { t: 3 }, { t: '2', kg: 2 }])
    expect(await stored({ ...going, foam: torn })).toEqual(unweighed);
  const { foamMass: _____, ...unmeasured } = going;
  for (const torn of [3, { t: 3 }])
    expect(await stored({ ...going, foamMass: torn })).toEqual(unmeasured);
  const { before, ...first } = going;
  for (const torn of [
    3,
    { ...before, name: 3 },
    { ...before, vessel: { tare: 3 } },
    { name: 'One' },
    { ...before, plan: 3 },
    { ...before, plan: { ...plan, cement: null } },
  ])
    expect(await stored({ ...going, before: torn })).toEqual(first);
  expect(await stored({ ...first, before: { name: 'One', vessel: {} } })).toEqual({
    ...first,
    before: { name: 'One', vessel: {} },
  });
  const { foamIn: ____, ...unpoured } = going;
  for (const torn of [null, 3, { tare: 3 }, { tare: { t: 3 } }, { full: { t: '3' } }])
    expect(await stored({ ...going, foamIn: torn })).toEqual(unpoured);
  for (const torn of [null, 3, {}, { id: 'x', step: -1 }, { id: 'x', step: 0.5 }, { step: 1 }])
    expect(await stored(torn)).toBeUndefined();
});

test('a step taken in another tab is taken in this one', async () => {
  kept['suds.run.1'] = JSON.stringify({ id: 'x', step: 1 });
  const { seen } = await open();
  hear({ key: 'suds.run.1', newValue: JSON.stringify(going) });
  expect(seen).toEqual([{ id: 'x', step: 1 }, going]);
  hear({ key: 'suds.run.1', newValue: null });
  expect(seen.at(-1)).toBeUndefined();
});

test('a batch that was stopped for another is left as it was, until it is gone on with', async () => {
  const first = await open();
  first.$going.set(going);
  first.runInstead({ id: 'y', step: 0 });
  const { $going, $left, runInstead } = await open();
  expect($going.get()).toEqual({ id: 'y', step: 0 });
  expect($left.get()).toEqual([going]);
  runInstead(going);
  expect($going.get()).toEqual(going);
  expect($left.get()).toEqual([{ id: 'y', step: 0 }]);
  // No more than are offered, the latest first.
  for (const id of ['a', 'b', 'c', 'd']) runInstead({ id, step: 0 });
  expect($left.get().map(({ id }) => id)).toEqual(['c', 'b', 'a']);
});

test('one that is among the left, as another tab had it, is there once', async () => {
  kept['suds.run.1'] = JSON.stringify(going);
  kept['suds.left.1'] = JSON.stringify([{ id: 'z', step: 1 }, going]);
  const { $left, runInstead } = await open();
  runInstead({ id: 'y', step: 0 });
  expect($left.get()).toEqual([going, { id: 'z', step: 1 }]);
});

test('of the batches that were left, a torn one is no loss to the others', async () => {
  kept['suds.left.1'] = JSON.stringify([null, 3, { id: 'x' }, { ...going, plan: 3 }]);
  const { plan: _, ...planless } = going;
  expect((await open()).$left.get()).toEqual([planless]);
  for (const torn of ['3', '{', 'null']) {
    kept['suds.left.1'] = torn;
    expect((await open()).$left.get()).toEqual([]);
  }
});
