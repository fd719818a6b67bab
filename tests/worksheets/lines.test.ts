import { describe, expect, test } from 'vitest';
import type { LinesReading } from '../../src/islands/engine/reading.ts';
import { speaker } from '../../src/islands/engine/say.ts';
import { lines } from '../../src/islands/fields/lines.tsx';
import { readLines } from '../../src/islands/fields/read-lines.ts';
import { type Fields, number } from '../../src/islands/fields.ts';
import { temperatureFields } from '../../src/worksheets/curing/curing-fields.ts';
import { shapeFields } from '../../src/worksheets/placing/shape-fields.ts';
import { sheets } from './all.ts';

const field = lines({
  label: 'Readings',
  most: 5,
  example: '2\t0.04',
  of: {
    time: number('time', { label: 'Time', example: '2 min', min: '0 min' }),
    drained: number('mass', { label: 'Drained', example: '0.04 kg', max: '10 kg' }),
  },
});
const read = (text: string, system: 'metric' | 'us' = 'metric') =>
  readLines(field, text, system, speaker(system));

describe('what stands between two numbers', () => {
  test.each([
    ['2 0.04'],
    ['2\t0.04'],
    ['2;0.04'],
    ['2 ; 0,04'],
    ['2, 0.04'],
    ['2  0,04'],
    ['2:00 0.04'],
    ['2 min 40 g'],
    ['120 s\t40 g'],
    ['0:02:00 | 40 g'],
    ['"2";"0,04"'],
    ['"2","0,04"'],
  ])('%j', (line) => {
    const { rows, problems } = read(line);
    expect(problems).toEqual([]);
    expect(rows).toHaveLength(1);
    expect(rows[0]!.time).toBeCloseTo(120, 9);
    expect(rows[0]!.drained).toBeCloseTo(0.04, 12);
  });
});

test('an ambiguous comma is read as the one that its column’s range allows', () => {
  expect(read('2 0,5\n4;2,007\n6 12,850').problems).toEqual([
    'Line 3. Drained: ‘12,850’ can be read as 12.850 or as 12850. Type the one you mean as it stands here.',
  ]);
  expect(read('2 0,5\n4;2,007').rows[1]!.drained).toBe(2.007);
});

describe('a comma alone', () => {
  test('separates the numbers where every line has one, with a message', () => {
    const { rows, problems, echo } = read('time,drained\n2,0.04\n4 min,120 g\n6,1');
    expect(problems).toEqual([]);
    expect(rows.map(({ drained }) => drained)).toEqual([
      0.04,
      expect.closeTo(0.12, 12),
      expect.closeTo(1, 12),
    ]);
    expect(echo).toBe('2 numbers a line, a comma between them: 2 and 0.04');
    expect(
      readLines(shapeFields.corners, '0,0\n24 in,0\n24,12\n0,12', 'us', speaker('us')).rows[2],
    ).toEqual({ x: expect.closeTo(0.6096, 12), y: expect.closeTo(0.3048, 12) });
  });

  test('may be a decimal mark in a line with another separator', () => {
    const { rows, problems, echo } = read('2,5 0,04\n4,12');
    expect(rows).toEqual([{ time: 150, drained: 0.04 }]);
    expect(problems).toEqual([
      expect.stringMatching(/^Line 2\. ‘4,12’ holds 1 number.*Put a tab or a semicolon between/),
    ]);
    expect(echo).toBeUndefined();
    expect(read('2,04\n4,1,2').problems).toHaveLength(2);
  });

  test('is a decimal mark where a line has one number', () => {
    const one = lines({ ...field, of: { drained: field.of.drained } });
    const { rows, echo } = readLines(one, '0,5\n0,25', 'metric', speaker('metric'));
    expect(rows.map(({ drained }) => drained)).toEqual([0.5, 0.25]);
    expect(echo).toBeUndefined();
  });
});

describe('a line of the lowest and the highest temperature', () => {
  const days = (line: string, system: 'metric' | 'us' = 'us') => {
    const { rows, problems } = readLines(temperatureFields.days, line, system, speaker(system));
    return problems.length > 0 ? problems : rows.map(({ coldest, warmest }) => [coldest, warmest]);
  };
  const [cold, warm] = [38, 55].map((f) => (f - 32) / 1.8 + 273.15) as [number, number];

  test.each([
    '38 55',
    '38-55',
    '38–55',
    '38 - 55',
    '38 to 55',
    '38/55',
    '38 / 55',
    '38‑55',
    '38°-55°',
    '38 °F to 55 °F',
  ])('%j is a range', (line) => {
    expect(days(line)).toEqual([[expect.closeTo(cold, 9), expect.closeTo(warm, 9)]]);
  });

  test('a sign is not taken for a dash', () => {
    const both = (low: number, high: number) => [
      [expect.closeTo(low + 273.15, 9), expect.closeTo(high + 273.15, 9)],
    ];
    for (const line of ['-5 3', '-5-3', '-5 to 3'])
      expect(days(line, 'metric')).toEqual(both(-5, 3));
    for (const line of ['-5 -3', '-5 – –3', '−5 –3', '-5 to -3'])
      expect(days(line, 'metric')).toEqual(both(-5, -3));
  });

  test('that cannot be read shows an example', () => {
    expect(days('38')[0]).toContain('lowest and highest. A good line: ‘53.6\t68’.');
    expect(days('38 55 60')[0]).toContain('Put a tab or a semicolon between two of them.');
  });
});

test('a clock in a column of hours counts hours and minutes', () => {
  const { rows } = readLines(temperatureFields.readings, '6:45 55\n30 54', 'us', speaker('us'));
  expect(rows.map(({ time }) => time)).toEqual([6.75 * 3600, 30 * 3600]);
});

test('headings and empty lines are skipped, and any line ending is accepted', () => {
  expect(
    read('min\tkg\r\n\r\n2\t0.04\r4\t0.12\u000b6\t0.2').rows.map(({ drained }) => drained),
  ).toEqual([0.04, 0.12, 0.2]);
});

test('a first line in other digits, or of fractions, is not taken for a heading', () => {
  const both = [
    { time: 120, drained: 0.04 },
    { time: 240, drained: 0.12 },
  ];
  for (const text of [
    '２\t０．０４\n４\t０．１２',
    '٢\t٠٫٠٤\n٤\t٠٫١٢',
    '２　０．０４\n４　０．１２',
  ])
    expect(read(text)).toMatchObject({ rows: both, problems: [] });
  expect(read('½\t¼\n2\t1').rows[0]).toEqual({ time: 30, drained: 0.25 });
  expect(read('t\tm³\n2\t1').rows).toHaveLength(1);
});

test('each unreadable line is listed with its number and reason; the others are read', () => {
  const { rows, problems } = read('2 0.04\n4 abc\n6\n8 11\n-1 0.2');
  expect(rows).toHaveLength(1);
  expect(problems).toHaveLength(4);
  expect(problems[0]).toMatch(
    /^Line 2\. ‘4 abc’ holds 1 number where 2 are wanted: time and drained\./,
  );
  expect(problems[1]).toMatch(/^Line 3\. ‘6’ holds 1 number/);
  expect(problems[2]).toMatch(/^Line 4\. Drained: read 11\u00a0kg; it must be at most 10\u00a0kg/);
  expect(problems[3]).toBe('1 more line cannot be read.');
});

test('a number that could be read two ways is asked about, not guessed', () => {
  expect(read('2\t1,234 g').problems[0]).toContain('1.234 or as 1234');
});

test('plain numbers are in the units of the system', () => {
  expect(read('2 1', 'us').rows[0]!.drained).toBeCloseTo(0.45359237, 12);
});

test('refuses an empty text and too many lines', () => {
  expect(read(' \n').problems[0]).toContain('no line holds a number');
  // Told how, it is in the units that a plain number would be read in.
  expect(read(' \n').problems[0]).toContain('such as ‘2\t0.04’');
  expect(read(' \n', 'us').problems[0]).toContain('such as ‘2\t0.08818’');
  expect(read(Array(6).fill('1 1').join('\n')).problems[0]).toContain('at most 5');
});

test('the columns of every example stand below each other', () => {
  const examples = sheets.flatMap(({ id, fields }) =>
    Object.values(fields as Fields).flatMap((field) =>
      field.type === 'lines' ? field.example.split('\n').map((line) => [id, line] as const) : [],
    ),
  );
  expect(examples.length).toBeGreaterThan(50);
  expect(examples.filter(([, line]) => line.includes(' '))).toEqual([]);
});

test('the example is in the units of the page', () => {
  const read = (system: 'metric' | 'us') =>
    field.as.read(field, undefined, speaker(system)) as LinesReading;
  expect(read('metric')).toMatchObject({ text: '2\t0.04', system: 'metric' });
  expect(read('us')).toMatchObject({ text: '2\t0.08818', system: 'us' });
  // What is worked out does not hang on the units shown.
  expect(read('us').rows).toEqual(read('metric').rows);
});
