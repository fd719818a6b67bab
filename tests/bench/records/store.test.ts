import { afterAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { toStore } from '../../../src/bench/records/merge.ts';
import {
  type BatchRecord,
  blankRecord,
  newId,
  type Photo,
  RECORD_VERSION,
} from '../../../src/bench/records/record.ts';
import { FakeDatabase } from './fake-database.ts';

let db: FakeDatabase;
let store: typeof import('../../../src/bench/records/store.ts');

beforeEach(async () => {
  db = new FakeDatabase();
  vi.resetModules();
  vi.doMock('idb', () => ({ openDB: async () => db }));
  vi.stubGlobal(
    'BroadcastChannel',
    class {
      postMessage() {}
    },
  );
  store = await import('../../../src/bench/records/store.ts');
});
afterAll(() => {
  vi.doUnmock('idb');
  vi.unstubAllGlobals();
  vi.resetModules();
});

const record = blankRecord({ id: 'a', name: 'Slabs', revision: 1 });
const later = { ...record, version: RECORD_VERSION + 1, more: true };
const damaged = { ...record, name: 5 };
const photo = (id: string, batch: string): Photo => ({
  ...{ id, batch, width: 3, height: 2, data: '/9j/AA==' },
});
const batches = () => db.getAll('batches');

describe.each([
  ['of a later version', later, /later version.*Reload/],
  ['damaged', damaged, /cannot be read.*list of batches/],
])('a stored record that is %s', (_, there, words) => {
  beforeEach(() => db.stores.batches.put(there as never));

  test('is not taken for removed, and is not overwritten, whatever its revision', async () => {
    expect(await store.readRecord('a')).toEqual({
      is: 'unreadable',
      say: expect.stringMatching(words),
    });
    for (const revision of [0, 1, 4])
      expect(await store.saveRecord({ ...record, revision })).toEqual({
        ok: false,
        because: 'unreadable',
        say: expect.stringMatching(words),
      });
    expect(await batches()).toEqual([there]);
  });

  test('stays when a file brings its batch in, and nothing else of the file comes', async () => {
    const put = await store.putRecords([{ ...record, id: 'b' }, record], [photo('p1', 'b')]);
    expect(put).toEqual({ ok: false, say: expect.stringMatching(words) });
    expect(put).toMatchObject({ say: expect.stringContaining('“Slabs”') });
    expect(await batches()).toEqual([there]);
    expect(await db.getAll('photos')).toEqual([]);
  });
});

describe('what could not be opened again', () => {
  test.each<[string, Partial<BatchRecord>, RegExp]>([
    ['a year of five digits', { date: '20266-11-28' }, /date .*20266/],
    ['a day no month has', { date: '2026-02-30' }, /no day/],
    ['a reading without end', { readings: { cement: { t: '1'.repeat(4001) } } }, /“Cement” .*4000/],
    ['a ± without end', { readings: { full: { t: '1', p: '1'.repeat(201) } } }, /“Bucket, .*200/],
    ['a bench without end', { bench: { a: { t: '1'.repeat(4001) } } }, /bench\.a\.t .*4000/],
  ])('%s is refused and named, and what is there stays', async (_, spoilt, words) => {
    expect(await store.putRecords([record], [])).toEqual({ ok: true });
    const spoiled = { ...record, ...spoilt };
    expect(await store.saveRecord(spoiled)).toEqual({
      ok: false,
      because: 'refused',
      say: expect.stringMatching(words),
    });
    const put = await store.putRecords([{ ...record, id: 'b' }, spoiled], [photo('p1', 'b')]);
    expect(put).toEqual({ ok: false, say: expect.stringMatching(words) });
    expect(await batches()).toEqual([record]);
    expect((await store.listRecords()).damaged).toEqual([]);
  });
});

describe('a record that is there', () => {
  test('is stored over its own revision only', async () => {
    expect(await store.saveRecord({ ...record, revision: 0 })).toMatchObject({ ok: true });
    const saved = await store.saveRecord({ ...record, revision: 3, notes: 'x' });
    expect(saved).toMatchObject({ because: 'conflict', theirs: { revision: 1, notes: '' } });
    expect(await store.saveRecord({ ...record, notes: 'x' })).toMatchObject({ ok: true });
    expect(await store.readRecord('a')).toMatchObject({
      is: 'there',
      record: { revision: 2, notes: 'x' },
    });
  });

  test('removed, it conflicts with nothing', async () => {
    expect(await store.readRecord('a')).toEqual({ is: 'none' });
    expect(await store.saveRecord(record)).toEqual({
      ok: false,
      because: 'conflict',
      theirs: undefined,
    });
  });
});

describe('the list', () => {
  const { corrections: _, ...old } = { ...record, version: 1 };

  test('brings records up to date, sets damaged ones aside and leaves later ones', async () => {
    for (const row of [old, { ...damaged, id: 'b' }, { ...later, id: 'c' }])
      await db.stores.batches.put(row as never);
    expect(await store.listRecords()).toEqual({
      records: [record],
      damaged: [{ id: 'b', why: 'name is no string', raw: { ...damaged, id: 'b' } }],
      newer: 1,
    });
    expect(await batches()).toEqual([record, { ...later, id: 'c' }]);
    expect((await store.listAside()).map(({ id }) => id)).toEqual(['b']);
  });

  test('does not put back what another tab has saved meanwhile', async () => {
    await db.stores.batches.put(old);
    const begin = db.transaction;
    db.transaction = (names) => {
      db.stores.batches.rows.set('a', { ...record, revision: 2, notes: 'theirs' } as never);
      return begin(names);
    };
    await store.listRecords();
    expect(await batches()).toMatchObject([{ revision: 2, notes: 'theirs' }]);
  });
});

describe('photos', () => {
  beforeEach(() => store.putRecords([record], [photo('p1', 'a')]));

  test('are replaced by their own batch, and never by another’s', async () => {
    const wider = { ...photo('p1', 'a'), width: 9 };
    expect(await store.putRecords([], [wider])).toEqual({ ok: true });
    const put = await store.putRecords([{ ...record, id: 'b' }], [photo('p1', 'b')]);
    expect(put).toEqual({ ok: false, say: expect.stringContaining('another batch’s photo') });
    expect(await store.allPhotos()).toEqual([wider]);
    expect((await batches()).map(({ id }) => id)).toEqual(['a']);
  });

  test('of two batches with one id, none is stored', async () => {
    const put = await store.putRecords([], [photo('p2', 'b'), photo('p2', 'c')]);
    expect(put.ok).toBe(false);
    expect((await store.allPhotos()).map(({ id }) => id)).toEqual(['p1']);
  });

  test('go with their own batch only', async () => {
    await store.removePhoto('p1', 'b');
    expect((await store.allPhotos()).length).toBe(1);
    await store.removePhoto('p1', 'a');
    expect(await store.allPhotos()).toEqual([]);
  });

  test.each(['here', 'in the bin'])(
    'brought in under a name that is taken %s, they come in under another, and once',
    async (where) => {
      if (where === 'in the bin') await store.removeRecords(['a']);
      const { against } = await import('../../../src/worksheets/shared/record-coming.ts');
      const named = { ...record, id: 'b', photos: [{ id: 'p1', caption: '' }] };
      const bringIn = async () => {
        const file = { batches: [named], photos: [photo('p1', 'b')], refused: [] };
        const coming = await against({ name: '', file, bench: undefined });
        return { coming, ...toStore(coming.plan, () => 'take', newId) };
      };
      const { records, photos } = await bringIn();
      expect(await store.putRecords(records, photos)).toEqual({ ok: true });
      expect(await store.photosOf('b')).toEqual([photo('b-p1-1', 'b')]);
      expect(await store.readRecord('b')).toMatchObject({
        record: { photos: [{ id: 'b-p1-1' }] },
      });
      if (where === 'in the bin') await store.putBack(['a']);
      expect(await store.photosOf('a')).toEqual([photo('p1', 'a')]);
      const { coming } = await bringIn();
      expect(coming.plan.map(({ what }) => what)).toEqual(['same']);
      expect([...coming.photosHere].sort()).toEqual(['a/p1', 'b/b-p1-1']);
    },
  );
});
