import { afterAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { LIMITS } from '../../../src/bench/records/limits.ts';
import { blankRecord } from '../../../src/bench/records/record.ts';
import type { FakeDatabase } from './fake-database.ts';
import { FakeStorage } from './fake-storage.ts';
import { stubDatabase, unstubDatabase } from './stub-database.ts';

let db: FakeDatabase;
let storage: FakeStorage;
let Editor: typeof import('../../../src/bench/records/editor.ts').Editor;
let drafts: typeof import('../../../src/bench/records/drafts.ts');
let recover: typeof import('../../../src/bench/records/recover.ts');
let bin: typeof import('../../../src/bench/records/bin.ts');

beforeEach(async () => {
  db = stubDatabase();
  storage = new FakeStorage();
  vi.stubGlobal('localStorage', storage);
  ({ Editor } = await import('../../../src/bench/records/editor.ts'));
  drafts = await import('../../../src/bench/records/drafts.ts');
  recover = await import('../../../src/bench/records/recover.ts');
  bin = await import('../../../src/bench/records/bin.ts');
  await db.stores.batches.put(record as never);
});
afterAll(unstubDatabase);

const record = blankRecord({ id: 'a', name: 'Slabs', revision: 1 });
const LATER = Date.now() + 3_600_000;
/** Types into the record as an earlier tab did, and has it stored if it may be. */
const typed = async (change: Parameters<InstanceType<typeof Editor>['change']>[0]) => {
  const editor = new Editor(record, () => {});
  editor.change(change);
  await editor.store();
  return editor;
};

describe('what a tab has left', () => {
  test('is stored, once it is no longer typed in', async () => {
    drafts.keepDraft({ ...record, notes: 'typed' });
    expect(await recover.recoverDrafts(Date.parse(record.changed))).toEqual({
      recovered: 0,
      left: [],
    });
    expect(await recover.recoverDrafts(LATER)).toEqual({ recovered: 1, left: [] });
    expect(await db.getAll('batches')).toMatchObject([{ notes: 'typed', revision: 2 }]);
    expect(drafts.draftsLeft()).toEqual([]);
  });

  test('is stored by a clock that stands behind it', async () => {
    drafts.keepDraft({ ...record, notes: 'typed' });
    const before = Date.parse(record.changed) - 3_600_000;
    expect(await recover.recoverDrafts(before)).toEqual({ recovered: 1, left: [] });
  });

  test('and cannot be stored, because its batch was removed, is told of until it is thrown away', async () => {
    await db.stores.batches.put({ ...record, revision: 2, notes: 'theirs' } as never);
    expect((await typed({ notes: 'mine' })).state.is).toBe('conflict');
    await bin.removeRecords(['a']);
    const { recovered, left } = await recover.recoverDrafts(LATER);
    expect([recovered, left.map((one) => one.record.notes)]).toEqual([0, ['mine']]);
    left[0]!.drop();
    expect(await recover.recoverDrafts(LATER)).toEqual({ recovered: 0, left: [] });
  });

  test('and holds too much, is told of and comes back whole', async () => {
    const notes = 'x'.repeat(LIMITS.notes + 1);
    const refused = await typed({ notes });
    expect(refused.state).toMatchObject({ is: 'refused', say: expect.stringContaining('notes') });
    refused.change({ name: 'Slabs, renamed' });
    await refused.store();
    const { left } = await recover.recoverDrafts(LATER);
    expect(left.map((one) => one.record)).toEqual([refused.record]);
    // Shortened, it is stored with all that was typed since.
    const again = new Editor(left[0]!.record, () => {});
    again.change({ notes: 'short' });
    await again.store();
    expect(await db.getAll('batches')).toMatchObject([{ name: 'Slabs, renamed', notes: 'short' }]);
    expect(drafts.draftsLeft()).toEqual([]);
  });
});

test('an older draft does not outlive the save of a later one that found no room', async () => {
  const editor = new Editor(record, () => {});
  editor.change({ notes: 'first line' });
  storage.hold(JSON.stringify(editor.record).length + 50);
  const changed = Date.parse(editor.record.changed);
  while (Date.now() === changed) await new Promise((done) => setTimeout(done));
  editor.change({ notes: `first line, and ${'much more '.repeat(60)}` });
  expect(editor.drafted).toBe(false);
  await editor.store();
  expect(await db.getAll('batches')).toMatchObject([{ notes: editor.record.notes }]);
  expect(drafts.draftsLeft()).toEqual([]);
});
