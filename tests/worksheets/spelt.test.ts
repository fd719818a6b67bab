import { expect, test } from 'vitest';
import type { Entry } from '../../src/bench/entries.ts';
import { readNumber } from '../../src/islands/engine/read-number.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import type { NumberField } from '../../src/islands/fields.ts';
import { setFields } from '../../src/worksheets/curing/set-fields.ts';
import compare from '../../src/worksheets/water/compare-waters.tsx';

const say = speaker('metric');
const read = (field: NumberField, t: string, more: Entry = {}) =>
  readNumber(field, { t, s: 'metric', ...more }, {}, say);

test('a setting time by the clock is in hours and minutes, whatever is shown', () => {
  const { testInitial } = compare.fields;
  expect(read(testInitial, '2:40')).toMatchObject({ value: 160 * 60, echo: '160\u00a0min' });
  expect(read(testInitial, ' 0:55 ').value).toBe(55 * 60);
  expect(read(testInitial, '2:40:30').value).toBe(160 * 60 + 30);
  expect(read(testInitial, '160').value).toBe(160 * 60);
  for (const u of ['h', 'min'])
    expect(read(setFields.initial, '2:40', { u, d: { metric: u } }).value).toBe(160 * 60);
});
