import { expect, test } from 'vitest';
import type { Entry } from '../../src/bench/entries.ts';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import type { NumberReading, RowsReading } from '../../src/islands/engine/reading.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { bucketsFields } from '../../src/worksheets/mix/buckets-fields.ts';

const sheet = { id: 'buckets', fields: { buckets: bucketsFields.buckets } };
const read = (rows?: Entry['rows']) =>
  readWorksheet(sheet as never, rows ? { 'buckets.buckets': { rows } } : {}, {}, speaker('metric'));
const fulls = (rows?: Entry['rows']) =>
  (read(rows).fields.buckets as RowsReading).rows.map(({ full }) => {
    const { text, origin } = full as NumberReading;
    return `${text} ${origin}`;
  });

test('a moved row keeps the defaults of its own row of the example', () => {
  const example = fulls();
  const [, second, third] = example;
  expect(new Set(example).size).toBe(example.length);
  const moved = [{ like: { t: '1' } }, { like: { t: '2' } }, { like: { t: '2' } }];
  expect(fulls(moved)).toEqual([second, third, third]);
  expect(read(moved)).toMatchObject({ own: true, onExample: true });
});

test('typing in one row does not mark the others as the reader’s', () => {
  const full: Entry = { t: '12.34', u: 'kg', s: 'metric' };
  expect(fulls([{ like: { t: '2' }, full }, { like: { t: '1' } }])).toEqual([
    '12.34 yours',
    fulls()[1],
  ]);
});
