import { expect, test } from 'vitest';
import type { Fields } from '../../../src/islands/fields.ts';
import { hoursSince } from '../../../src/worksheets/shared/time/SinceCast.tsx';
import { sheets } from '../all.ts';

const NOON = new Date(2026, 11, 1, 12, 0).getTime();

test.each([
  ['2026-12-01T11:00', 1],
  // 3 h 59 min are 3.98 h: a part may be younger than it seems, never older.
  ['2026-12-01T08:01', 3.9],
  ['2026-11-30T10:00', 26],
  ['2026-12-01T11:58', undefined],
  ['2026-12-01T13:00', undefined],
  ['2026-09-01T12:00', undefined],
  ['', undefined],
  [undefined, undefined],
  ['soon', undefined],
])('%s, at noon of 1 December: %s h', (castAt, hours) => {
  expect(hoursSince(castAt, NOON)).toBe(hours);
});

test('wherever the time since casting is asked', () => {
  const asking = sheets.flatMap(({ id, fields }) =>
    Object.values(fields as Fields).some(
      (field) => field.type === 'number' && field.bench === 'part.sinceCasting' && field.offers,
    )
      ? [id]
      : [],
  );
  expect(asking).toEqual(
    expect.arrayContaining(['strip-window', 'temperature-age', 'handling', 'strength-time']),
  );
});
