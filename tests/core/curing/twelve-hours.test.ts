import { expect, test } from 'vitest';
import { isTwelveHours } from '../../../src/core/curing/log-clocks.ts';

const of = (...clocks: string[]) =>
  isTwelveHours(
    clocks.map((clock, row) => {
      const [hours, minutes = 0] = clock.split(':').map(Number);
      return { row, seconds: (hours! * 60 + minutes) * 60, temperature: 290 };
    }),
  );

test('clocks that begin the day twice are known by their fall, however far apart they are', () => {
  expect(of('11:30', '12:00', '12:30', '1:00', '1:30')).toBe(true);
  expect(of('12:00', '1:00')).toBe(true);
  expect(of('8:00', '10:00', '12:00', '2:00', '4:00')).toBe(true);
  expect(of('9:00', '12:00', '3:00', '6:00', '9:00')).toBe(true);
});

test('the newest row first, a late row, and hours past noon are no such clocks', () => {
  expect(of('9:00', '8:00', '7:00', '6:00')).toBe(false);
  expect(of('8:00', '9:00', '8:30', '10:00')).toBe(false);
  expect(of('8:00', '12:00', '16:00', '4:00')).toBe(false);
});
