import { describe, expect, test } from 'vitest';
import type { LogProblem } from '../../../src/core/curing/log.ts';
import { inDays, isTwelveHours } from '../../../src/core/curing/log-clocks.ts';
import { HOUR, MINUTE } from '../../../src/core/quantity/constants.ts';

/** Rows from the first on, at these clocks; `1 6:30` is of the day after. */
const rows = (...clocks: readonly string[]) =>
  clocks.map((clock, row) => {
    const [hours, minutes] = clock.split(/[ :]/).slice(-2).map(Number);
    const day = clock.includes(' ') ? Number(clock.split(' ')[0]) : 0;
    return {
      row: row + 1,
      seconds: (24 * day + hours!) * HOUR + minutes! * MINUTE,
      temperature: 290,
    };
  });

describe('clocks that count to twelve twice', () => {
  const are = (...clocks: readonly string[]) => isTwelveHours(rows(...clocks));

  test('fall from 12 to 1, or by more than 6 h among more that rise', () => {
    expect(are('12:30', '1:30')).toBe(true);
    expect(are('12:00', '1:00', '2:00')).toBe(true);
    expect(are('10:00', '11:00', '3:00', '4:00')).toBe(true);
  });

  test('have no hour before 1 and none from 13 on', () => {
    expect(are('11:00', '12:59', '1:00')).toBe(true);
    expect(are('11:00', '12:59', '1:00', '0:59')).toBe(false);
    expect(are('11:00', '12:59', '1:00', '13:00')).toBe(false);
  });

  test('are not recognised by a fall from another hour than 12, or to another than 1', () => {
    expect(are('11:00', '1:00')).toBe(false);
    expect(are('12:00', '2:00')).toBe(false);
    // On another date.
    expect(are('12:00', '1 1:00')).toBe(false);
  });

  test('rise more often than they fall', () => {
    expect(are('1:00', '2:00')).toBe(false);
    expect(are('9:00', '1:00')).toBe(false);
    expect(are('9:00', '1:00', '2:00')).toBe(false);
    expect(are('9:00', '1:00', '2:00', '3:00')).toBe(true);
    // What stands still does not rise.
    expect(are('9:00', '1:00', '1:00', '1:00')).toBe(false);
  });

  test('fall by more than 6 h, and less than 12', () => {
    expect(are('7:00', '1:00', '2:00', '3:00')).toBe(false);
    expect(are('7:01', '1:00', '2:00', '3:00')).toBe(true);
    expect(are('1 9:00', '1:00', '2:00', '3:00')).toBe(false);
  });
});

describe('a log that gives only the clock', () => {
  /** The readings in the order they are given back, and what was found. */
  function counted(...clocks: readonly string[]) {
    const problems: LogProblem[] = [];
    const hours = inDays(rows(...clocks), problems).map(({ seconds }) => seconds / HOUR);
    expect(problems.every(({ used }) => used)).toBe(true);
    return { hours, problems: problems.map(({ row, code }) => `${row} ${code}`) };
  }
  const asItStands = (hours: readonly number[]) => ({ hours, problems: [] });

  test('goes on in the next day past midnight', () => {
    expect(counted('22:00', '23:00', '1:00', '22:00', '0:00')).toEqual({
      hours: [22, 23, 25, 46, 48],
      problems: ['3 next-day', '5 next-day'],
    });
  });

  test('has passed midnight where the clock falls by more than half a day', () => {
    expect(counted('18:00', '6:00')).toEqual(asItStands([18, 6]));
    expect(counted('18:30', '6:00')).toEqual({ hours: [18.5, 30], problems: ['2 next-day'] });
  });

  test('may have a late row of the evening before, ahead by more than 23 h', () => {
    expect(counted('22:00', '0:15', '23:30', '0:30')).toEqual({
      hours: [22, 24.25, 23.5, 24.5],
      problems: ['2 next-day'],
    });
    expect(counted('22:00', '0:30', '23:30').hours).toEqual([22, 24.5, 47.5]);
    // No evening comes before the first day.
    expect(counted('0:15', '23:45')).toEqual(asItStands([0.25, 23.75]));
  });

  test('may begin with the newest row: all clocks fall, and pass midnight', () => {
    expect(counted('2:00', '1:00', '23:00', '22:00')).toEqual({
      hours: [22, 23, 25, 26],
      problems: ['1 newest-first', '2 next-day'],
    });
  });

  test('is left as it stands where that is not clear', () => {
    // One that falls is a slip; none that passes midnight; one that rises; one that stands still.
    expect(counted('1:00', '23:00', '22:00')).toEqual(asItStands([1, 23, 22]));
    expect(counted('4:00', '3:00', '2:00', '1:00')).toEqual(asItStands([4, 3, 2, 1]));
    expect(counted('2:00', '1:00', '23:00', '22:00', '22:30').hours[0]).toBe(2);
    expect(counted('2:00', '2:00', '1:00', '23:00', '22:00').hours[0]).toBe(2);
    // Falls of 6 h and a pass of 18 h are too wide.
    expect(counted('8:00', '2:00', '1:00', '23:00', '22:00').hours[0]).toBe(8);
    expect(counted('7:59', '2:00', '1:00', '23:00', '22:00').problems).toContain('1 newest-first');
    expect(counted('2:00', '1:00', '19:00', '18:00').hours[0]).toBe(2);
    expect(counted('2:00', '1:00', '19:01', '18:00').problems).toContain('1 newest-first');
  });
});
