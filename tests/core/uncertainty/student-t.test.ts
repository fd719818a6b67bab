import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { studentT } from '../../../src/core/uncertainty/student-t.ts';

describe("Student's t", () => {
  // The table in every statistics book, to its three decimals.
  test.each([
    [1, 12.706],
    [2, 4.303],
    [3, 3.182],
    [4, 2.776],
    [5, 2.571],
    [10, 2.228],
    [30, 2.042],
  ])('95 % with %i degrees of freedom is %f', (freedom, expected) => {
    expect(studentT({ freedom, confidence: 0.95 })).toBeCloseTo(expected, 3);
  });

  test('agrees with the closed forms for one and two degrees of freedom', () => {
    for (const p of [0.1, 0.5, 0.9, 0.99]) {
      expect(studentT({ freedom: 1, confidence: p })).toBeCloseTo(Math.tan((Math.PI * p) / 2), 8);
      const two = p * Math.sqrt(2 / (1 - p ** 2));
      expect(studentT({ freedom: 2, confidence: p })).toBeCloseTo(two, 8);
    }
  });

  test('refuses fractional degrees of freedom and a confidence of 0 or 1', () => {
    expect(() => studentT({ freedom: 2.5, confidence: 0.95 })).toThrow(DomainError);
    expect(() => studentT({ freedom: 0, confidence: 0.95 })).toThrow(DomainError);
    expect(() => studentT({ freedom: 3, confidence: 1 })).toThrow(DomainError);
  });
});
