import { describe, expect, test } from 'vitest';
import { readLoggerText, rowsInWords, toBench } from '../../src/worksheets/shared/logger-file.ts';

const how = { dayFirst: true, scale: 'heading', otherwise: 'celsius' } as const;
const read = (text: string) => readLoggerText(text, how);
const benched = async (text: string, castAt?: number) => toBench(await read(text), castAt)?.entry.t;

test.each([
  ['semicolon, decimal comma', 'Time;Temp °C\n2026-05-08 14:00;20,1\n2026-05-08 15:00;21,5\n'],
  ['tab', '2026-05-08T14:00\t20.1\n2026-05-08T15:00\t21.5'],
  ['comma, quoted decimal comma', '"2026-05-08 14:00","20,1"\n"2026-05-08 15:00","21,5"'],
  ['comma, decimal point', 'when,temp\r\n08.05.2026 14:00,20.1\r\n08.05.2026 15:00,21.5\r\n'],
  ['bar, date and clock apart', '8/5/2026|14:00|20.1\n8/5/2026|15:00|21.5'],
  ['Fahrenheit', 'time,temp (°F)\n14:00,68.18\n15:00,70.7'],
])('a logger’s file is read: %s', async (_, text) => {
  expect(await benched(text)).toBe('0\t20.1\n1\t21.5');
});

test('hours count from the casting, and readings before it are said to be left aside', async () => {
  const log = await read('2026-05-08 13:00;18\n2026-05-08 15:00;22\n2026-05-08 16:00;23');
  const brought = toBench(log, Date.UTC(2026, 4, 8, 14) / 1000);
  expect(brought?.entry.t).toBe('0\t20\n1\t22\n2\t23');
  expect(brought?.before).toBe(1);
});

test('every row that is not plainly a reading is named', async () => {
  const log = await read('Logger 7\ntime;°C\n14:00;20\nx;y\n15:00;21\n15:00;22\n14:30;20,5\n');
  const words = rowsInWords(log.problems).join(' ');
  for (const row of [1, 2, 4, 6, 7]) expect(words).toContain(String(row));
  expect(toBench(log, undefined)?.entry.t).toBe('0\t20\n0.5\t20.5\n1\t21');
});

test('a fortnight of readings every five minutes fits on the bench, and says what it left out', async () => {
  const rows = Array.from({ length: 14 * 288 }, (_, i) => {
    const at = new Date(Date.UTC(2026, 4, 8) + i * 300_000).toISOString().slice(0, 16);
    return `${at};${(15 + 5 * Math.sin((i / 288) * 2 * Math.PI) + 0.3 * Math.sin(i)).toFixed(2)}`;
  });
  const brought = toBench(await read(rows.join('\n')), undefined)!;
  expect(brought.readings).toBe(14 * 288);
  expect(brought.entry.t!.length).toBeLessThanOrEqual(4000);
  expect(brought.kept).toBeLessThan(300);
  expect(brought.largestMiss).toBeLessThan(0.7);
});

test('nothing readable is nothing to bring', async () => {
  expect(toBench(await read('hello\nworld'), undefined)).toBeUndefined();
});

describe('numbers without a unit', () => {
  const scale = async (text: string, otherwise: 'celsius' | 'fahrenheit') =>
    (await readLoggerText(text, { ...how, otherwise })).scale;
  const bare = '0;52\n1;36\n2;50';

  test('are in the scale of the reader', async () => {
    expect(await scale(bare, 'fahrenheit')).toBe('fahrenheit');
    expect(await scale(bare, 'celsius')).toBe('celsius');
  });

  test('unless a heading names another', async () => {
    expect(await scale(`h;Temp (°C)\n${bare}`, 'fahrenheit')).toBe('celsius');
    expect(await scale(`h;Temp_F\n${bare}`, 'celsius')).toBe('fahrenheit');
  });
});
