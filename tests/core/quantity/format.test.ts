import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromUnit } from '../../../src/core/quantity/convert.ts';
import {
  formatNumber,
  formatPlain,
  formatQuantity,
  type Precision,
} from '../../../src/core/quantity/format.ts';
import { parseQuantity } from '../../../src/core/quantity/parse.ts';

describe('formatNumber', () => {
  test.each<[number, Precision, string]>([
    [1234.5, { significant: 3 }, '1230'],
    [3.45678, { significant: 3 }, '3.46'],
    [3, { significant: 3 }, '3.00'],
    [9.996, { significant: 3 }, '10.0'],
    [-2.5, { significant: 2 }, '\u22122.5'],
    [12345.678, { significant: 7 }, '12\u202f345.68'],
    [1234567, { significant: 7 }, '1\u202f234\u202f567'],
    [9999, { significant: 4 }, '9999'],
    [184.9, { significant: 2, toward: 'up' }, '190'],
    [180, { significant: 2, toward: 'up' }, '180'],
    [180.00000000000003, { significant: 2, toward: 'up' }, '180'],
    [0.0671, { significant: 2, toward: 'up' }, '0.068'],
    [185.1, { significant: 2, toward: 'up' }, '190'],
    [99.2, { significant: 2, toward: 'up' }, '100'],
    [0.29999999999999993, { significant: 2, toward: 'down' }, '0.30'],
    [12.384, { significant: 3, toward: 'down' }, '12.3'],
    [12.31, { significant: 3, toward: 'down' }, '12.3'],
    [9.996, { significant: 3, toward: 'down' }, '9.99'],
    [10, { significant: 3, toward: 'down' }, '10.0'],
    [-1.001, { significant: 3, toward: 'up' }, '\u22121.00'],
    [-1.009, { significant: 3, toward: 'up' }, '\u22121.00'],
    [-9.996, { significant: 3, toward: 'up' }, '\u22129.99'],
    [-1.001, { significant: 3, toward: 'down' }, '\u22121.01'],
    [-180, { significant: 2, toward: 'down' }, '\u2212180'],
    [0.0001, { significant: 3 }, '0.000100'],
    [0.000034, { significant: 3 }, '3.40×10⁻⁵'],
    [0.00001, { significant: 1 }, '1×10⁻⁵'],
    [9999999, { significant: 7 }, '9\u202f999\u202f999'],
    [1e7, { significant: 3 }, '1.00×10⁷'],
    [9999999.9, { significant: 3 }, '1.00×10⁷'],
    [11746988, { decimals: 0 }, '11\u202f746\u202f988'],
    [1e12, { decimals: 0 }, '1.000000000000×10¹²'],
    [-6.02214076e23, { significant: 4 }, '\u22126.022×10²³'],
    [0, { significant: 3 }, '0'],
    [-0, { significant: 3 }, '0'],
    [1.25, { decimals: 0 }, '1'],
    [9.96, { decimals: 1 }, '10.0'],
    [0.96, { decimals: 1 }, '1.0'],
    [0.06, { decimals: 1 }, '0.1'],
    [0.04, { decimals: 1 }, '0.0'],
    [-0.004, { decimals: 2 }, '0.00'],
    [0, { decimals: 2 }, '0.00'],
    [0.5, { decimals: 0 }, '1'],
    [1234567.89, { decimals: 1 }, '1\u202f234\u202f567.9'],
    [12.3456, { uncertainty: 0.3 }, '12.3'],
    [12.3456, { uncertainty: 0.0123 }, '12.346'],
    [12.3456, { uncertainty: 0.096 }, '12.35'],
    [12.3456, { uncertainty: 2 }, '12'],
    [1234, { uncertainty: 340 }, '1200'],
    [1234, { uncertainty: 140 }, '1230'],
    [1260, { uncertainty: 900 }, '1300'],
    [0.04, { uncertainty: 3 }, '0'],
    [700, { uncertainty: 3000 }, '1000'],
    [0.004, { uncertainty: 0.03 }, '0.00'],
    [3.2e-5, { uncertainty: 1e-6 }, '3.20×10⁻⁵'],
    [5.25, { uncertainty: 0 }, '5.25'],
    [1 / 3, { uncertainty: 0 }, '0.333333'],
    [1200, { uncertainty: 0 }, '1200'],
    [0, { uncertainty: 0 }, '0'],
    [5, { uncertainty: 1e-30 }, '5.00000000000000000000'],
  ])('%d with %o is %s', (x, how, shown) => {
    expect(formatNumber(x, how)).toBe(shown);
  });

  test('refuses numbers that are not finite and precisions out of range', () => {
    for (const x of [Number.NaN, Infinity, -Infinity])
      expect(() => formatNumber(x, { significant: 3 })).toThrow(RangeError);
    const wrong = [
      { significant: 0 },
      { significant: 2.5 },
      { decimals: -1 },
      { decimals: 21 },
      { significant: 21 },
      { atMost: -1 },
      { atMost: 0.5 },
      { atMost: 21 },
      { uncertainty: -1 },
      { uncertainty: Number.NaN },
      { uncertainty: Infinity },
    ];
    for (const how of wrong)
      expect(() => formatNumber(1, how), JSON.stringify(how)).toThrow(RangeError);
  });

  test('shows up to twenty digits, and no trailing decimals', () => {
    expect(formatNumber(0.5, { decimals: 20 })).toBe(`0.5${'0'.repeat(19)}`);
    expect(formatNumber(0.5, { significant: 20 })).toBe(`0.5${'0'.repeat(19)}`);
    expect(formatNumber(0.5, { atMost: 20 })).toBe('0.5');
  });

  test('shows a number within half of its last place, whatever the precision', () => {
    const how = fc.oneof(
      fc.integer({ min: 1, max: 12 }).map((significant) => ({ significant })),
      fc.integer({ min: 0, max: 12 }).map((decimals) => ({ decimals })),
      fc.double({ min: 1e-9, max: 1e6, noNaN: true }).map((uncertainty) => ({ uncertainty })),
    );
    fc.assert(
      fc.property(fc.double({ min: -1e12, max: 1e12, noNaN: true }), how, (x, precision) => {
        const shown = formatNumber(x, precision);
        const parsed = parseQuantity(shown, 'count');
        expect(parsed.ok, shown).toBe(true);
        const gap = Math.abs((parsed.ok ? parsed.number : 0) - x);
        const half =
          'significant' in precision
            ? 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(x) || 1)) + 1 - precision.significant)
            : 'decimals' in precision
              ? 0.5 * 10 ** -precision.decimals
              : precision.uncertainty / 2;
        expect(gap, shown).toBeLessThanOrEqual(half * (1 + 1e-9) + 1e-15 * Math.abs(x));
        expect(shown).not.toMatch(/^\u2212[0.]*$/);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('formatQuantity', () => {
  test('three significant digits and a no-break space', () => {
    expect(formatQuantity(81, 'density', 'g/L', undefined)).toEqual({
      number: '81.0',
      unit: 'g/L',
      text: '81.0\u00a0g/L',
    });
    expect(formatQuantity(0.45359237, 'mass', 'lb', undefined).text).toBe('1.00\u00a0lb');
  });

  test('a density is shown in whole numbers, in any unit', () => {
    const shown = [922, 964.4, 999.6, 1007.3, 1049, 12_345].map(
      (density) => formatQuantity(density, 'density', 'kg/m3').number,
    );
    expect(shown).toEqual(['922', '964', '1000', '1007', '1049', '12\u202f345']);
    expect(formatQuantity(1104, 'density', 'lb/ft3').number).toBe('68.9');
    expect(formatQuantity(1104, 'mass', 'kg').number).toBe('1100');
  });

  test('a dimensionless number has no unit', () => {
    expect(formatQuantity(12, 'count', '1', { decimals: 0 }).text).toBe('12');
  });

  test.each([
    [22, '22'],
    [3.847, '3.8'],
    [-0.04, '0'],
    [-5.06, '−5.1'],
    [104.96, '105'],
    [200, '200'],
  ])('a temperature has a tenth at most: %s °C is %s', (celsius, text) => {
    expect(formatQuantity(celsius + 273.15, 'temperature', 'degC').number).toBe(text);
  });

  test('an uncertainty of a temperature is converted as a difference', () => {
    expect(formatQuantity(293.15, 'temperature', 'degC', { uncertainty: 0.5 }).text).toBe(
      '20.0\u00a0°C',
    );
    expect(formatQuantity(293.15, 'temperature', 'degF', { uncertainty: 0.5 }).text).toBe(
      '68.0\u00a0°F',
    );
    expect(formatQuantity(10, 'mass', 'lb', { uncertainty: 0.1 }).number).toBe('22.0');
    expect(formatQuantity(10, 'mass', 'g', { uncertainty: 0.1 }).number).toBe('10\u202f000');
  });
});

describe('formatPlain', () => {
  test.each<[number, string]>([
    [0.2, '200'],
    [0.001, '1'],
    [1 / 3, '333.333'],
    [-0.0005, '-0.5'],
    [0, '0'],
    [-0, '0'],
    [1234.5678, '1234570'],
    [1e-12, '1e-9'],
  ])('%d kg is %s g', (si, plain) => {
    expect(formatPlain(si, 'mass', 'g', 6)).toBe(plain);
  });

  test('keeps as many digits as asked', () => {
    expect(formatPlain(1 / 3, 'mass', 'kg', 2)).toBe('0.33');
    expect(formatPlain(273.15, 'temperature', 'degC', 6)).toBe('0');
    expect(formatPlain(fromUnit(0, 'temperature', 'degF'), 'temperature', 'degF', 6)).toBe('0');
    expect(() => formatPlain(Number.NaN, 'mass', 'g', 6)).toThrow(RangeError);
  });
});
