import { afterAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { keepLines, linesOf } from '../../../src/bench/records/log-lines.ts';
import { toStore } from '../../../src/bench/records/merge.ts';
import {
  type BatchRecord,
  blankRecord,
  newId,
  type Photo,
  RECORD_VERSION,
} from '../../../src/bench/records/record.ts';
import type { FakeDatabase } from './fake-database.ts';
import { FakeStorage } from './fake-storage.ts';
import { stubDatabase, unstubDatabase } from './stub-database.ts';

let db: FakeDatabase;
let store: typeof import('../../../src/bench/records/store.ts');
let bin: typeof import('../../../src/bench/records/bin.ts');

beforeEach(async () => {
  db = stubDatabase();
  store = await import('../../../src/bench/records/store.ts');
  bin = await import('../../../src/bench/records/bin.ts');
});
afterAll(unstubDatabase);

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

test('a record that is there was saved, also when its revision says that it never was', async () => {
  await db.stores.batches.put({ ...record, revision: 0 } as never);
  expect(await store.readRecord('a')).toEqual({ is: 'there', record });
  expect((await store.listRecords()).records).toEqual([record]);
  // Not over it as if it were new.
  expect(await store.saveRecord({ ...record, revision: 0 })).toMatchObject({ ok: false });
  expect(await store.saveRecord(record)).toMatchObject({ ok: true, record: { revision: 2 } });
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
    expect((await bin.listAside()).map(({ id }) => id)).toEqual(['b']);
  });

  test.each(['batches', 'aside'] as const)(
    'opens in a browser that will not write into its %s',
    async (name) => {
      for (const row of [old, { ...damaged, id: 'b' }]) await db.stores.batches.put(row as never);
      db.stores[name].put = () => Promise.reject(new DOMException('', 'AbortError'));
      // What was not put there is not said to be set aside.
      expect(await store.listRecords()).toEqual({ records: [record], damaged: [], newer: 0 });
    },
  );

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

describe('a file that is brought in', () => {
  const theirs = { ...record, notes: 'of the file' };
  const look = async () => {
    const { against } = await import('../../../src/worksheets/live/records/record-coming.ts');
    const file = { batches: [theirs], photos: [], refused: [] };
    return against({ name: '', file, bench: undefined });
  };
  const take = async (coming: Awaited<ReturnType<typeof look>>) => {
    const { bringIn } = await import('../../../src/worksheets/live/records/record-coming.ts');
    return bringIn(
      coming,
      toStore(coming.plan, () => 'take', newId),
    );
  };

  test('takes the place of what it was held against', async () => {
    await db.stores.batches.put(record as never);
    expect(await take(await look())).toEqual({ ok: true });
    expect(await batches()).toEqual([{ ...theirs, revision: 2 }]);
  });

  test.each<[string, BatchRecord | undefined]>([
    ['saved', record],
    ['begun', undefined],
  ])('never of what another tab has %s since: that is shown', async (_, here) => {
    if (here) await db.stores.batches.put(here as never);
    const coming = await look();
    const typed = { ...record, notes: 'typed in tab 2' };
    expect(await store.saveRecord({ ...typed, revision: here ? 1 : 0 })).toMatchObject({
      ok: true,
    });
    const put = await take(coming);
    expect(put).toMatchObject({
      ok: false,
      say: expect.stringMatching(/^Nothing was stored.*“Slabs”.*changed in another tab/),
      anew: { plan: [{ what: 'changed', here: { notes: 'typed in tab 2' } }] },
    });
    expect(await batches()).toMatchObject([{ notes: 'typed in tab 2' }]);
    // Looked at again, it may be taken.
    expect(put.ok || (await take(put.anew!))).toEqual({ ok: true });
    expect(await batches()).toMatchObject([{ notes: 'of the file', revision: here ? 3 : 2 }]);
  });

  test('does not bring back what another tab has removed since', async () => {
    await db.stores.batches.put(record as never);
    const coming = await look();
    await bin.removeRecords(['a']);
    expect(await take(coming)).toMatchObject({ ok: false, anew: { plan: [{ what: 'new' }] } });
    expect(await batches()).toEqual([]);
  });

  test('is stored as saved, also when it never was before it was taken out', async () => {
    expect(await store.putRecords([{ ...record, revision: 0 }], [])).toEqual({ ok: true });
    expect(await batches()).toEqual([record]);
    // What another tab does to it can be told from it.
    expect(await store.saveRecord({ ...record, revision: 0 })).toMatchObject({ ok: false });
  });

  test('of the last revision there is can be saved, and taken again', async () => {
    const last = { ...record, revision: 1e9 };
    expect(await store.putRecords([last], [])).toEqual({ ok: true });
    expect(await take(await look())).toEqual({ ok: true });
    await store.putRecords([{ ...last, id: 'b' }], []);
    for (const { id } of [last, { id: 'b' }]) {
      const found = await store.readRecord(id);
      if (found.is !== 'there') throw new Error(found.is);
      const { record: here } = found;
      const saved = await store.saveRecord({ ...here, notes: 'more' });
      expect(saved).toMatchObject({ ok: true, record: { notes: 'more' } });
      // What another tab has of it is of another revision still.
      expect(await store.saveRecord(here)).toMatchObject({ because: 'conflict' });
    }
  });

  test('is new only where nothing is, not even what was never saved again', async () => {
    await db.stores.batches.put({ ...record, revision: 0 } as never);
    expect(await store.putRecords([theirs], [])).toMatchObject({ ok: false, moved: true });
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

  describe('that a batch names no more', () => {
    const named = { ...record, photos: [{ id: 'p1', caption: '' }] };
    const ids = async () => (await store.photosOf('a')).map(({ id }) => id);
    beforeEach(() => db.stores.batches.put(named as never));

    test('go when it is stored without them', async () => {
      await store.putRecords([], [photo('p2', 'a')]);
      expect(await store.saveRecord({ ...named, photos: [] })).toMatchObject({ ok: true });
      // One just put there is named by the next save.
      expect(await ids()).toEqual(['p2']);
    });

    test('stay while it is not, for another tab’s version to be taken', async () => {
      const { Editor } = await import('../../../src/bench/records/editor.ts');
      const editor = new Editor(named, () => {});
      await store.saveRecord({ ...named, notes: 'theirs' });
      editor.change({ photos: [] });
      await editor.store();
      expect(editor.state.is).toBe('conflict');
      await editor.takeTheirs();
      expect(editor.record.photos).toEqual(named.photos);
      expect(await ids()).toEqual(['p1']);
    });

    test('stay when they are another batch’s', async () => {
      await db.stores.photos.put(photo('p1', 'b') as never);
      expect(await store.saveRecord({ ...named, photos: [] })).toMatchObject({ ok: true });
      expect(await store.photosOf('b')).toEqual([photo('p1', 'b')]);
    });
  });

  test('of a copy that are not here, or have no room, leave their words', async () => {
    const words = {
      ...record,
      photos: [...'12'].map((n) => ({ id: `p${n}`, caption: `No ${n}` })),
    };
    const notes = [...'12'].map((n) => ({ id: `c-${n}`, caption: `No ${n}` }));
    expect(await store.doublePhotos(words, 'c')).toEqual(notes);
    expect(await store.photosOf('c')).toEqual([photo('c-1', 'c')]);
    db.stores.photos.put = () => Promise.reject(new DOMException('', 'QuotaExceededError'));
    expect(await store.doublePhotos(words, 'd')).toMatchObject([
      { caption: 'No 1' },
      { caption: 'No 2' },
    ]);
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
      if (where === 'in the bin') await bin.removeRecords(['a']);
      const { against } = await import('../../../src/worksheets/live/records/record-coming.ts');
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
      if (where === 'in the bin') await bin.putBack(['a']);
      expect(await store.photosOf('a')).toEqual([photo('p1', 'a')]);
      const { coming } = await bringIn();
      expect(coming.plan.map(({ what }) => what)).toEqual(['same']);
      expect([...coming.photosHere].sort()).toEqual(['a/p1', 'b/b-p1-1']);
    },
  );
});

describe('the bin', () => {
  const pictured = { ...record, photos: [{ id: 'p1', caption: 'Edge' }] };
  const full = () => Promise.reject(new DOMException('', 'QuotaExceededError'));
  const put = async () => {
    await store.putRecords([pictured], [photo('p1', 'a')]);
    expect(await bin.removeRecords(['a'])).toMatchObject({ ok: true });
  };

  test('a batch that is saved again after it was removed has its photos', async () => {
    await put();
    expect(await store.allPhotos()).toEqual([]);
    const again = { ...pictured, revision: 0, notes: 'more' };
    expect(await store.saveRecord(again)).toMatchObject({ ok: true });
    expect(await store.photosOf('a')).toEqual([photo('p1', 'a')]);
    expect(await bin.listBin()).toMatchObject([{ id: 'a', record: { notes: '' } }]);
  });

  test('but no photo that it names no more', async () => {
    await put();
    await store.saveRecord({ ...record, revision: 0 });
    expect(await store.allPhotos()).toEqual([]);
  });

  test('a batch that is in the list again gets back only what it has lost', async () => {
    await put();
    await db.stores.batches.put({ ...pictured, notes: 'here' });
    const lost = { record: { name: 'Slabs' }, is: 'here', photos: 1 };
    expect(await bin.putBack(['a'])).toMatchObject({ ok: true, value: [lost] });
    expect(await batches()).toMatchObject([{ notes: 'here' }]);
    expect(await store.photosOf('a')).toEqual([photo('p1', 'a')]);
    expect(await bin.putBack(['a'])).toMatchObject({ value: [{ is: 'here', photos: 0 }] });
  });

  test('what it has no more is said, and the rest comes back', async () => {
    await put();
    expect(await bin.putBack(['a', 'b'])).toMatchObject({
      value: [
        { is: 'back', photos: 0 },
        { is: 'gone', photos: 0 },
      ],
    });
    expect(await batches()).toEqual([pictured]);
    expect(await store.photosOf('a')).toEqual([photo('p1', 'a')]);
    expect(await bin.listBin()).toEqual([]);
  });

  describe('that holds one of a batch already', () => {
    test('keeps it beside the next, and gives back either', async () => {
      await put();
      await store.putRecords([{ ...record, notes: 'older' }], []);
      await bin.removeRecords(['a']);
      const held = await bin.listBin();
      expect(held.map(({ record: { notes }, photos }) => [notes, photos.length]).sort()).toEqual([
        ['', 1],
        ['older', 0],
      ]);
      const first = held.find(({ photos }) => photos.length === 1)!;
      expect(await bin.putBack(['a'])).toMatchObject({ value: [{ is: 'back' }] });
      expect(await batches()).toMatchObject([{ notes: 'older' }]);
      expect(await bin.putBack([first.id])).toMatchObject({ value: [{ is: 'here' }] });
      await bin.removeRecords(['a']);
      expect(await bin.putBack([first.id])).toMatchObject({ value: [{ is: 'back' }] });
      expect(await batches()).toEqual([pictured]);
      expect(await store.photosOf('a')).toEqual([photo('p1', 'a')]);
      expect(await bin.listBin()).toMatchObject([{ id: 'a', record: { notes: 'older' } }]);
    });

    test('that says the same joins their photos', async () => {
      await put();
      await store.putRecords([pictured], []);
      await bin.removeRecords(['a']);
      expect(await bin.listBin()).toMatchObject([{ id: 'a', photos: [{ id: 'p1' }] }]);
    });
  });

  test('emptied, it is empty', async () => {
    await put();
    expect(await bin.emptyBin()).toMatchObject({ ok: true });
    expect(await bin.putBack(['a'])).toMatchObject({ value: [{ is: 'gone' }] });
  });

  test('emptied, nothing that was typed into its batches stays either', async () => {
    vi.stubGlobal('localStorage', new FakeStorage());
    await put();
    for (const id of ['a', 'here']) keepLines(id, '0 18.5');
    await store.putRecords([{ ...record, id: 'here' }], []);
    await bin.emptyBin();
    expect([linesOf('a'), linesOf('here')]).toEqual(['', '0 18.5']);
    vi.unstubAllGlobals();
  });

  test('without room is told apart, and passed by when asked', async () => {
    await store.putRecords([pictured], [photo('p1', 'a')]);
    db.stores.bin.put = full;
    const refused = { ok: false, full: true, say: expect.stringContaining('no room') };
    expect(await bin.removeRecords(['a'])).toEqual(refused);
    await store.putRecords([pictured], [photo('p1', 'a')]);
    expect(await bin.removeRecords(['a'], true)).toMatchObject({ ok: true });
    expect([...(await batches()), ...(await store.allPhotos())]).toEqual([]);
  });

  test('what the browser will not do is said, whatever is asked of the bin', async () => {
    db.transaction = () => {
      throw new DOMException('', 'InvalidStateError');
    };
    db.clear = () => Promise.reject(new DOMException('', 'InvalidStateError'));
    for (const asked of [
      bin.removeRecords(['a']),
      bin.putBack(['a']),
      bin.emptyBin(),
      bin.dropAside(),
      store.removePhoto('p1', 'a'),
    ])
      expect(await asked).toEqual({
        ok: false,
        full: false,
        say: expect.stringContaining('storage is off'),
      });
  });
});
