import { afterAll, expect, test } from 'vitest';
import { blankRecord, RECORD_VERSION } from '../../../src/bench/records/record.ts';
import { stubDatabase, unstubDatabase } from './stub-database.ts';

const db = stubDatabase();
afterAll(unstubDatabase);

test('what is taken out says which batches are not in it', async () => {
  const { allToTake } = await import('../../../src/worksheets/live/records/take-all.ts');
  const record = blankRecord({ id: 'a', revision: 1 });
  await db.stores.batches.put(record as never);
  expect(await allToTake(true)).toEqual({ records: [record], photos: [], notes: [] });
  await db.stores.batches.put({ ...record, id: 'b', version: RECORD_VERSION + 1 } as never);
  await db.stores.batches.put({ ...record, id: 'c', name: 5 } as never);
  const { records, notes } = await allToTake(true);
  expect(records).toEqual([record]);
  expect(notes).toEqual([
    expect.stringMatching(/^Not in it: one batch of a later version/),
    expect.stringMatching(/^Not in it: one batch set aside as damaged/),
  ]);
});
