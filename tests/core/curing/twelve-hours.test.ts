import { expect, test } from 'vitest';
import { isTwelveHours } from '../../../src/core/curing/log-clocks.ts';

const of = (...clocks: string[]) =>
  isTwelveHours(
    clocks.map((clock, row) => {
      const [hours, minutes = 0] = clock.split(':').map(Number);
      return { row, seconds: (hours! * 60 + minutes) * 60, temperature: 290 };
    }),
  );

test('12-hour clocks are recognised by their fall from 12 to 1, whatever the interval', () => {
  expect(of('11:30', '12:00', '12:30', '1:00', '1:30')).toBe(true);
  expect(of('12:00', '1:00')).toBe(true);
  expect(of('8:00', '10:00', '12:00', '2:00', '4:00')).toBe(true);
  expect(of('9:00', '12:00', '3:00', '6:00', '9:00')).toBe(true);
});

test('newest-first rows, a late row and hours past noon are not taken for 12-hour clocks', () => {
  expect(of('9:00', '8:00', '7:00', '6:00')).toBe(false);
  expect(of('8:00', '9:00', '8:30', '10:00')).toBe(false);
  expect(of('8:00', '12:00', '16:00', '4:00')).toBe(false);
});
