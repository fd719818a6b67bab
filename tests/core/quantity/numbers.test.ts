import { describe, expect, test } from 'vitest';
import { parseQuantity } from '../../../src/core/quantity/parse.ts';
import { number, problem } from './read.ts';

describe('numbers', () => {
  test.each([
    ['3.4', 3.4],
    ['3,4', 3.4],
    ['.5', 0.5],
    [',5', 0.5],
    ['5.', 5],
    ['007', 7],
    ['0', 0],
    ['22 1/2', 22.5],
    ['11 and 3/4', 11.75],
    ['11  and  3/4', 11.75],
    ['22½', 22.5],
    ['22-1/2', 22.5],
    ['22-½', 22.5],
    ['22 ½', 22.5],
    ['½', 0.5],
    ['1/2', 0.5],
    ['3⁄4', 0.75],
    ['22\u00a01/2', 22.5],
    ['1⅞', 1.875],
    ['5/2', 2.5],
    ['1.2e3', 1200],
    ['1,5e-3', 0.0015],
    ['1E3', 1000],
    ['2e\u22123', 0.002],
    ['2e+3', 2000],
    ['3.40×10⁻⁵', 3.4e-5],
    ['3 x 10^4', 3e4],
    ['3 x 10^-4', 3e-4],
    ['3 × 10^12', 3e12],
    ['1.5×10¹²', 1.5e12],
    ['1.00×10⁷', 1e7],
    ['+5', 5],
    ['-5', -5],
    ['\u22125', -5],
    ['\u2212 5', -5],
    ['\u20135', -5],
    ['\u2011\u20605', -5],
    ['minus 5', -5],
    ['Minus 1 1/2', -1.5],
    ['negative 5', -5],
    ['minus5', -5],
    ['-1 1/2', -1.5],
    ['  7\u00a0', 7],
    ['\ufeff7\u200b', 7],
    ['1.234', 1.234],
    ['0,123', 0.123],
    [',123', 0.123],
    ['1234,567', 1234.567],
    ['1,23', 1.23],
    ['1,2345', 1.2345],
    ['12345', 12345],
    ['12\u202f345', 12345],
    ['1\u2009234\u2009567', 1234567],
    ['12\u00a0345,6', 12345.6],
    ['1\u202f234.5', 1234.5],
    ['1.234\u202f567\u202f8', 1.2345678],
    ['12\u202f345e2', 1234500],
    ["1'000", 1000],
    ['１２．５', 12.5],
    ['٤٫٥', 4.5],
    ['۱۲۳', 123],
    ['٢٬٤٥٠', 2450],
    ['\u061c-٥', -5],
    ['８０。５', 80.5],
    ['1’234’567.5', 1234567.5],
  ])('%j is %d', (text, expected) => {
    expect(number(text)).toBe(expected);
  });

  test('a power of ten is read only directly after its number', () => {
    expect(problem('5 kg e3')).toMatchObject({ code: 'unknown-unit', unit: 'kg e3' });
    expect(problem('5 kg ×10³').code).toBe('several-numbers');
  });

  test('reports that a decimal comma was read', () => {
    expect(parseQuantity('3,4 kg', 'mass')).toMatchObject({ comma: true });
    expect(parseQuantity('12\u202f345,6', 'mass')).toMatchObject({ comma: true });
    expect(parseQuantity('3.4', 'mass')).toMatchObject({ comma: false });
  });
});

describe('what could be a thousands mark is never guessed', () => {
  test.each([
    ['1,234', '1.234', '1234'],
    ['-1,234 kg', '-1.234', '-1234'],
    ['12,000', '12.000', '12000'],
    ['1,234e2', '1.234e2', '1234e2'],
    ['1,234.5', '1234.5', '1.2345'],
    ['1.234,5', '1234.5', '1.2345'],
    ['1.234,', '1234', '1.234'],
    ['1,234,567', '1.234567', '1234567'],
    ['1.234.567', '1.234567', '1234567'],
    ['1,234,567.8', '1234567.8', '1.2345678'],
  ])('%j may be %s or %s', (read, first, second) => {
    expect(problem(read)).toEqual({ code: 'ambiguous', read, readings: [first, second] });
    for (const reading of [first, second]) expect(number(reading)).toBe(Number(reading));
  });
});

describe('what is not one number', () => {
  test.each([
    ['1 234', 'several-numbers'],
    ['1 2', 'several-numbers'],
    ['3, 4', 'several-numbers'],
    ['1,2,3', 'several-numbers'],
    ['1;2', 'several-numbers'],
    ['1\t2', 'several-numbers'],
    ['1\n2\n3', 'several-numbers'],
    ['kg\t3\t4', 'several-numbers'],
    ['5-6', 'several-numbers'],
    ['5\u20136 kg', 'several-numbers'],
    ['5 ± 1', 'several-numbers'],
    ['1:40', 'several-numbers'],
    ['5 kg 6 kg', 'several-numbers'],
    ['2.5 1/2', 'several-numbers'],
    ['½½', 'several-numbers'],
    ['12\u202f345\u202f6', 'several-numbers'],
    ['1\u202f23', 'several-numbers'],
    ["1'23", 'several-numbers'],
    ['abc', 'not-a-number'],
    ['.', 'not-a-number'],
    ['-', 'not-a-number'],
    ['+-5', 'not-a-number'],
    ['minus', 'not-a-number'],
    ['minus\u2009-5', 'not-a-number'],
    // A mark of a list, or of about so much.
    ['\u2014 5', 'not-a-number'],
    ['\u301c5', 'not-a-number'],
    ['1 1/0', 'not-a-number'],
    ['1/0', 'not-a-number'],
    ['0/0', 'not-a-number'],
    ['22 5/2', 'not-a-number'],
    ['12.05.2024', 'not-a-number'],
    ['3/4/2024', 'not-a-number'],
    ['1/2.5', 'not-a-number'],
    ['1.2.3', 'not-a-number'],
    ['1,,2', 'not-a-number'],
    ['5 +', 'not-a-number'],
    ['kg 5', 'not-a-number'],
    ['NaN', 'not-a-number'],
    ['Infinity', 'not-a-number'],
    ['0x10', 'unknown-unit'],
    ['३', 'not-a-number'],
    ['', 'empty'],
    [' \u00a0\t', 'empty'],
    ['\u200b', 'empty'],
    ['1e999', 'too-large'],
    ['1e308 t', 'too-large'],
    [`${'9'.repeat(400)}`, 'too-large'],
    [`${'9'.repeat(400)}/${'9'.repeat(400)}`, 'too-large'],
  ])('%j: %s', (text, code) => {
    expect(problem(text).code).toBe(code);
  });

  test('text that cannot be read is returned trimmed', () => {
    expect(problem(' abc ')).toEqual({ code: 'not-a-number', read: 'abc' });
  });
});
