import { describe, expect, test } from 'vitest';
import { headingsAbove } from '../../../src/core/curing/log-headings.ts';

/** Rows with a mark between their cells; the last is the first reading. */
const above = (...lines: readonly string[]) => {
  const rows = lines.map((line) => line.split(';'));
  return headingsAbove(rows, rows.length - 1);
};

describe('the headings of a log', () => {
  test('are the nearest row that names a column, whatever notes lie below it', () => {
    const first = above('Time;Temp (°F)', 'begun;by hand', '08:00;50');
    expect([first.named(0), first.named(1)]).toEqual(['time', 'temperature']);
    expect(first.all).toBe('Time Temp (°F)');
    const nearer = above('Time;RH %', 'Time;Temp (°C)', 'begun;by hand', '08:00;50');
    expect(nearer.named(1)).toBe('temperature');
  });

  test('need to name only one column', () => {
    const { named, all } = above('Time;Slab 1', 'begun;by hand', '08:00;50');
    expect(all).toBe('Time Slab 1');
    expect([named(0), named(1)]).toEqual(['time', undefined]);
  });

  test('are the nearest row with any text, where none names a column', () => {
    const { all, over, named } = above('made here;2026', 'Shed;Slab', ';', '08:00;50');
    expect(all).toBe('Shed Slab');
    expect(over(1)).toBe('Slab');
    expect(named(1)).toBeUndefined();
  });

  test('are looked for in the twenty rows above the first reading', () => {
    const rows = (blank: number) => [
      ['Time', 'Temp (°C)'],
      ...Array.from({ length: blank }, () => ['', '']),
      ['08:00', '12'],
      ...Array.from({ length: 40 }, () => ['09:00', '13']),
      ['Time', 'Temp (°F)'],
    ];
    expect(headingsAbove(rows(0), 1).over(1)).toBe('Temp (°C)');
    expect(headingsAbove(rows(19), 20).all).toBe('Time Temp (°C)');
    expect(headingsAbove(rows(20), 21).all.trim()).toBe('');
    expect(headingsAbove(rows(0).slice(1), 0).all).toBe('');
  });

  test('include the row above them where it has as many cells', () => {
    expect(above('made;2026', 'Shed;Slab', 'Time;Temp', '08:00;5').over(1)).toBe('Slab Temp');
    expect(above('Logger 7', 'Time;Temp', '08:00;5').over(0)).toBe('Time');
    expect(above('Shed;', 'Time; Temp ', '08:00;5').over(1)).toBe('Temp');
  });

  test('are words: a number above a column is no heading', () => {
    const { over, all } = above('Box;3', 'Time;4', '08:00;5');
    expect(over(0)).toBe('Box Time');
    expect(over(1)).toBe('');
    expect(all.trim()).toBe('Time');
  });

  test.each([
    ['Date', 'time'],
    ['Elapsed', 'time'],
    ['Hours', 'time'],
    ['t (min)', 'time'],
    ['Temp', 'temperature'],
    ['Slab_deg_C', 'temperature'],
    ['(F)', 'temperature'],
    ['RH %', 'other'],
    ['Dew point (°C)', 'other'],
    ['Wet bulb °F', 'other'],
    ['Battery (V)', 'other'],
    ['No', 'other'],
    ['Slab 1', undefined],
  ])('%j says of its column: %s', (heading, says) => {
    // Beside one that is known, so that the row is taken for headings.
    expect(above(`Time;${heading}`, '08:00;12').named(1)).toBe(says);
  });

  test('belong to no column where the rows have another number of cells', () => {
    const { aligned, over, named, all } = above('Time;Temp (°F)', '08:00;50;20');
    expect(aligned).toBe(false);
    expect([over(1), named(1)]).toEqual(['', undefined]);
    expect(all).toBe('Time Temp (°F)');
    // Blank cells at the end of a row are none.
    expect(above('Time;Temp (°F)', '08:00;50;').named(1)).toBe('temperature');
  });
});
