import { describe, expect, test } from 'vitest';
import { formatNumber } from '../../../src/core/quantity/format.ts';
import { parseQuantity } from '../../../src/core/quantity/parse.ts';
import { normalise } from '../../../src/core/quantity/unit-spelling.ts';

/** Unicode's own account of a mark: ⅝ is 5⁄8, ² is 2. */
const spelled = (mark: string) => mark.normalize('NFKD');

test('every fraction character is read as Unicode decomposes it', () => {
  for (const mark of '¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞') {
    const [over = Number.NaN, under = Number.NaN] = spelled(mark).split('⁄').map(Number);
    const read = parseQuantity(`2${mark} m`, 'length');
    expect(read.ok && read.value, mark).toBeCloseTo(2 + over / under, 12);
  }
});

test('every superscript digit in a unit is read as that digit', () => {
  for (const mark of '⁰¹²³⁴⁵⁶⁷⁸⁹') expect(normalise(`m${mark}`)).toContain(spelled(mark));
  expect(normalise('m⁻³')).toBe(normalise('m-3'));
});

test('zero is written with the decimals asked for, and without a minus', () => {
  expect(formatNumber(0, { significant: 3 })).toBe('0');
  expect(formatNumber(0, { decimals: 2 })).toBe('0.00');
  expect(formatNumber(0, { uncertainty: 0.1 })).toMatch(/^0\.0+$/);
});

describe('marks that may group thousands', () => {
  const problem = (text: string) => {
    const read = parseQuantity(`${text} kg`, 'mass');
    return read.ok ? read.number : read.problem;
  };

  test.each([
    ['12,345', '12.345', '12345'],
    ['12,345,678', '12.345678', '12345678'],
    ['12.345.678', '12.345678', '12345678'],
    ['12,345.6', '12345.6', '12.3456'],
    ['12,345.', '12345', '12.345'],
    ['12.345,67', '12345.67', '12.34567'],
    ['1.234.567,8', '1234567.8', '1.2345678'],
  ])('%s is ambiguous, with both readings given', (text, ...readings) => {
    expect(problem(text)).toMatchObject({ code: 'ambiguous', readings });
  });

  test.each([
    ['1234,567,890', 'several-numbers'],
    ['1,2,3', 'several-numbers'],
    ['1,2,,3', 'not-a-number'],
    ['1234.567.890', 'not-a-number'],
    ['1.234.5678', 'not-a-number'],
    ['1234,567.8', 'not-a-number'],
    ['1234.567,8', 'not-a-number'],
    ['12,345.6.7', 'not-a-number'],
    ['12.345,6,7', 'not-a-number'],
  ])('%s has no thousands groups: %s', (text, code) => {
    expect(problem(text)).toMatchObject({ code });
  });
});
