import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTemperatureLog } from '../../../src/core/curing/log.ts';
import { readTemperatureCell, readTimeCell } from '../../../src/core/curing/log-cells.ts';

function split(text: string, mark = ';'): string[][] {
  return text.split('\n').map((line) => line.split(mark));
}

function codes(log: ReturnType<typeof readTemperatureLog>) {
  return log.problems.map(({ row, code, used }) => `${row} ${code}${used ? '' : ' dropped'}`);
}

describe('temperature logs', () => {
  test('reads dates, decimal commas and degrees Celsius from the heading', () => {
    const log = readTemperatureLog({
      rows: split(
        'Zeit;T\n2026-04-03 08:00;12,5\n2026-04-03 08:10;12,75\n2026-04-03T08:20:00;13,0',
      ),
    });
    expect(log.history?.times).toEqual([0, 600, 1200]);
    expect(log.history?.temperatures).toEqual([285.65, 285.9, 286.15]);
    expect(log.begins).toBe(Date.UTC(2026, 3, 3, 8) / 1000);
    expect(codes(log)).toEqual(['1 heading dropped']);
    expect(log.rows).toEqual([2, 3, 4]);
  });

  test('reads Fahrenheit from the heading, but a cell’s own unit wins', () => {
    const log = readTemperatureLog({
      rows: split('time,Temp (°F)\n0,50\n1,20 °C\n2,68', ','),
      elapsedUnit: 3600,
    });
    expect(log.scale).toBe('fahrenheit');
    expect(log.history?.temperatures.map((t) => Math.round(t * 100) / 100)).toEqual([
      283.15, 293.15, 293.15,
    ]);
    expect(log.history?.times).toEqual([0, 3600, 7200]);
  });

  test('lines about the logger above the heading do not hide the unit or the column', () => {
    const log = readTemperatureLog({
      rows: split('Logger 7\nSerial;4711;3\n\nTime;Temp (°F);Note\n08:00;50;\n08:10;52;moved'),
    });
    expect(log.scale).toBe('fahrenheit');
    expect(log.history?.temperatures[0]).toBeCloseTo(283.15, 9);
    expect(log.rows).toEqual([5, 6]);
    expect(log.problems.map((problem) => problem.row)).toEqual([1, 2, 3, 4]);
  });

  test('bare clocks roll over midnight, and a late row of the evening stays in it', () => {
    const log = readTemperatureLog({
      rows: split('23:40;10\n23:50;9\n00:00;8\n23:55;8,5\n00:10;7'),
    });
    expect(log.history?.times).toEqual([0, 600, 900, 1200, 1800]);
    expect(log.rows).toEqual([1, 2, 4, 3, 5]);
    expect(codes(log)).toEqual(['3 next-day', '4 out-of-order']);
  });

  test('an hour that the clock gives twice is left out, and nothing else is called one', () => {
    const night = (rows: readonly string[]) =>
      readTemperatureLog({ rows: rows.map((row) => `2026-10-25 ${row}`.split(';')) });
    const log = night(['01:30;20', '02:00;19', '02:30;18', '02:00;17', '02:30;16', '03:00;15']);
    expect(codes(log)).toEqual(['4 repeated-hour dropped', '5 repeated-hour dropped']);
    expect(log.history?.times).toEqual([0, 1800, 3600, 5400]);
    // To the end of the log, too.
    expect(codes(night(['01:30;20', '02:00;19', '02:30;18', '02:00;17', '02:30;16']))).toEqual([
      '4 repeated-hour dropped',
      '5 repeated-hour dropped',
    ]);
    // Pasted twice; one row out of its place; a run that does not rise; and no clock goes back after four.
    expect(codes(night(['02:00;20', '02:30;21', '02:00;20', '02:30;21', '03:00;22']))).toEqual([
      '3 duplicate dropped',
      '4 duplicate dropped',
    ]);
    expect(codes(night(['02:00;20', '03:00;21', '02:30;21', '03:30;22', '04:00;22']))).toEqual([
      '3 out-of-order',
    ]);
    expect(
      codes(night(['02:00;20', '02:30;21', '02:00;19', '01:45;18', '02:15;18', '03:00;22'])),
    ).not.toContain('3 repeated-hour dropped');
    expect(codes(night(['04:00;20', '04:30;21', '04:00;19', '04:30;18', '05:00;22']))).toEqual([
      '3 conflict dropped',
      '4 conflict dropped',
    ]);
  });

  test('dates that name their zone go by the clock of the first, and rise through the end of summer time', () => {
    const log = readTemperatureLog({
      rows: split(
        '2026-10-25T02:00+02:00;20\n2026-10-25T02:30+02:00;19\n2026-10-25T02:00+01:00;18\n2026-10-25T03:00+01:00;17',
      ),
    });
    expect(log).toMatchObject({ problems: [], zone: 7200 });
    expect(log.begins).toBe(Date.UTC(2026, 9, 25, 2) / 1000);
    expect(log.history?.times).toEqual([0, 1800, 3600, 7200]);
    expect(readTemperatureLog({ rows: split('2026-05-08T14:00Z;20') }).zone).toBe(0);
  });

  test('clocks past 24:00 count from the start; one wrong clock among others does not', () => {
    const at = (...clocks: string[]) =>
      readTemperatureLog({ rows: clocks.map((clock) => [clock, '20']) });
    expect(at('00:00', '12:00', '24:00', '36:00').history?.times.at(-1)).toBe(36 * 3600);
    expect(at('0 00:00', '0 12:00', '1 00:00').history?.times.at(-1)).toBe(24 * 3600);
    expect(codes(at('12:00', '25:00', '14:00'))).toEqual(['2 no-time dropped']);
    expect(codes(at('22:00', '23:00', '24:00', '01:00'))).toEqual([
      '3 no-time dropped',
      '4 next-day',
    ]);
  });

  test('a row whose time cannot be read is not taken for a heading', () => {
    const log = readTemperatureLog({
      rows: split('Begun 8.5., 14:00\nday 128 14:00:00;20.1\nday 128 15:00:00;-4 °C'),
    });
    expect(codes(log)).toEqual(['1 heading dropped', '2 no-time dropped', '3 no-time dropped']);
  });

  test('one very long line is quickly found to be no log', () => {
    const started = performance.now();
    for (const line of [
      '14:00 x'.repeat(20_000),
      '14:00;'.repeat(20_000),
      ':00'.repeat(50_000),
      `14:00${' '.repeat(50_000)}x`,
    ])
      expect(readTemperatureLog({ rows: [[line]] }).history).toBeUndefined();
    expect(performance.now() - started).toBeLessThan(2000);
  });

  test('reads kelvin from the heading', () => {
    const rows = split('Time;Temperature (K)\n08:00;293.15\n09:00;20 °C');
    expect(readTemperatureLog({ rows }).history?.temperatures).toEqual([293.15, 293.15]);
  });

  test('reads date and clock in two columns, a date with dots as day first', () => {
    const log = readTemperatureLog({
      rows: split('03.04.2026;8:00;12\n03.04.2026;9:00;13'),
      clockColumn: 1,
    });
    expect(log.begins).toBe(Date.UTC(2026, 3, 3, 8) / 1000);
    expect(log.history?.times).toEqual([0, 3600]);
  });

  test('dates that can be read two ways are not guessed: one that cannot decides for all', () => {
    const rows = split('03/04/2026 08:00;12\n04/04/2026 08:00;12');
    const waits = readTemperatureLog({ rows });
    expect(waits).toMatchObject({ history: undefined, waits: true, open: ['order'], problems: [] });
    expect(readTemperatureLog({ rows, order: 'day' }).history?.times).toEqual([0, 86400]);
    const settled = readTemperatureLog({ rows: [...rows, ['13/04/2026 08:00', '12']] });
    expect(settled).toMatchObject({ waits: false, open: [] });
    expect(settled.history?.times).toEqual([0, 86400, 10 * 86400]);
  });

  test('dates that can be read two ways are found beside times in a later column too', () => {
    const rows = split('12;03/04/2026 08:00\n13;04/04/2026 08:00');
    expect(readTemperatureLog({ rows })).toMatchObject({ waits: true, open: ['order'] });
    const log = readTemperatureLog({ rows, order: 'day' });
    expect(log.begins).toBe(Date.UTC(2026, 3, 3, 8) / 1000);
    expect(log.history?.temperatures).toEqual([285.15, 286.15]);
  });

  test('a date whose clock is missing is not midnight', () => {
    const log = readTemperatureLog({
      rows: split('03.04.2026;8:00;12\n03.04.2026;;13\n03.04.2026;9:00;14'),
    });
    expect(codes(log)).toEqual(['2 no-time dropped']);
  });

  test('rows that are late, doubled, contradictory, blank or unreadable are named by their row numbers', () => {
    const log = readTemperatureLog({
      rows: split(
        [
          '0;20', // 1
          '1;21', // 2
          '3;23', // 3
          '2;22', // 4 out of order
          '3;23', // 5 duplicate
          '3;40', // 6 conflict
          ';', // 7 blank
          '4;warm', // 8
          'noon;24', // 9
          '4;999', // 10
          '4;24', // 11
          '40;25', // 12 gap before
          '12:00;25', // 13 another style
        ].join('\n'),
      ),
      elapsedUnit: 3600,
    });
    expect(codes(log)).toEqual([
      '4 out-of-order',
      '5 duplicate dropped',
      '6 conflict dropped',
      '7 blank dropped',
      '8 no-temperature dropped',
      '9 no-time dropped',
      '10 implausible dropped',
      '12 gap',
      '13 mixed-times dropped',
    ]);
    // Of rows that give one moment, the first is read.
    expect(log.rows).toEqual([1, 2, 4, 3, 11, 12]);
    expect(log.history?.times.map((t) => t / 3600)).toEqual([0, 1, 2, 3, 4, 40]);
    expect(log.history?.gaps).toEqual([{ from: 4 * 3600, to: 40 * 3600 }]);
  });

  test('a gap is an interval longer than three times the median, wherever it stands', () => {
    const at = (...minutes: number[]) =>
      readTemperatureLog({
        rows: minutes.map((minute) => [String(minute), '20']),
        elapsedUnit: 60,
      });
    // Intervals 1, 1, 5, 1, 1.
    expect(at(0, 1, 2, 7, 8, 9).history?.gaps).toEqual([{ from: 120, to: 420 }]);
    // Three times the usual is none yet.
    expect(at(0, 1, 2, 5, 6, 7).history?.gaps).toEqual([]);
    // However usual, more than from early one afternoon to late the next morning is one.
    expect(at(0, 22 * 60, 26 * 60).history?.gaps).toEqual([]);
    expect(at(0, 22 * 60 + 1).history?.gaps).toEqual([{ from: 0, to: 79_260 }]);
    expect(at(0, 400 * 60).problems).toMatchObject([{ row: 2, code: 'gap', used: true }]);
  });

  test('a row that is late and doubled is dropped, and never called used or moved', () => {
    const log = readTemperatureLog({
      rows: split('0;20\n2;22\n3;23\n2;22\n2;25'),
      elapsedUnit: 3600,
    });
    expect(codes(log)).toEqual(['4 duplicate dropped', '5 conflict dropped']);
    expect(log.rows).toEqual([1, 2, 3]);
    expect(log.history?.temperatures).toEqual([293.15, 295.15, 296.15]);
  });

  test('nothing readable gives no history and says why', () => {
    const log = readTemperatureLog({ rows: split('a;b\nc;d') });
    expect(log.history).toBeUndefined();
    expect(codes(log)).toEqual(['1 heading dropped', '2 heading dropped']);
    expect(readTemperatureLog({ rows: [] }).history).toBeUndefined();
  });

  test('every row is a reading or a problem that says it was dropped, never both', () => {
    const cell = fc.oneof(
      fc.constantFrom('', '12:00', '0:15', '23:59', '2026-01-01 10:00', '01/02/2026', '3', '7,5'),
      fc.constantFrom('20 °C', '-4', '999', 'x', '1.2.3', '68F', '12.01.2026 09:30'),
      fc.string({ maxLength: 6 }),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cell, { maxLength: 3 }), { maxLength: 12 }), (rows) => {
        const log = readTemperatureLog({
          rows,
          timeColumn: 0,
          temperatureColumn: 1,
          order: 'day',
          elapsedUnit: 3600,
        });
        const dropped = new Set(log.problems.filter((p) => !p.used).map((p) => p.row));
        const read = new Set(log.rows);
        for (let row = 1; row <= rows.length; row++)
          expect(read.has(row) !== dropped.has(row), `row ${row}`).toBe(true);
        for (const { row, used } of log.problems) expect(read.has(row)).toBe(used);
        const times = log.history?.times ?? [];
        for (const [i, time] of times.slice(1).entries()) expect(time).toBeGreaterThan(times[i]!);
      }),
      { numRuns: 500 },
    );
  });
});

describe('cells', () => {
  test.each([
    ['12.5', 285.65],
    ['12,5 °C', 285.65],
    ['\u22124', 269.15],
    ['54.5F', 285.65],
    ['300 K', 300],
    ['+3', 276.15],
  ])('reads %j', (cell, kelvin) => {
    expect(readTemperatureCell(cell, 'celsius')).toBeCloseTo(kelvin, 9);
  });

  test.each(['', 'warm', '1.234,5', '12 5', '12:00', '1e3', '--3'])('does not read %j', (cell) => {
    expect(readTemperatureCell(cell, 'celsius')).toBeUndefined();
  });

  test.each([
    ['2026-04-03T10:00:00Z', Date.UTC(2026, 3, 3, 10) / 1000],
    ['2026-04-03T10:00+02:00', Date.UTC(2026, 3, 3, 10) / 1000],
    ['20260403T100000', Date.UTC(2026, 3, 3, 10) / 1000],
    ['Fri, 2026-04-03 10:00', Date.UTC(2026, 3, 3, 10) / 1000],
    ['10:00:00 13/04/2026', Date.UTC(2026, 3, 13, 10) / 1000],
    ['2:30 pm 4/13/2026', Date.UTC(2026, 3, 13, 14, 30) / 1000],
    ['2026-04-03', Date.UTC(2026, 3, 3) / 1000],
    ['2026/04/03 10:00', Date.UTC(2026, 3, 3, 10) / 1000],
    ['2026.04.03 10:00', Date.UTC(2026, 3, 3, 10) / 1000],
    ['4/13/2026 2:30 pm', Date.UTC(2026, 3, 13, 14, 30) / 1000],
    ['4/13/26 2:30 pm', Date.UTC(2026, 3, 13, 14, 30) / 1000],
    ['13.04.26 10:00', Date.UTC(2026, 3, 13, 10) / 1000],
    ['12:05 am', 300],
    ['1,5', 5400],
  ])('reads %j as a time', (cell, seconds) => {
    expect(readTimeCell(cell, {})).toMatchObject({ ok: true, seconds });
  });

  test.each([
    ['2026-04-03T10:00:00Z', 0],
    ['2026-04-03 10:00:00 UTC', 0],
    ['03.04.2026 10:00 GMT', 0],
    ['2026-04-03T10:00+02', 7200],
    ['20260403T100000+0530', 19800],
    ['2026-04-03 10:00 GMT+2', 7200],
    ['2026-04-03 10:00 UTC+02:00', 7200],
    ['03.04.2026 10:00 UTC-3:30', -12600],
    ['Fri, 2026-04-03 10:00:00 -05:00', -18000],
  ])('%j is by its own clock, and how far that is ahead is told', (cell, zone) => {
    const seconds = Date.UTC(2026, 3, 3, 10) / 1000;
    expect(readTimeCell(cell, {})).toMatchObject({ ok: true, seconds, zone });
  });

  test('a clock followed by -12 is refused, as it may be a range, but read after GMT', () => {
    expect(readTimeCell('10:00 GMT-2', {})).toMatchObject({
      ok: true,
      seconds: 36000,
      zone: -7200,
    });
    expect(readTimeCell('10:00-12', {})).toMatchObject({ ok: false });
  });

  test.each([
    ['30:00:00', 30 * 3600],
    ['00:10', 600],
    ['1 06:00:00', 30 * 3600],
    ['2 d 00:00', 48 * 3600],
    ['1.06:00:30', 30 * 3600 + 30],
  ])('reads %j as counted', (cell, seconds) => {
    expect(readTimeCell(cell, { counted: true })).toMatchObject({ ok: true, seconds });
  });

  test.each([
    ['26/05/20', '2020-05-26', '2026-05-20'],
    ['26/05/08 10:00', '2008-05-26T10:00Z', '2026-05-08T10:00Z'],
    ['31/12/29', '2029-12-31', '2031-12-29'],
  ])('a year of two digits may stand last or first: %j', (cell, dayFirst, yearFirst) => {
    const at = (date: string) => ({ ok: true, seconds: Date.parse(date) / 1000 });
    expect(readTimeCell(cell, {})).toEqual({ ok: false, code: 'ambiguous-date' });
    expect(readTimeCell(cell, { order: 'day' })).toMatchObject(at(dayFirst));
    expect(readTimeCell(cell, { order: 'year' })).toMatchObject(at(yearFirst));
    expect(readTimeCell(cell, { order: 'month' })).toEqual({ ok: false, code: 'no-time' });
  });

  // No year next to 2026 has a 29 February; a moment with a clock that is none is none.
  test.each([
    ['8/5 14:00', '2026-05-20', '2026-05-08T14:00Z', '2026-08-05T14:00Z'],
    ['8-5 2:00 pm', '2026-05-20', '2026-05-08T14:00Z', '2026-08-05T14:00Z'],
    ['8.5. 14:00', '2026-05-20', '2026-05-08T14:00Z', '2026-05-08T14:00Z'],
    ['8.5 14:00', '2026-05-20', '2026-05-08T14:00Z', '2026-05-08T14:00Z'],
    ['--5-8 14:00', '2026-05-20', '2026-05-08T14:00Z', '2026-05-08T14:00Z'],
    ['5/5', '2026-05-20', '2026-05-05', '2026-05-05'],
    ['31/12 23:00', '2026-01-10', '2025-12-31T23:00Z', undefined],
    ['1/2', '2026-12-20', '2027-02-01', '2027-01-02'],
    ['29.2. 10:00', '2027-12-01', '2028-02-29T10:00Z', '2028-02-29T10:00Z'],
    ['29.2. 10:00', '2026-02-20', undefined, undefined],
    ['8/5 25:00', '2026-05-20', undefined, undefined],
  ])('without a year %j is in the one nearest %s', (cell, near, dayFirst, monthFirst) => {
    const read = (order?: 'day' | 'month') =>
      readTimeCell(cell, { near: Date.parse(near) / 1000, ...(order && { order }) });
    const at = (date: string | undefined) =>
      date
        ? { ok: true, style: 'date', seconds: Date.parse(date) / 1000, noYear: true }
        : { ok: false, code: 'no-time' };
    expect(read('day')).toEqual(at(dayFirst));
    expect(read('month')).toEqual(at(monthFirst));
    const either = dayFirst !== monthFirst && dayFirst && monthFirst;
    expect(read()).toEqual(
      either ? { ok: false, code: 'ambiguous-date' } : at(dayFirst ?? monthFirst),
    );
  });

  test('with dots the day stands first, whatever other dates of the log do', () => {
    for (const order of ['day', 'month', 'year'] as const)
      expect(readTimeCell('05.04.2026', { order })).toMatchObject({
        ok: true,
        seconds: Date.UTC(2026, 3, 5) / 1000,
      });
  });

  test.each([
    '2026-04-31',
    '2026-04/03',
    '25:00',
    '2026-13-01',
    '13:00 pm',
    'now',
    '',
    '10:00-12:00',
    '1 06:00:00',
    'Sun 3',
    '26-05-08',
    '26/13/08',
  ])('does not read %j as a time', (cell) => {
    expect(readTimeCell(cell, {})).toEqual({ ok: false, code: 'no-time' });
  });
});
