import { expect, test } from 'vitest';
import { readWorksheet } from '../../src/islands/engine/read.ts';
import type { NumberReading } from '../../src/islands/engine/reading.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { benchKey } from '../../src/islands/worksheet.ts';
import proportion from '../../src/worksheets/mix/proportion.tsx';

const read = (kept: object) =>
  readWorksheet(proportion, {}, { 'foam.density': kept as never }, speaker('metric'));
const from = 'How heavy is my foam?';

test('a waiting field names its worksheet, as does the list of missing values', () => {
  const reading = read({ waits: true, from, by: 'foam-density' });
  const field = reading.fields.foamDensity as NumberReading;
  expect(field).toMatchObject({ value: undefined, waits: 'foam-density' });
  expect(reading.problems).toEqual([
    { input: 'proportion-foamDensity', say: field.problem, waits: 'foam-density' },
  ]);
});

test('so does one that waits for a result kept without an id', () => {
  expect(read({ waits: true, from }).problems).toMatchObject([{ waits: '' }]);
});

test('an unreadable number does not count as waiting', () => {
  const entries = { [benchKey(proportion, 'waterCement')]: { t: 'two and a bit' } };
  const { problems } = readWorksheet(proportion, entries, {}, speaker('metric'));
  expect(problems).toHaveLength(1);
  expect(problems[0]).not.toHaveProperty('waits');
});
