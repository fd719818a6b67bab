import { beforeEach, describe, expect, test, vi } from 'vitest';
import { LIMITS } from '../../../src/bench/records/limits.ts';
import { blankRecord, RECORD_VERSION } from '../../../src/bench/records/record.ts';
import { withDrafts } from '../../../src/bench/records/recover.ts';
import { FakeStorage } from './fake-storage.ts';

let store: Storage;
/** The module as another tab has it. */
const newTab = async () => {
  vi.resetModules();
  return import('../../../src/bench/records/drafts.ts');
};
const record = blankRecord({ id: 'a', changed: '2025-04-05T10:00:00.000Z' });

beforeEach(() => {
  store = new FakeStorage() as unknown as Storage;
});

test('two tabs keep a draft each, and drop only their own', async () => {
  const [first, second] = [await newTab(), await newTab()];
  first.keepDraft({ ...record, notes: 'first' }, store);
  second.keepDraft({ ...record, notes: 'second', changed: '2025-04-05T10:00:01.000Z' }, store);
  expect(second.draftsLeft(store).map((left) => left.record.notes)).toEqual(['first', 'second']);
  first.dropDraft('a', undefined, store);
  expect(second.draftsLeft(store).map((left) => left.record.notes)).toEqual(['second']);
});

test('a draft stays when more was typed after the save was sent', async () => {
  const { keepDraft, dropDraft, draftsLeft } = await newTab();
  keepDraft({ ...record, notes: 'more' }, store);
  dropDraft('a', { ...record, notes: 'less' }, store);
  expect(draftsLeft(store).length).toBe(1);
  dropDraft('a', { ...record, notes: 'more' }, store);
  expect(draftsLeft(store)).toEqual([]);
});

test('a draft of a dead tab can be dropped by another', async () => {
  (await newTab()).keepDraft(record, store);
  const [left] = (await newTab()).draftsLeft(store);
  left!.drop();
  expect(Object.keys(store)).toEqual([]);
});

test.each(['this', 'another'])('a draft of %s tab is taken over by this one', async (whose) => {
  const own = await newTab();
  (whose === 'this' ? own : await newTab()).keepDraft(record, store);
  expect(own.takeOver(own.draftsLeft(store)[0]!, store)).toBe(true);
  expect(own.draftsLeft(store).map((left) => left.record)).toEqual([record]);
  own.dropDraft('a', undefined, store);
  expect(own.draftsLeft(store)).toEqual([]);
});

test('a draft that was typed in since it was read is not dropped', async () => {
  const { keepDraft, draftsLeft } = await newTab();
  keepDraft(record, store);
  const [left] = draftsLeft(store);
  keepDraft({ ...record, notes: 'more' }, store);
  left!.drop();
  expect(draftsLeft(store)).toMatchObject([{ record: { notes: 'more' } }]);
});

test('an older draft goes with a later save, when the later draft found no room', async () => {
  const { keepDraft, dropDraft, draftsLeft } = await newTab();
  keepDraft({ ...record, notes: 'first' }, store);
  (store as unknown as FakeStorage).hold(JSON.stringify(record).length + 20);
  const later = { ...record, notes: 'x'.repeat(100), changed: '2025-04-05T10:00:01.000Z' };
  expect(keepDraft(later, store)).toBe(false);
  // Nothing is stored yet: what is there is better than nothing.
  expect(draftsLeft(store)).toMatchObject([{ record: { notes: 'first' } }]);
  dropDraft('a', later, store);
  expect(draftsLeft(store)).toEqual([]);
});

test('one that holds too much opens as it was typed', async () => {
  const { keepDraft, draftsLeft, draftsUnread } = await newTab();
  const over = {
    ...record,
    notes: 'x'.repeat(LIMITS.notes + 1),
    photos: Array.from({ length: LIMITS.photos + 1 }, (_, i) => ({ id: `p${i}`, caption: '' })),
    corrections: Array(LIMITS.corrections + 1).fill({ weighed: 640 }),
  };
  keepDraft(over, store);
  expect(draftsLeft(store).map((left) => left.record)).toEqual([over]);
  expect(draftsUnread(store)).toEqual([]);
});

const unfit = { ...record, name: 5, notes: 'typed' };
test.each([
  ['cannot be opened', JSON.stringify(unfit), { why: 'name is no string', raw: unfit }],
  ['is no JSON', '{"notes":"typed', { why: 'it is no record', raw: '{"notes":"typed' }],
])('one that %s is offered as it was found', async (_, text, found) => {
  const { draftsLeft, draftsUnread } = await newTab();
  store.setItem('suds.draft.1.a.x', text);
  expect(draftsLeft(store)).toEqual([]);
  const [left] = draftsUnread(store);
  expect(left!.aside).toEqual({ id: 'a', ...found });
  left!.drop();
  expect(Object.keys(store)).toEqual([]);
});

test('one of a later version is left where it is', async () => {
  const { draftsLeft, draftsUnread } = await newTab();
  store.setItem('suds.draft.1.a.x', JSON.stringify({ ...record, version: RECORD_VERSION + 1 }));
  expect([...draftsLeft(store), ...draftsUnread(store)]).toEqual([]);
  expect(Object.keys(store).length).toBe(1);
});

test('a browser that refuses is told from one that keeps', async () => {
  const { keepDraft } = await newTab();
  const full = {
    setItem: () => {
      throw new DOMException('full', 'QuotaExceededError');
    },
  };
  expect(keepDraft(record, full as unknown as Storage)).toBe(false);
  expect(keepDraft(record, store)).toBe(true);
});

describe('a file of batches', () => {
  const stored = { ...record, revision: 3, name: 'Slabs', notes: 'stored' };
  const draft = (over: object) => ({ ...stored, notes: 'typed', ...over });

  test('holds what is typed and not stored, in place of what it was typed into', () => {
    const typed = draft({});
    const other = { ...stored, id: 'b' };
    expect(withDrafts([stored, other], [typed])).toEqual({ records: [typed, other], unstored: 1 });
    expect(withDrafts([], [typed])).toEqual({ records: [typed], unstored: 1 });
    expect(withDrafts([stored], [{ ...stored, changed: '' }])).toEqual({
      records: [stored],
      unstored: 0,
    });
  });

  test.each([
    ['saved since', [stored], [draft({ revision: 2, photos: [{ id: 'p', caption: '' }] })]],
    ['typed into in two tabs', [stored], [draft({ notes: 'first' }), draft({})]],
    ['never stored', [], [draft({ notes: 'first' }), draft({})]],
  ])('holds both of a batch that was %s, each under an id of its own', (_, records, drafts) => {
    const all = withDrafts(records, drafts);
    expect(all.unstored).toBe(drafts.length);
    expect(all.records.length).toBe(2);
    const [mine, beside] = all.records;
    expect(mine).toEqual(drafts.length === 2 ? drafts[1] : stored);
    expect(beside).toMatchObject({ name: 'Slabs (not stored)', photos: [], revision: 0 });
    expect(beside!.notes).toBe(drafts[0]!.notes);
    expect(beside!.id).not.toBe(mine!.id);
  });

  test('keeps what was written under photos that are the other’s', () => {
    const photos = [{ id: 'p', caption: 'crack at the corner' }];
    const beside = withDrafts([stored], [draft({ revision: 2, photos })]).records[1]!;
    expect(beside.photos).toEqual([{ id: `${beside.id}-1`, caption: 'crack at the corner' }]);
  });
});
