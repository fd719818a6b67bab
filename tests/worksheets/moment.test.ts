import { expect, test } from 'vitest';
import { readMoment } from '../../src/islands/fields/read-moment.ts';

test('a moment is read by the clock it was written by', () => {
  expect(readMoment('2026-05-08T14:00')).toBe(Date.UTC(2026, 4, 8, 14) / 1000);
  expect(readMoment('1970-01-02 00:01')).toBe(86_400 + 60);
});

test('what is no moment is not one', () => {
  for (const text of ['', '2026-04-31T10:00', '2026-13-01T10:00', '2026-05-08T24:00', '8.5.2026'])
    expect(readMoment(text)).toBeUndefined();
});
