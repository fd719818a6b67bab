import { describe, expect, test } from 'vitest';
import { firstAtOrBelow } from '../../../src/core/curing/cold-spells.ts';
import { readTemperatureLog } from '../../../src/core/curing/log.ts';
import { readTemperatureCell, readTimeCell } from '../../../src/core/curing/log-cells.ts';
import { quicken } from '../../../src/core/curing/quicken.ts';
import { fitStrength, strengthAbout } from '../../../src/core/curing/strength-fit.ts';
import { strengthShare } from '../../../src/core/curing/strength-growth.ts';
import { DomainError } from '../../../src/core/domain-error.ts';

const DAY = 86_400;

test('a history that begins at or below a level is there from its first moment', () => {
  const history = { times: [600, 4200], temperatures: [272, 280], gaps: [] };
  expect(firstAtOrBelow(history, 273.15)).toBe(600);
  expect(firstAtOrBelow(history, 272)).toBe(600);
  // One that only touches the level is there at that moment.
  expect(
    firstAtOrBelow({ times: [0, 60, 120], temperatures: [280, 275, 280], gaps: [] }, 275),
  ).toBe(60);
  expect(firstAtOrBelow({ ...history, temperatures: [280, 272] }, 276)).toBe(2400);
  expect(firstAtOrBelow(history, 270)).toBeUndefined();
});

describe('times in a logger’s file', () => {
  const seconds = (cell: string, how: Parameters<typeof readTimeCell>[1] = {}) => {
    const read = readTimeCell(cell, how);
    return read.ok ? read.seconds : undefined;
  };
  test('a time with a zone is kept as written, with its offset from UTC', () => {
    const noon = { seconds: Date.UTC(2026, 3, 3, 12) / 1000 };
    const zoned = (zone: string) => readTimeCell(`2026-04-03T12:00:00${zone}`, {});
    expect(zoned('Z')).toMatchObject({ ...noon, zone: 0 });
    expect(zoned('+02:00')).toMatchObject({ ...noon, zone: 2 * 3600 });
    expect(zoned('-03:30')).toMatchObject({ ...noon, zone: -3.5 * 3600 });
  });
  test('a date whose day and month are the same number is read without knowing their order', () => {
    expect(seconds('04/04/2026 06:00')).toBe(Date.UTC(2026, 3, 4, 6) / 1000);
  });
  test('a date with 12 in either place is ambiguous, with 13 it is not', () => {
    expect(readTimeCell('12/05/2026', {})).toEqual({ ok: false, code: 'ambiguous-date' });
    expect(readTimeCell('05/12/2026', {})).toEqual({ ok: false, code: 'ambiguous-date' });
    expect(seconds('12/05/2026', { order: 'day' })).toBe(Date.UTC(2026, 4, 12) / 1000);
    expect(seconds('12/05/2026', { order: 'month' })).toBe(Date.UTC(2026, 11, 5) / 1000);
    expect(seconds('13/05/2026')).toBe(Date.UTC(2026, 4, 13) / 1000);
    expect(seconds('05/13/2026')).toBe(Date.UTC(2026, 4, 13) / 1000);
  });
  test('elapsed hours are read with any number of decimals', () => {
    expect(seconds('1.25')).toBe(4500);
    expect(seconds('1,125')).toBe(4050);
    expect(seconds('90', { elapsedUnit: 60 })).toBe(5400);
    expect(seconds('1.')).toBeUndefined();
  });
  test('white space around a cell is ignored', () => {
    for (const cell of ['12,5', ' 12.5 ', '12.5\u00a0°C', '\t54.5 F', '285.65 K'])
      expect(readTemperatureCell(cell, 'celsius'), cell).toBeCloseTo(285.65, 9);
    expect(readTemperatureCell('\u22122', 'celsius')).toBeCloseTo(271.15, 9);
    expect(readTemperatureCell('12 5', 'celsius')).toBeUndefined();
    for (const cell of [' 1.5', '1.5 ', ' 01:30 ', '\t1:30:00'])
      expect(seconds(cell), cell).toBe(5400);
    expect(seconds(' 2026-04-03 ')).toBe(Date.UTC(2026, 3, 3) / 1000);
  });
  test('12 am is midnight, 12 pm noon, and minutes and seconds beyond 59 are refused', () => {
    expect(seconds('12:00 am')).toBe(0);
    expect(seconds('12:30 AM')).toBe(30 * 60);
    expect(seconds('1:05 a.m.')).toBe(65 * 60);
    expect(seconds('12:00 pm')).toBe(12 * 3600);
    expect(seconds('11:59:59 pm')).toBe(DAY - 1);
    expect(seconds('08:59:59,5')).toBe(9 * 3600 - 0.5);
    for (const none of ['0:30 am', '0:30 pm', '08:60', '08:00:60', '24:00'])
      expect(seconds(none), none).toBeUndefined();
  });
  test('refuses hour 25, and hour 13 with pm', () => {
    expect(seconds('2026-04-03 25:00')).toBeUndefined();
    expect(seconds('13:00 pm')).toBeUndefined();
  });
});

describe('strength from broken pieces', () => {
  const at = (days: number, strength: number) => ({ age: days * DAY, strength });
  test('growth steeper than any cement’s is noted, and the cement’s coefficient kept', () => {
    const fit = fitStrength({ results: [at(3, 0.1e6), at(28, 9e6)], coefficient: 0.25 });
    expect(fit.notes).toContainEqual({ code: 'too-steep', of: 'results' });
    expect(fit.coefficient).toBe(0.25);
  });
  test('two results that fix both constants leave no spread, and a factor of two is assumed', () => {
    const grown = (days: number) =>
      at(days, 2e6 * strengthShare({ age: days * DAY, coefficient: 0.4 }));
    const fit = fitStrength({ results: [grown(7), grown(28)], coefficient: 0.2 });
    expect(fit.coefficient).toBeCloseTo(0.4, 9);
    expect(fit.strength28).toBeCloseTo(2e6, 3);
    expect(fit.spread).toBeUndefined();
    // At a result half of it to twice, a guess.
    const about = strengthAbout({ fit, coefficients: [], age: 28 * DAY });
    expect(about.low).toBeCloseTo(1e6, 3);
    expect(about.high).toBeCloseTo(4e6, 3);
  });
  test('the band at the age of several results is the Student’s t prediction interval of their mean', () => {
    const fit = fitStrength({
      results: [0.5, 0.55, 0.6].map((mpa) => at(7, mpa * 1e6)),
      coefficient: 0.25,
    });
    // ln: mean −0.60061, standard deviation 0.09121; t of 2 degrees of freedom, one-sided 95 %, 2.91999.
    const { low, high } = strengthAbout({ fit, coefficients: [0.25], age: 7 * DAY });
    expect(Math.log(low / 1e6)).toBeCloseTo(-0.60061 - 2.91999 * 0.09121 * Math.sqrt(4 / 3), 3);
    expect(Math.log(high / 1e6)).toBeCloseTo(-0.60061 + 2.91999 * 0.09121 * Math.sqrt(4 / 3), 3);
    expect(() => strengthAbout({ fit, coefficients: [0.25], age: 0 })).toThrow(DomainError);
  });
  test.each([
    ['three', [at(7, 0.8e6), at(14, 1.05e6), at(28, 1.1e6)]],
    ['two', [at(7, 0.8e6), at(28, 1.1e6)]],
    ['four', [at(1.7, 0.21e6), at(3, 0.34e6), at(6, 0.44e6), at(9, 0.55e6)]],
    ['two that scatter', [at(7, 0.8e6), at(7, 1.1e6), at(8, 1e6)]],
    ['one', [at(7, 0.8e6)]],
  ] as const)('what a part has it keeps: neither end falls with age, of %s', (_, results) => {
    const fit = fitStrength({ results, coefficient: 0.38 });
    const about = (days: number) =>
      strengthAbout({ fit, coefficients: [0.38, 0.2], age: days * DAY });
    const ages = [0.1, 0.5, 0.8, 1, 2, 3, 5, 7, 10, 14, 20, 28, 40, 60, 90, 365, 3650];
    ages.slice(1).forEach((days, i) => {
      const [younger, older] = [about(ages[i]!), about(days)];
      expect(older.low, `low at ${days}`).toBeGreaterThanOrEqual(younger.low);
      expect(older.high, `high at ${days}`).toBeGreaterThanOrEqual(younger.high);
      expect(older.high).toBeGreaterThan(older.low);
    });
  });
  test('the band below the youngest result is no higher than at it', () => {
    const fit = fitStrength({
      results: [at(7, 0.8e6), at(14, 1.05e6), at(28, 1.1e6)],
      coefficient: 0.25,
    });
    const high = (days: number) => strengthAbout({ fit, coefficients: [], age: days * DAY }).high;
    expect(high(0.8)).toBeLessThanOrEqual(high(7));
    expect(high(0.8)).toBeLessThan(2e6);
  });
  test.each([
    ['a tenth of a day', [at(7, 1e6), at(7.05, 1.004e6), at(7.1, 1.012e6)]],
    ['two tenths', [at(28, 2e6), at(28.1, 2e6), at(28.2, 2.01e6), at(28.2, 2.004e6)]],
    ['a binary digit', [at(7, 1e6), at(7 * (1 + 1e-15), 1.1e6), at(7, 1.05e6)]],
  ] as const)('results %s apart are of one age: no slope is read off them', (_, results) => {
    const fit = fitStrength({ results, coefficient: 0.25 });
    const alike = fitStrength({
      results: results.map(({ strength }) => ({ age: results[1].age, strength })),
      coefficient: 0.25,
    });
    expect(fit.notes).toEqual([{ code: 'one-age', of: 'results' }]);
    for (const days of [3, 7, 10, 28]) {
      const about = (of: typeof fit) =>
        strengthAbout({ fit: of, coefficients: [0.25], age: days * DAY });
      expect(about(fit).low / about(alike).low).toBeCloseTo(1, 2);
      expect(about(fit).high / about(alike).high).toBeCloseTo(1, 2);
    }
  });
  test.each([
    [at(7, 1e6), at(10, 1.9e6), at(14, 1.1e6)],
    [at(7, 0.9e6), at(14, 1.7e6), at(28, 1.6e6)],
  ])('results that scatter more than any cement grows tell no growth either', (...scattered) => {
    expect(fitStrength({ results: scattered, coefficient: 0.25 })).toMatchObject({
      coefficient: 0.25,
      notes: [{ code: 'scattered', of: 'results' }],
    });
  });
  test('results that agree at ages far enough apart give a growth without a note', () => {
    const agreeing = [at(7, 1e6), at(10, 1.12e6), at(14, 1.2e6)];
    expect(fitStrength({ results: agreeing, coefficient: 0.25 }).notes).toEqual([]);
  });
  test('the band is no wider than a factor of e^10 to either side', () => {
    // Two a factor of ten apart: 6.31375 · ln 10/√2 · √1.5 is 12.6.
    const fit = fitStrength({ results: [at(7, 1e5), at(7, 1e6)], coefficient: 0.25 });
    const { low, high } = strengthAbout({ fit, coefficients: [0.25], age: 7 * DAY });
    expect(Math.log(high / low)).toBeCloseTo(20, 9);
  });
  test('equal results still have a band, from an assumed scatter of 3 %', () => {
    // Of three: t 2.91999, of 3 %; of two 6.31375.
    for (const [n, t] of [
      [2, 6.31375],
      [3, 2.91999],
    ] as const) {
      const fit = fitStrength({ results: Array(n).fill(at(7, 0.8e6)), coefficient: 0.25 });
      expect(fit.spread).toBe(0);
      const { low, high } = strengthAbout({ fit, coefficients: [0.25], age: 7 * DAY });
      expect(Math.log(high / 0.8e6)).toBeCloseTo(t * 0.03 * Math.sqrt(1 + 1 / n), 5);
      expect(Math.log(low / 0.8e6)).toBeCloseTo(-t * 0.03 * Math.sqrt(1 + 1 / n), 5);
    }
  });
});

test('a row with too few cells is dropped, with or without a clock column', () => {
  const full = ['2026-04-03', '08:00', '12.5'];
  const later = ['2026-04-03', '09:00', '13.5'];
  const log = readTemperatureLog({ rows: [[], full, ['2026-04-03'], later], clockColumn: 1 });
  expect(log.history?.times).toEqual([0, 3600]);
  expect(log.history?.temperatures).toEqual([285.65, 286.65]);
  expect(log.rows).toEqual([2, 4]);
  expect(log.problems.map(({ row, used }) => [row, used])).toEqual([
    [1, false],
    [3, false],
  ]);
});

test('a cement without a rapid-hardening kind is offered the other ways to quicken set', () => {
  const ways = quicken({
    set: { initial: 3 * 3600, final: 5 * 3600 },
    temperature: 283.15,
    law: { law: 'fhp' },
    mixWarmer: 8,
    roomWarmer: 10,
    chlorideDose: 0.02,
    steel: false,
  });
  expect(ways.map(({ way }) => way)).toEqual([
    'warmer-water',
    'warmer-room',
    'accelerator-by-sheet',
    'calcium-chloride',
  ]);
});
