import { expect, test } from 'vitest';
import { differences } from '../../../src/bench/records/differences.ts';
import { type BatchRecord, blankRecord, content } from '../../../src/bench/records/record.ts';

const record = blankRecord({ id: 'a' });
const rows = (a: BatchRecord, b: BatchRecord) => differences(a, b, () => 'as said');

test.each([
  ['a unit picked for an emptied field', { d: { metric: 'g' }, u: 'kg', s: 'metric' }],
  ['the unit of a ± that is gone', { pu: 'kg' }],
  ['an empty text', { t: '', u: 'kg' }],
] as const)('%s says nothing', (_, cement) => {
  const picked = { ...record, readings: { cement } };
  expect(content(picked)).toBe(content(record));
  expect(rows(picked, record)).toEqual([]);
});

test.each<[string, Partial<BatchRecord>, Partial<BatchRecord>]>([
  ['two photos of one caption', photo('p'), photo('q')],
  ['two corrections that read alike', corrected(640), corrected(640.01)],
])('%s differ, and the table says so', (_, a, b) => {
  expect(rows({ ...record, ...a }, { ...record, ...b })).toEqual([
    { of: 'A detail that reads the same', here: '', there: '' },
  ]);
});

function photo(id: string): Partial<BatchRecord> {
  return { photos: [{ id, caption: 'Edge' }] };
}
function corrected(weighed: number): Partial<BatchRecord> {
  return { corrections: [{ weighed }] };
}
