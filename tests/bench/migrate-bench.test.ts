import { describe, expect, test } from 'vitest';
import { fromFragment } from '../../src/bench/link.ts';
import {
  BENCH_VERSION,
  bringUp,
  type Laid,
  renaming,
  STEPS,
  type Step,
} from '../../src/bench/migrate-bench.ts';
import { FakeStorage } from './records/fake-storage.ts';

/** Two versions that never were: the first renames, the second tells a field apart from its twin. */
const renamed = renaming({
  keys: { 'tub.tare': 'bucket.tare', 'tub.use': 'mix.use', 'tub.full': 'bucket.full' },
  options: { 'mix.use': { pot: 'planter' } },
  sheets: { tub: 'weigh' },
});
const split: Step = (laid) => ({
  ...laid,
  bench: { ...laid.bench, 'foam.tare': laid.bench['bucket.tare'] },
});
const steps = [renamed, split];

const tare = { t: '0.85', u: 'kg' };
const full = { v: 2.57, from: 'What does it weigh?', by: 'tub' };
const older: Laid = {
  bench: { 'tub.tare': tare, 'tub.use': { t: 'pot' } },
  kept: { 'tub.full': full },
};
const newer = {
  bench: { 'bucket.tare': tare, 'mix.use': { t: 'planter' }, 'foam.tare': tare },
  kept: { 'bucket.full': { ...full, by: 'weigh' } },
};

function storeWith(values: Readonly<Record<string, string>>): Storage {
  const store = new FakeStorage();
  for (const [key, text] of Object.entries(values)) store.setItem(key, text);
  return store as unknown as Storage;
}
const inStore = (store: Storage) =>
  Object.fromEntries(Object.keys(store).map((key) => [key, store.getItem(key)]));

test('the version is one more than the number of migration steps', () => {
  expect(BENCH_VERSION).toBe(STEPS.length + 1);
});

describe('what an earlier version stored', () => {
  test('is found under the present names, and no longer under the old ones', () => {
    const store = storeWith({
      'suds.bench.1.tub.tare': JSON.stringify(tare),
      'suds.bench.1.tub.use': '{"t":"pot"}',
      'suds.kept.1.tub.full': JSON.stringify(full),
      'suds.used.1.tub': 'yes',
      'suds.run.1': '{}',
    });
    bringUp(store, steps);
    expect(inStore(store)).toEqual({
      'suds.bench.3.bucket.tare': JSON.stringify(tare),
      'suds.bench.3.mix.use': '{"t":"planter"}',
      'suds.bench.3.foam.tare': JSON.stringify(tare),
      'suds.kept.3.bucket.full': JSON.stringify(newer.kept['bucket.full']),
      'suds.used.3.weigh': 'yes',
      'suds.run.1': '{}',
    });
  });

  test('passes only the steps after its version, none for the present or a later one', () => {
    const store = storeWith({
      'suds.bench.2.bucket.tare': JSON.stringify(tare),
      'suds.bench.3.mix.use': '{"t":"pot"}',
      'suds.bench.4.mix.use': '{"of":"tomorrow"}',
    });
    bringUp(store, steps);
    expect(inStore(store)).toEqual({
      'suds.bench.3.bucket.tare': JSON.stringify(tare),
      'suds.bench.3.foam.tare': JSON.stringify(tare),
      'suds.bench.3.mix.use': '{"t":"pot"}',
      'suds.bench.4.mix.use': '{"of":"tomorrow"}',
    });
  });

  test('the value of the latest version counts, whoever wrote last', () => {
    const store = storeWith({
      'suds.bench.1.tub.use': '{"t":"old"}',
      'suds.bench.2.mix.use': '{"t":"later"}',
      'suds.bench.1.tub.full': '{"t":"old"}',
      'suds.bench.3.bucket.full': '{"t":"now"}',
    });
    bringUp(store, steps);
    expect(inStore(store)).toMatchObject({
      'suds.bench.3.mix.use': '{"t":"later"}',
      'suds.bench.3.bucket.full': '{"t":"now"}',
    });
  });

  test('damaged values stay as they were', () => {
    const store = storeWith({
      'suds.bench.1.tub.tare': 'not json',
      'suds.bench.1.a': 'null',
      'suds.bench.1.b': '"c"',
    });
    bringUp(store, [renamed]);
    expect(inStore(store)).toEqual({
      'suds.bench.2.bucket.tare': 'not json',
      'suds.bench.2.a': 'null',
      'suds.bench.2.b': '"c"',
    });
  });
});

test('a step that fails on what a version stored leaves all of it in place', () => {
  const values = {
    'suds.bench.1.tub.tare': JSON.stringify(tare),
    'suds.bench.1.tub.use': 'not json',
  };
  const store = storeWith({ ...values, 'suds.bench.2.mix.use': '{"t":"pot"}' });
  const failing: Step = () => {
    throw new TypeError('no such entry');
  };
  bringUp(store, [failing, renaming({ keys: { 'mix.use': 'use' } })]);
  expect(inStore(store)).toEqual({ ...values, 'suds.bench.3.use': '{"t":"pot"}' });
});

test('names that every object has are not taken for renamed ones', () => {
  const laid = {
    bench: { toString: { t: '1' }, 'tub.use': { t: 'toString' }, other: { t: 'valueOf' } },
    kept: { valueOf: { ...full, by: 'hasOwnProperty' } },
  };
  expect(renamed(laid)).toEqual({
    bench: { toString: { t: '1' }, 'mix.use': { t: 'toString' }, other: { t: 'valueOf' } },
    kept: laid.kept,
  });
});

test.each([1, 2, 3])('a link of version %i is read in this one', (version) => {
  const { bench, kept } = [older, renamed(older), newer][version - 1]!;
  const body = Buffer.from(JSON.stringify({ entries: bench, kept })).toString('base64url');
  expect(fromFragment(`#batch=${version}.${body}`, steps)).toEqual({
    ok: true,
    entries: newer.bench,
    kept: newer.kept,
    units: 'metric',
  });
});

test.each([0, 4])('a link of version %i, unknown or later, is refused', (version) => {
  expect(fromFragment(`#batch=${version}.e30`, steps)).toMatchObject({
    ok: false,
    why: expect.stringContaining(`another version (${version})`),
  });
});

test('a batch with its bench passes a migration step', () => {
  const batch = { ...older, id: 'b1', notes: 'x' };
  expect(renamed(batch)).toEqual({ ...renamed(older), id: 'b1', notes: 'x' });
});
