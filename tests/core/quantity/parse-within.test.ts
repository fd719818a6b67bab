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
    ['2,007 + 1,5 kg', 3.507],
    // Twice is no decimal comma.
    ['1,234,567 mg', 1.234567],
  ])('%j is %s where the range leaves that alone', (text, value) => {
    expect(read(text, upTo(200))).toBeCloseTo(value, 12);
  });

  test('is a thousands mark where only that is allowed', () => {
    expect(read('1,951', (si) => si >= 10)).toBe(1951);
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

test('all else is read as it stands, allowed or not', () => {
  expect(read('300', upTo(200))).toBe(300);
  expect(read('3 L', upTo(200))).toBe('other-kind');
});
