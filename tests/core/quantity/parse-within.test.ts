import { describe, expect, test } from 'vitest';
import { parseWithin } from '../../../src/core/quantity/parse-within.ts';

const upTo = (most: number) => (si: number) => si >= 0 && si <= most;
const read = (text: string, allows: (si: number) => boolean) => {
  const parsed = parseWithin(text, 'mass', 'kg', allows);
  return parsed.ok ? parsed.value : parsed.problem.code;
};

describe('a comma that could be either mark', () => {
  test.each([
    ['2,007', 2.007],
    ['12,850 kg', 12.85],
    ['２，００７', 2.007],
    ['2\u200b,007', 2.007],
    ['2,007 + 1,5 kg', 3.507],
    // Both commas that could be either are taken alike.
    ['2,007 + 1,500 kg', 3.507],
    // Twice is no decimal comma.
    ['1,234,567 mg', 1.234567],
  ])('%j is %s where the range leaves that alone', (text, value) => {
    expect(read(text, upTo(200))).toBeCloseTo(value, 12);
  });

  test.each([
    ['1,951', 1951],
    ['1,951 + 250.5 kg', 'ambiguous'],
    ['1,951 + 250 kg', 2201],
    ['1,951 + 2,007', 3958],
    // By its other comma the reader writes decimals so: 255 would be read for 25,5.
    ['25,5 + 1,951', 'ambiguous'],
    ['1,951 + 0,500 kg', 'ambiguous'],
  ])('%j is %s where only a thousands mark is allowed', (text, value) => {
    expect(read(text, (si) => si >= 500)).toBe(value);
  });

  test.each([
    ['2,007', 5000],
    ['2,007 g', 200],
    ['500,000', 200],
    // The point tells which of two marks is which only to one who knows.
    ['1,234.5', 200],
    ['1.234.567', 200],
  ])('%j is not guessed up to %s', (text, most) => {
    expect(read(text, upTo(most))).toBe('ambiguous');
  });
});

describe('digits apart by plain spaces', () => {
  test.each([
    ['1 200', 1200],
    [' 1 200 kg', 1200],
    ['1 200,5 kg', 1200.5],
    ['2 450 g', 2.45],
    ['1 234 567 mg', 1.234567],
    ['1 200 + 300', 1500],
    ['１ ２００', 1200],
  ])('%j is one number, %s kg', (text, value) => {
    expect(read(text, upTo(2000))).toBeCloseTo(value, 9);
  });

  test('are one number too where it is too much: the limit is what is told of', () => {
    expect(read('1 200', upTo(1000))).toBeCloseTo(1200, 9);
  });

  test.each([
    ['1 20', 2000],
    ['0 120', 2000],
    ['12 3456', 99999],
    ['1 200 3', 2000],
    ['1 200 30 kg', 99999],
    ['1 200 - 1 300', 2000],
    ['1\t200', 2000],
  ])('%j stays several numbers up to %s kg', (text, most) => {
    expect(read(text, upTo(most))).toBe('several-numbers');
  });
});

describe('a thousands mark that passes what is allowed is not read as a decimal comma', () => {
  const MEGA = 1e6;
  test.each([
    // As a decimal comma 4.5 psi, in a receiver that is 3 % over its mark.
    ['4,500 psi', 'pressure', 'bar', 300e5],
    ['1,234 bar', 'pressure', 'bar', 300e5],
    ['4,500', 'pressure', 'psi', 300e5],
    ['2,500 L', 'volume', 'L', 1],
    ['1,000', 'volume', 'gal', 1],
    ['1,500', 'ratio', '1', 500],
    ['11,000', 'mass', 'lb', 200],
    ['11,000 lb', 'mass', 'kg', 200],
    // Who works in pounds writes kilograms as pounds.
    ['2,007 kg', 'mass', 'lb', 200],
    ['2,007 t', 'mass', 'kg', 5000],
    ['2,007 g', 'mass', 'kg', 1],
    ['1,500 MPa', 'stress', 'MPa', 100 * MEGA],
  ] as const)('%s of %s in a field of %s', (text, kind, shown, most) => {
    const parsed = parseWithin(text, kind, shown, upTo(most));
    expect(parsed).toMatchObject({ ok: false, problem: { code: 'ambiguous' } });
  });

  test('is one still where the decimal comma would leave too little', () => {
    expect(parseWithin('4,500 psi', 'pressure', 'bar', (si) => si >= 1e5)).toMatchObject({
      number: 4500,
    });
  });
});

test('all else is read as it stands, allowed or not', () => {
  expect(read('300', upTo(200))).toBe(300);
  expect(read('3 L', upTo(200))).toBe('unknown-unit');
});
