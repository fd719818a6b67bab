import { afterAll, beforeEach, expect, test } from 'vitest';
import { demoBatches } from '../../../src/worksheets/live/records/demo-batches.ts';
import { stubDatabase, unstubDatabase } from '../../bench/records/stub-database.ts';

const own = demoBatches().map(({ invented: _, ...record }) => record);
let store: typeof import('../../../src/bench/records/store.ts');
let learned: typeof import('../../../src/bench/learned.ts');
let bench: typeof import('../../../src/bench/store.ts');
let learnAnew: typeof import('../../../src/worksheets/live/records/learn-anew.ts').learnAnew;
let refuse: boolean;

beforeEach(async () => {
  refuse = false;
  stubDatabase(async (db) => {
    if (refuse) throw new Error('no');
    return db;
  });
  store = await import('../../../src/bench/records/store.ts');
  learned = await import('../../../src/bench/learned.ts');
  bench = await import('../../../src/bench/store.ts');
  ({ learnAnew } = await import('../../../src/worksheets/live/records/learn-anew.ts'));
});
afterAll(unstubDatabase);

const settling = () => learned.$learned.get().values['form.settling'];

test('a batch that changes leaves what is learned behind, and it is learned anew', async () => {
  await store.putRecords(own.slice(0, 2), []);
  expect(bench.$unlearned.get()).toBeTruthy();
  await learnAnew();
  expect(bench.$unlearned.get()).toBeUndefined();
  const before = settling()!;
  expect(before.n).toBe(2);

  const sunk = { t: '6', u: 'mm', s: 'metric' } as const;
  await store.saveRecord({ ...own[0]!, readings: { ...own[0]!.readings, sunk } });
  expect(bench.$unlearned.get()).toBeTruthy();
  expect(settling()).toEqual(before);
  await learnAnew();
  expect(settling()!.v).toBeGreaterThan(1.3 * before.v);
});

test('a change during learning stays marked for learning', async () => {
  await store.putRecords(own.slice(0, 2), []);
  const learning = learnAnew();
  await store.putRecords(own.slice(2, 3), []);
  await learning;
  expect(bench.$unlearned.get()).toBeTruthy();
  await learnAnew();
  expect(settling()!.n).toBe(3);
});

test('what a page did not learn before it was left, the next page learns', async () => {
  await store.putRecords(own.slice(0, 2), []);
  const learning = learnAnew();
  // Nothing runs on in a page that is left: what it kept by now is all there is.
  expect(bench.$unlearned.get()).toBeTruthy();
  await learning;
  expect(bench.$unlearned.get()).toBeUndefined();
});

test('a record that cannot be read now is learned from later', async () => {
  bench.noteUnlearned();
  refuse = true;
  await learnAnew();
  expect(bench.$unlearned.get()).toBeTruthy();
});
