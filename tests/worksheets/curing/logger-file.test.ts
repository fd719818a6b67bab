import { describe, expect, test, vi } from 'vitest';
import type { Entry } from '../../../src/bench/entries.ts';
import { LIMITS } from '../../../src/bench/records/limits.ts';
import { celsius } from '../../../src/core/curing/units.ts';
import { HOUR } from '../../../src/core/quantity/constants.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import curingPlan from '../../../src/worksheets/curing/curing-plan.tsx';
import { readingsInWords, rowsInWords } from '../../../src/worksheets/shared/log/log-words.ts';
import {
  type Answers,
  attachedInWords,
  countedAnew,
  readLoggerText,
  textOf,
  toBench,
  tooLarge,
  toRecord,
  unreadable,
} from '../../../src/worksheets/shared/log/logger-file.ts';
import { mustAnswer } from '../must-answer.ts';

const say = speaker('metric');
const read = (text: string, answers: Answers = {}) =>
  readLoggerText(text, { ...answers, otherwise: 'celsius' });
const benched = async (text: string, answers?: Answers) =>
  toBench(await read(text, answers), undefined, 'metric')?.entry.t;
/** Temperatures read, °C to two decimals. */
const degrees = async (text: string, answers?: Answers) =>
  (await read(text, answers)).history?.temperatures.map((t) => Math.round(celsius(t) * 100) / 100);
const hours = async (text: string, answers?: Answers) =>
  (await read(text, answers)).history?.times.map((time) => time / HOUR);

test('a file above 5 MB is refused with a message', () => {
  expect(tooLarge({ name: 'a.csv', size: 5e6 })).toBeUndefined();
  expect(tooLarge({ name: 'a.csv', size: 5e6 + 1 })).toMatch(/^‘a\.csv’ is larger than 5\sMB/);
});

test.each([
  ['semicolon, decimal comma', 'Time;Temp °C\n2026-05-08 14:00;20,1\n2026-05-08 15:00;21,5\n'],
  ['tab', '2026-05-08T14:00\t20.1\n2026-05-08T15:00\t21.5'],
  ['comma, quoted decimal comma', '"2026-05-08 14:00","20,1"\n"2026-05-08 15:00","21,5"'],
  ['comma, decimal point', 'when,temp\r\n08.05.2026 14:00,20.1\r\n08.05.2026 15:00,21.5\r\n'],
  [
    'heading by one program, rows by another',
    'Logger 12\r\nTime;Temp °C\r\n2026-05-08 14:00;20.1\n2026-05-08 15:00;21.5\n',
  ],
  ['line ends of an old machine', 'Time;Temp °C\r2026-05-08 14:00;20.1\r2026-05-08 15:00;21.5'],
  [
    'lines from notes and slides',
    'Time;Temp °C\u20282026-05-08 14:00;20.1\u20282026-05-08 15:00;21.5\u000b',
  ],
  ['bar, date and clock apart', '8/5/2026|14:00|20.1\n8/5/2026|15:00|21.5'],
  ['Fahrenheit', 'time,temp (°F)\n14:00,68.18\n15:00,70.7'],
])('a logger’s file is read: %s', async (_, text) => {
  expect(await benched(text, { order: 'day' })).toBe('0\t20.1\n1\t21.5');
});

test('“minus” or “negative” in words is the sign of the number after it', async () => {
  for (const between of [' ', '\t', ';'])
    expect(await degrees(`10:00${between}minus 3\n11:00${between}Negative 4.5`)).toEqual([
      -3, -4.5,
    ]);
});

test('hours count from casting, and earlier readings are counted as left out', async () => {
  const log = await read('2026-05-08 13:00;18\n2026-05-08 15:00;22\n2026-05-08 16:00;23');
  const brought = toBench(log, Date.UTC(2026, 4, 8, 14) / 1000, 'metric');
  expect(brought?.entry.t).toBe('0\t20\n1\t22\n2\t23');
  expect(brought?.before).toBe(1);
});

test.each([
  ['Time (UTC);°C', 0],
  ['time_utc;°C', 0],
  ['Date Time, GMT+00:00;°C', 0],
  ['Date Time, GMT-05:00;°C', -5],
  ['Time (UTC+2);°C', 2],
  ['Time (UTC+05:30);°C', 5.5],
  ['Time;°C', undefined],
])('a heading that names a time zone is used: %s', async (heading, ahead) => {
  const log = await read(`${heading}\n2026-05-08 14:00;20\n2026-05-08 15:00;21`);
  expect(log.zone).toBe(ahead === undefined ? undefined : ahead * HOUR);
  if (ahead === undefined) expect(log.begins).toBe(Date.UTC(2026, 4, 8, 14) / 1000);
  // A zone in the cell has the last word.
  const own = await read(`${heading}\n2026-05-08T14:00+03:00;20\n2026-05-08T15:00+03:00;21`);
  expect(own.zone).toBe(3 * HOUR);
});

test('a time zone over a separate clock column is used', async () => {
  const log = await read('Date;Clock (GMT);Temp (°C)\n2026-05-08;14:00;20\n2026-05-08;15:00;21');
  expect(log.zone).toBe(0);
});

describe('times that name their zone', () => {
  const cast = Date.UTC(2026, 4, 8, 14) / 1000;
  const rows = (zone: string) =>
    [14, 15].map((h) => `2026-05-08T${h}:00:00${zone};${h}`).join('\n');

  test.each([
    ['-05:00', -5],
    ['+02:00', 2],
    ['+0530', 5.5],
    ['-08', -8],
  ])('count from casting by the clock of this device, with a message: %s', async (zone, ahead) => {
    const summer = vi.spyOn(Date.prototype, 'getTimezoneOffset').mockReturnValue(-60);
    try {
      const log = await read(rows(zone));
      const begins = cast + (1 - ahead) * HOUR;
      expect(log.begins).toBe(begins);
      expect(toBench(log, begins, 'metric')).toMatchObject({
        entry: { t: '0\t14\n1\t15' },
        before: 0,
      });
      expect(readingsInWords(log, say)).toContain('Its times state their zone; by this device’s');
    } finally {
      summer.mockRestore();
    }
  });

  test.each(['Z', ' UTC', ' GMT', '+00:00'])(
    'in UTC count by the clock of this device, with a message: %s',
    async (zone) => {
      const behind = vi.spyOn(Date.prototype, 'getTimezoneOffset').mockReturnValue(300);
      try {
        for (const text of [rows(zone), rows(zone).replaceAll(/;|(?<=\d)T/g, ' ')]) {
          const log = await read(text);
          expect(log.begins, text).toBe(cast - 5 * HOUR);
          expect(readingsInWords(log, say)).toMatch(/in UTC; .* the first is Fri\s8\sMay, 09:00/);
        }
      } finally {
        behind.mockRestore();
      }
    },
  );
});

test('timestamps of other makers are read, also with names of months and weekdays', async () => {
  for (const text of [
    'Fri 08 May 2026 14:00;20,1\nSat 09 May 2026 14:00;21,5',
    'Fri, 08 May 2026;14:00;20,1\nSat, 09 May 2026;14:00;21,5',
    '14:00:00 08.05.2026;20,1\n14:00:00 09.05.2026;21,5',
    '14:00 8 May 2026;20,1\n14:00 9 May 2026;21,5',
    '20260508T140000;20,1\n20260509T140000;21,5',
  ]) {
    expect((await read(text)).begins, text).toBe(Date.UTC(2026, 4, 8, 14) / 1000);
    expect(await benched(text), text).toBe('0\t20.1\n24\t21.5');
  }
});

test('a file in a Windows code page is read including its degree signs', async () => {
  const latin = (text: string) =>
    new Blob([Uint8Array.from(text, (letter) => letter.charCodeAt(0))]);
  const cells = '08.05.2026 14:00;20,1 °C\n08.05.2026 15:00;21,5 °C';
  expect(await benched((await textOf(latin(cells)))!)).toBe('0\t20.1\n1\t21.5');
  const headed = await textOf(latin('Time;Temp (°C)\n08.05.2026 14:00;20'));
  expect((await readLoggerText(headed!, { otherwise: 'fahrenheit' })).scale).toBe('celsius');
  expect(await textOf(new Blob([`\ufeff${cells}`]))).toBe(cells);
});

test('a file in UTF-16 is read by its byte order mark, in either order', async () => {
  const cells = '08.05.2026 14:00\t20,1 °C\n08.05.2026 15:00\t21,5 °C';
  const units = [...`\ufeff${cells}`].map((letter) => letter.charCodeAt(0));
  const little = units.flatMap((unit) => [unit & 255, unit >> 8]);
  const big = units.flatMap((unit) => [unit >> 8, unit & 255]);
  for (const bytes of [little, big])
    expect(await textOf(new Blob([Uint8Array.from(bytes)]))).toBe(cells);
});

test('a file that the browser cannot read is no text, and there is a sentence for it', async () => {
  const moved = Object.assign(new Blob(['14:00;20']), {
    arrayBuffer: () => Promise.reject(new DOMException('gone', 'NotFoundError')),
  });
  expect(await textOf(moved)).toBeUndefined();
  expect(unreadable({ name: 'cure.csv' })).toMatch(
    /^‘cure\.csv’ cannot be read: .*Choose it again/,
  );
});

test('every row that is not clearly a reading is listed', async () => {
  const log = await read('Logger 7\ntime;°C\n14:00;20\nx;y\n15:00;21\n15:00;22\n14:30;20,5\n');
  const words = rowsInWords(log.problems).join(' ');
  for (const row of [1, 2, 4, 6, 7]) expect(words).toContain(String(row));
  expect(toBench(log, undefined, 'metric')?.entry.t).toBe('0\t20\n0.5\t20.5\n1\t21');
});

test('a fortnight of readings every five minutes is thinned to fit on the bench, with the error stated', async () => {
  const rows = Array.from({ length: 14 * 288 }, (_, i) => {
    const at = new Date(Date.UTC(2026, 4, 8) + i * 300_000).toISOString().slice(0, 16);
    return `${at};${(15 + 5 * Math.sin((i / 288) * 2 * Math.PI) + 0.3 * Math.sin(i)).toFixed(2)}`;
  });
  const brought = toBench(await read(rows.join('\n')), undefined, 'metric')!;
  expect(brought.readings).toBe(14 * 288);
  expect(brought.entry.t!.length).toBeLessThanOrEqual(4000);
  expect(brought.kept).toBeLessThan(300);
  expect(brought.largestMiss).toBeLessThan(0.7);
});

/** A log of a logger that writes seconds, never quite in step. */
const toTheSecond = (count: number, step: number) => {
  let at = Date.UTC(2026, 4, 8, 14);
  return Array.from({ length: count }, (_, i) => {
    at += 1000 * (step + ((i * 7919) % 21));
    const time = new Date(at).toISOString().slice(0, 19).replace('T', ' ');
    return `${time};${(18 + 6 * Math.sin(i / 15) + Math.sin(i * 1.7)).toFixed(2)}`;
  }).join('\n');
};

test.each([
  ['a quarter of an hour, 17 days', 1601, 911],
  ['17 minutes, 55 days', 4659, 1020],
  ['31 minutes, 90 days', 4180, 1860],
])('a log to the second fits on the bench: every %s', async (_, count, step) => {
  for (const castAt of [undefined, Date.UTC(2026, 4, 8, 14) / 1000]) {
    const brought = toBench(await read(toTheSecond(count, step)), castAt, 'metric')!;
    expect(brought.entry.t!.length).toBeLessThanOrEqual(3900);
    expect(brought.entry.t!.length).toBeGreaterThan(3700);
    expect(brought.readings).toBe(count);
    expect(brought.kept).toBe(brought.entry.t!.split('\n').length);
    expect(gapIn(brought.entry)).toBeUndefined();
  }
});

test('it still fits when its casting is moved earlier', async () => {
  const { entry, kept } = toBench(await read(toTheSecond(901, 911)), undefined, 'metric')!;
  const anew = (await countedAnew(entry, -72 * HOUR))!;
  expect(anew.before).toBe(0);
  expect(anew.entry.t).toMatch(/^72\t/);
  expect(anew.entry.t!.length).toBeLessThanOrEqual(3900);
  expect(anew.kept).toBeLessThan(kept);
});

/** What a curing worksheet says of a hole in the readings on the bench. */
const gapIn = (entry: Entry) => {
  const entries = { 'curing.source': { t: 'readings' }, 'curing.readings': entry };
  const found = answer(curingPlan, readWorksheet(curingPlan, entries, {}, say), say);
  mustAnswer(found);
  return found.notes.find((note) => note.includes('straight line bridges'));
};

test('a long gap is noted with the reading that ends it, also among few readings', () => {
  expect(gapIn({ t: '0 20\n400 15' })).toContain('before reading 2;');
  expect(gapIn({ t: '300 15' })).toContain('before reading 1;');
  expect(gapIn({ t: '0 20\n4 21\n400 15\n800 15' })).toContain('before readings 3, 4;');
  expect(gapIn({ t: '0 1\n24 1\n48 1\n72 1\n96 1' })).toContain(
    'before readings 2, 3, 4 and 1 more;',
  );
  // Morning and afternoon, as is asked for, and the low and the high of each day.
  expect(gapIn({ t: '0 20\n18 12\n24 20\n42 12' })).toBeUndefined();
  expect(gapIn({ t: '0 20\n14 8\n24 20\n38 8' })).toBeUndefined();
});

test('a night missing from a month of readings is noted, thinned or not', async () => {
  const hours = Array.from({ length: 361 }, (_, i) => 2 * i);
  const lines = (list: readonly number[]) =>
    list.map((h) => `${h}\t${(16 + 5 * Math.sin((h / 24) * 2 * Math.PI)).toFixed(1)}`).join('\n');
  const whole = lines(hours);
  const holed = lines(hours.filter((h) => h <= 200 || h >= 212));
  for (const [text, says] of [
    [whole, false],
    [holed, true],
  ] as const) {
    const { entry } = toBench(await read(text, { unit: HOUR }), undefined, 'metric')!;
    expect(gapIn(entry) !== undefined, 'thinned').toBe(says);
    expect(gapIn({ t: text }) !== undefined, 'typed').toBe(says);
  }
});

describe('a log thinned for the bench', () => {
  /** What a curing worksheet says of quarter-hours over 30 days, those of some hours left out. */
  const said = async (
    temperature: (hours: number) => number,
    without: [number, number] = [0, 0],
  ) => {
    const rows = Array.from({ length: 30 * 96 + 1 }, (_, i) => i / 4)
      .filter((hour) => hour <= without[0] || hour >= without[1])
      .map((hour) => {
        const at = new Date(Date.UTC(2026, 4, 8) + hour * 3_600_000).toISOString().slice(0, 16);
        return `${at};${temperature(hour).toFixed(1)}`;
      });
    const { entry, kept } = toBench(await read(rows.join('\n')), undefined, 'metric')!;
    expect(kept).toBeLessThanOrEqual(290);
    return gapIn(entry);
  };
  test('has no gap from thinning in four months of hourly readings', async () => {
    const lines = Array.from({ length: 120 * 24 }, (_, hour) => `${hour}\t14`).join('\n');
    const { entry } = toBench(await read(lines, { unit: HOUR }), undefined, 'metric')!;
    expect(gapIn(entry)).toBeUndefined();
  });
  const day = (hours: number) => 16 + 5 * Math.sin((hours / 24) * 2 * Math.PI);
  const shapes: readonly [string, (hours: number) => number][] = [
    ['days', day],
    ['days and a restless sensor', (hours) => day(hours) + 0.4 * Math.sin(hours * 7.3)],
    ['an even cellar', () => 14],
    [
      'two warm days, then an even cellar',
      (hours) =>
        hours < 48 ? 14 + 20 * Math.sin((hours / 48) * Math.PI) + Math.sin(9 * hours) : 14,
    ],
    ['one step', (hours) => (hours < 300 ? 20 : 12)],
  ];
  test.each(shapes)('has no gap from thinning: %s', async (_, temperature) => {
    expect(await said(temperature)).toBeUndefined();
  });
  test.each(shapes)('keeps the gap of the file: %s', async (_, temperature) => {
    expect(await said(temperature, [100, 140])).toMatch(/before reading \d+;/);
  });
});

test('a text without readings brings nothing to the bench', async () => {
  expect(toBench(await read('hello\nworld'), undefined, 'metric')).toBeUndefined();
});

describe('numbers without a unit', () => {
  const scale = async (text: string, otherwise: 'celsius' | 'fahrenheit') =>
    (await readLoggerText(text, { unit: HOUR, otherwise })).scale;
  const bare = '0;52\n1;36\n2;50';

  test('are in the reader’s temperature scale', async () => {
    expect(await scale(bare, 'fahrenheit')).toBe('fahrenheit');
    expect(await scale(bare, 'celsius')).toBe('celsius');
  });

  test('are in the scale that a heading names', async () => {
    expect(await scale(`h;Temp (°C)\n${bare}`, 'fahrenheit')).toBe('celsius');
    expect(await scale(`h;Temp_F\n${bare}`, 'celsius')).toBe('fahrenheit');
  });
});

describe('the column of the temperatures', () => {
  const rows = '2026-05-08 14:00,15.2,60\n2026-05-08 15:00,15.8,62\n';

  test('is the one whose heading names it, wherever the humidity column is', async () => {
    expect(await degrees(`Time,Temperature (°C),Humidity (%)\n${rows}`)).toEqual([15.2, 15.8]);
    expect(await degrees(`Time,Slab,RH\n${rows}`)).toEqual([15.2, 15.8]);
    expect(await degrees(`Time,Dew point (°C),Temp\n${rows}`)).toEqual([60, 62]);
    expect(await degrees('Hum,Temp_F,Time\n60,59,14:00\n62,68,15:00')).toEqual([15, 20]);
  });

  test('is never a humidity column, even the only one with numbers', async () => {
    const log = await read('Time,RH (%)\n14:00,60\n15:00,62');
    expect(log).toMatchObject({ history: undefined, waits: false });
    // A sensor that gave nothing is not replaced by its neighbour.
    expect((await read('Time,Temp,Count\n14:00,,1\n15:00,,2')).history).toBeUndefined();
  });

  test('is asked for where several are possible, and read after the answer', async () => {
    for (const heading of ['', 'Time,Probe 1,Probe 2\n', 'Time,air °C,slab °C\n']) {
      const log = await read(`${heading}${rows}`);
      expect(log).toMatchObject({ history: undefined, waits: true, open: ['column'] });
      expect(log.survey.columns.map(({ at, first }) => `${at} ${first}`)).toEqual([
        '1 15.2',
        '2 60',
      ]);
      expect(await degrees(`${heading}${rows}`, { column: 1 })).toEqual([15.2, 15.8]);
    }
    expect((await read(`Time,air °C,slab °C\n${rows}`)).survey.columns[1]!.heading).toBe('slab °C');
    // An answer about the columns of another text is none.
    expect((await read(rows, { column: 7 })).waits).toBe(true);
  });

  test('is not found from a heading with another number of cells', async () => {
    const log = await read('Date Temp RH\n2026-05-08 14:00 15.2 60\n2026-05-08 15:00 15.8 62');
    expect(log).toMatchObject({ waits: true, open: ['column'] });
  });

  test('is found after a row number and a date and clock in two columns', async () => {
    const text = '#;Date;Clock;Temp (°C)\n1;2026-05-08;14:00;20\n2;2026-05-08;15:00;21';
    expect(await benched(text)).toBe('0\t20\n1\t21');
  });
});

describe('the order of dates', () => {
  const days = (...list: string[]) => list.map((day) => `${day} 08:00,${60}`).join('\n');
  const march = Date.UTC(2026, 2, 11, 8) / 1000;

  test('is decided for the whole file by one number above 12', async () => {
    const month = days('03/11/2026', '03/12/2026', '03/13/2026', '03/14/2026');
    const log = await read(`Time,Temp (F)\n${month}`);
    expect(log).toMatchObject({ waits: false, begins: march });
    expect(log.history?.times).toEqual([0, 24, 48, 72].map((h) => h * HOUR));
    expect(log.problems.filter(({ code }) => code !== 'heading' && code !== 'gap')).toEqual([]);
    // What the file proves, an answer does not overrule.
    expect((await read(month, { order: 'day' })).begins).toBe(march);
    const day = days('11-03-2026', '12-03-2026', '13-03-2026');
    expect((await read(day)).begins).toBe(march);
  });

  test('is asked for where no date decides it, or two contradict', async () => {
    const either = days('03/04/2026', '04/04/2026');
    expect(await read(either)).toMatchObject({ waits: true, open: ['order'] });
    expect((await read(either)).survey.eitherWay).toBe('03/04/2026 08:00');
    expect(await hours(either, { order: 'day' })).toEqual([0, 24]);
    expect(await hours(either, { order: 'month' })).toEqual([0, 31 * 24]);
    const both = days('13/04/2026', '04/14/2026');
    expect(await read(both)).toMatchObject({ waits: true, open: ['order'] });
    expect((await read(both, { order: 'day' })).problems).toEqual([
      { row: 2, code: 'no-time', used: false },
    ]);
  });

  test('is asked for where a two-digit year may come first', async () => {
    for (const list of [
      ['26/05/20', '26/05/21', '26/05/22'],
      ['26/05/08', '26/05/09', '26/05/10'],
    ]) {
      const text = days(...list);
      const log = await read(text);
      expect(log).toMatchObject({ history: undefined, waits: true, open: ['order'] });
      expect(log.survey.orders).toEqual(['day', 'year']);
      // An answer that is not among those asked for is none.
      expect((await read(text, { order: 'month' })).waits).toBe(true);
      expect(await hours(text, { order: 'year' })).toEqual([0, 24, 48]);
    }
    // One date that is none the other way settles it.
    expect(await hours(days('26/05/8', '26/05/09', '26/05/10'))).toEqual([0, 24, 48]);
    // A year before 2020 does not stand first; and one date is the same both ways.
    expect(await hours(days('18/05/26', '26/05/26', '27/05/26'))).toEqual([0, 192, 216]);
    expect((await read(days('26/05/26'))).begins).toBe(Date.UTC(2026, 4, 26, 8) / 1000);
  });
});

describe('dates without a year', () => {
  const us = (text: string, cast?: string) =>
    readLoggerText(text, { otherwise: 'fahrenheit', ...(cast && { cast }) });
  const october = ['10/12 7:30 pm 55', '10/14 6:00 am 38', '10/15 3:00 pm 54'].join('\n');
  const begins = Date.UTC(2026, 9, 12, 19, 30) / 1000;

  test('are taken in the year of casting, with a message', async () => {
    for (const text of [
      october,
      october.replaceAll('/', '-'),
      october.replaceAll(/ (?=\d)/g, '\t'),
    ]) {
      const log = await us(text, '2026-10-12T19:30');
      expect(log, text).toMatchObject({ waits: false, begins, survey: { style: 'date' } });
      expect(log.history?.times, text).toEqual([0, 34.5 * HOUR, 67.5 * HOUR]);
      expect(rowsInWords(log.problems), text).toEqual([
        expect.stringMatching(/^Rows 1–3: a date without a year; taken in the year/),
        expect.stringMatching(/^Rows 2–3: a long stretch without readings/),
      ]);
    }
    expect((await us(october, '2024-10-12T19:30')).begins).toBe(
      Date.UTC(2024, 9, 12, 19, 30) / 1000,
    );
    const dots = await us('12.10. 19:30 55\n13.10. 7:30 38', '2026-10-12T19:30');
    expect(dots).toMatchObject({ begins, waits: false });
  });

  test('need their order asked where it is ambiguous', async () => {
    const either = '3/4 8:00,60\n3/5 8:00,61';
    expect(await us(either)).toMatchObject({ waits: true, open: ['order'] });
    expect(await hours(either, { order: 'month' })).toEqual([0, 24]);
    expect(await hours(either, { order: 'day' })).toEqual([0, 30 * 24]);
  });

  test('with the name of the month need no order', async () => {
    for (const text of [
      'Oct 12 7:30 pm 55\nOctober 14th 6:00 am 38',
      '12 Oct 19:30;55\n14 Oct 06:00;38',
      '12-Oct-26 19:30,55\n14-Oct-26 06:00,38',
      'Oct 12, 2026 7:30 pm 55\nOct 14, 2026 6:00 am 38',
    ]) {
      const log = await us(text, '2026-10-12T19:30');
      expect(log, text).toMatchObject({ begins, waits: false, rows: [1, 2] });
      expect(log.history?.times, text).toEqual([0, 34.5 * HOUR]);
      expect(await degrees(text, { scale: 'celsius' }), text).toEqual([55, 38]);
    }
    // A probe named so, or a note, is no date.
    expect(await hours('h;May 3\n0;20\n1;21')).toEqual([0, 1]);
  });

  test('continue over New Year, and lie in the past where the casting is unknown', async () => {
    const winter = await us('12/31 8:00,60\n1/1 8:00,61', '2026-12-30T08:00');
    expect(winter.history?.times).toEqual([0, 24 * HOUR]);
    expect(winter.begins).toBe(Date.UTC(2026, 11, 31, 8) / 1000);
    const long = ['6/13', '9/13', '12/13', '1/13', '2/13'].map((day) => `${day} 8:00,60`);
    const log = await us(long.join('\n'));
    expect(log.history?.times.map((time) => time / HOUR / 24)).toEqual([0, 92, 183, 214, 245]);
    expect(log.begins).toBeLessThan(Date.now() / 1000);
    expect(log.begins).toBeGreaterThan(Date.now() / 1000 - 367 * 24 * HOUR);
    // There is no such day in a year near this casting.
    expect((await us('2/29 8:00,60\n3/13 8:00,60', '2026-02-27T08:00')).rows).toEqual([2]);
    expect((await us('2/29 8:00,60\n3/1 8:00,60', '2028-02-27T08:00')).rows).toEqual([1, 2]);
  });

  test('with one dot need a clock or a second dot: otherwise they are numbers', async () => {
    expect(await hours('12.10;20\n13.10;21', { unit: HOUR })).toEqual([0, 1]);
    expect(await hours('12.10.;07:30;20\n13.10.;07:30;21')).toEqual([0, 24]);
  });
});

test('the bench gets a log in the reader’s temperature scale', async () => {
  const text = '10/12/26 7:30 pm 55\n10/14/26 6:00 am 38.3';
  const log = await readLoggerText(text, { otherwise: 'fahrenheit' });
  expect(toBench(log, undefined, 'us')?.entry).toEqual({ t: '0\t55\n34.5\t38.3', s: 'us' });
  expect(toBench(log, undefined, 'metric')?.entry).toEqual({
    t: '0\t12.78\n34.5\t3.5',
    s: 'metric',
  });
});

describe('elapsed times', () => {
  test.each([
    ['Minutes;Temperature', 0.5],
    ['Time (min);T', 0.5],
    ['elapsed_s;T', 30 / 3600],
    ['Seconds;°C', 30 / 3600],
    ['h;°C', 30],
    ['Day;°C', 720],
  ])('are in the unit of the heading %j', async (heading, second) => {
    expect(await hours(`${heading}\n0;20\n30;21\n60;22`)).toEqual([0, second, 2 * second]);
  });

  test('need their unit asked where no heading names it', async () => {
    for (const text of ['0;20\n30;21', 'Time;Temp\n0;20\n30;21', 'h:min;Temp\n0;20\n30;21']) {
      expect(await read(text)).toMatchObject({ waits: true, open: ['unit'] });
      expect(await hours(text, { unit: 60 })).toEqual([0, 0.5]);
    }
  });

  test('written as a clock go on past 24 h, with or without a day count', async () => {
    const clocks = ['00:00:00', '06:00:00', '18:00:00', '24:00:00', '36:00:00'];
    const text = `Elapsed time,Temp (C)\n${clocks.map((clock) => `${clock},20`).join('\n')}`;
    expect(await hours(text)).toEqual([0, 6, 18, 24, 36]);
    for (const mark of [';', ',', '\t']) {
      const days = `0 00:00:00${mark}20\n1 00:00:00${mark}25`;
      expect(await hours(days), mark).toEqual([0, 24]);
      expect(await degrees(days), mark).toEqual([20, 25]);
    }
  });

  test('are read with decimal commas between spaces', async () => {
    expect(await benched('h °C\n0,5 20,1\n1,5 21,5')).toBe('0\t20.1\n1\t21.5');
  });
});

test('a unit, am or pm after a space or in the next cell is read', async () => {
  for (const text of [
    '2026-05-01 08:00 60 °F',
    '2026-05-01 08:00   60 F',
    '2026-05-01 08:00;60;°F',
    '2026-05-01 08:00\t60\t° F',
  ]) {
    expect(await degrees(text), text).toEqual([15.56]);
    expect((await read(text)).bare, text).toBe(false);
  }
  expect(await degrees('Date Temp (°F)\n2026-05-01T08:00 60\n2026-05-01T09:00 60')).toEqual([
    15.56, 15.56,
  ]);
  const half = '5/13/2026 11:30 AM 60\n5/13/2026 2:30 PM 60';
  expect(await hours(half)).toEqual([0, 3]);
});

test('the repeated hour at the end of summer time is listed, and nothing else as such', async () => {
  const log = await read(
    ['01:30', '02:00', '02:30', '02:00', '02:30', '03:00']
      .map((clock, i) => `2026-10-25 ${clock};${20 - i}`)
      .join('\n'),
  );
  expect(log.rows).toEqual([1, 2, 3, 6]);
  expect(rowsInWords(log.problems)).toEqual([
    expect.stringMatching(/^Rows 4–5: an hour that the clock gives twice/),
  ]);
  expect(attachedInWords(log, toRecord(log))).toMatch(/2 rows are not counted.* stays in the box/);
  const codes = async (...rows: string[]) =>
    (await read(rows.map((row) => `2026-10-25 ${row}`).join('\n'))).problems.map(
      ({ row, code }) => `${row} ${code}`,
    );
  // The same rows pasted twice; a row out of its place; and no clock goes back in the afternoon.
  expect(await codes('02:00;20', '02:30;21', '02:00;20', '02:30;21', '03:00;22')).toEqual([
    '3 duplicate',
    '4 duplicate',
  ]);
  expect(await codes('02:00;20', '03:00;21', '02:30;21', '03:30;22', '04:00;22')).toEqual([
    '3 out-of-order',
  ]);
  expect(await codes('14:00;20', '14:30;21', '14:00;19', '14:30;18', '15:00;22')).toEqual([
    '3 conflict',
    '4 conflict',
  ]);
});

test('am or pm in a column of its own belongs to its clock', async () => {
  const rows = ['11:00,AM,20', '12:00,PM,21', '1:00,PM,22', '2:00,p.m.,23', '3:00,PM,24'];
  const dated = rows.map((row) => `5/18/2026,${row}`).join('\n');
  expect(await benched(`Date,Time,AM/PM,Temp C\n${dated}`)).toBe(
    '0\t20\n1\t21\n2\t22\n3\t23\n4\t24',
  );
  expect(await hours(rows.join('\n'))).toEqual([0, 1, 2, 3, 4]);
});

test('12-hour clocks without am or pm are refused, other clocks are not', async () => {
  const clocks = ['11:30', '12:00', '12:30', '1:00', '1:30', '2:00'];
  for (const date of ['', '2026-05-18 ']) {
    const log = await read(clocks.map((clock, i) => `${date}${clock};${20 + i}`).join('\n'));
    expect(log.history, date).toBeUndefined();
    expect(rowsInWords(log.problems), date).toEqual([
      expect.stringMatching(/^Rows 1–6: a clock of twelve hours without a\.m\. or p\.m\./),
    ]);
  }
  expect(await hours('11:30 am;20\n12:30 pm;21\n1:30 pm;22')).toEqual([0, 1, 2]);
  expect(await hours('11:30;20\n12:30;21\n13:30;22\n1:00;22')).toEqual([0, 1, 2, 13.5]);
});

test('newest-first rows are read from the last one up, with a message', async () => {
  const log = await read('02:00;23\n01:00;22\n00:00;21\n23:00;20\n22:00;19\n21:00;18');
  expect(toBench(log, undefined, 'metric')?.entry.t).toBe(
    '0\t18\n1\t19\n2\t20\n3\t21\n4\t22\n5\t23',
  );
  expect(log.problems.map(({ row, code }) => `${row} ${code}`)).toEqual([
    '1 newest-first',
    '3 next-day',
  ]);
});

test('the missing hour at the start of summer time is listed, and no other', async () => {
  const missing = async (...rows: string[]) =>
    (await read(rows.map((row, i) => `${row};${20 - i}`).join('\n'))).problems.filter(
      ({ code }) => code === 'missing-hour',
    );
  const night = ['03-28 23:00', '03-29 00:00', '03-29 02:00', '03-29 03:00', '03-29 04:00'];
  expect(await missing(...night.map((row) => `2026-${row}`))).toEqual([
    { row: 3, code: 'missing-hour', used: true },
  ]);
  // In a zone that is stated, no clock is put on; by day, none either.
  expect(await missing(...night.map((row) => `2026-${row}Z`))).toEqual([]);
  expect(await missing('2026-03-29 12:00', '2026-03-29 13:00', '2026-03-29 15:00')).toEqual([]);
});

test('a clock written with a dot is reported as unread, not taken for a heading', async () => {
  const log = await read('Time;Temp\n08.05.2026 14.00;20,1\n08.05.2026 15.00;20,6');
  expect(log.problems.map(({ code }) => code)).toEqual(['heading', 'no-time', 'no-time']);
});

test.each([
  ['a degree in one sign', '2026/10/07 14:00,4.5℃\n2026/10/07 15:00,5.5℃'],
  ['wide figures', '２０２６/１０/０７ １４:００，４.５\n２０２６/１０/０７ １５:００，５.５'],
  ['Arabic figures', '٢٠٢٦-١٠-٠٧ ١٤:٠٠;٤٫٥\n٢٠٢٦-١٠-٠٧ ١٥:٠٠;٥٫٥'],
  ['Persian figures', '۲۰۲۶-۱۰-۰۷ ۱۴:۰۰;۴٫۵\n۲۰۲۶-۱۰-۰۷ ۱۵:۰۰;۵٫۵'],
])('a log in another script is read: %s', async (_, text) => {
  expect(await degrees(text)).toEqual([4.5, 5.5]);
  expect(await hours(text)).toEqual([0, 1]);
});

test('an en dash before a number is a minus', async () => {
  expect(await degrees('2026-10-07 14:00;–5\n2026-10-07 15:00;–4,5')).toEqual([-5, -4.5]);
});

test('a month in another language is reported as unread, not taken for hours or a temperature', async () => {
  const log = await read('7 févr. 2026 14:00;4,5\n7 févr. 2026 15:00;–5,5');
  expect(log).toMatchObject({ history: undefined, open: [] });
  expect(log.problems.map(({ code }) => code)).toEqual(['no-time', 'no-time']);
});

test('a line full of brackets is quickly found to be no log', async () => {
  const started = performance.now();
  await read(' ('.repeat(100_000));
  expect(performance.now() - started).toBeLessThan(10_000);
});

test('readings on the bench are recounted from a corrected casting', async () => {
  const entry = { t: '0\t22\n24\t20\n48\t10', s: 'metric' } as const;
  expect((await countedAnew(entry, 36 * HOUR))?.entry).toEqual({ t: '0\t15\n12\t10', s: 'metric' });
  expect((await countedAnew(entry, -6 * HOUR))?.entry.t).toBe('6\t22\n30\t20\n54\t10');
  expect(await countedAnew(entry, 49 * HOUR)).toBeUndefined();
  expect((await countedAnew({ t: '0\t72\n2\t50', s: 'us' }, HOUR))?.entry).toEqual({
    t: '0\t61\n1\t50',
    s: 'us',
  });
});

test('the summary of a log gives its range in the reader’s units', async () => {
  const log = await read('h;°C\n0;15\n60;30');
  expect(readingsInWords(log, speaker('metric'))).toBe(
    '2 readings in °C over 60\u00a0h, from 15\u00a0°C to 30\u00a0°C.',
  );
  expect(readingsInWords(log, speaker('us'))).toContain('from 59\u00a0°F to 86\u00a0°F');
});

test('a record keeps seconds from the first reading, and nothing while a question is open', async () => {
  expect(toRecord(await read('h;°C\n2;20\n3;21'))?.log.seconds).toEqual([0, HOUR]);
  const waits = await read('0;20\n30;21');
  expect(toRecord(waits)).toBeUndefined();
  expect(attachedInWords(waits, undefined)).toContain('Choose above');
});

test('a log thinned for a record keeps its first and last reading, within the limit', async () => {
  const log = await read('h;°C\n2;20\n3;21');
  for (const count of [LIMITS.logPoints, 2 * LIMITS.logPoints, 2 * LIMITS.logPoints + 1]) {
    const times = Array.from({ length: count }, (_, i) => 60 * i);
    const history = { times, temperatures: times.map(() => 290), gaps: [] };
    const { seconds } = toRecord({ ...log, history })!.log;
    expect(seconds.length).toBeLessThanOrEqual(LIMITS.logPoints);
    expect([seconds[0], seconds.at(-1)], `${count}`).toEqual([0, times.at(-1)]);
  }
});
