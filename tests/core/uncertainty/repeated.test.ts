import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { repeated } from '../../../src/core/uncertainty/repeated.ts';

const weighings = (...values: number[]) => repeated({ values, kind: 'mass' });

describe('repeated readings', () => {
  test('the mean and its ± of three weighings are those worked out by hand', () => {
    const { mean, deviation, uncertainty, plusMinus } = weighings(1.6, 1.62, 1.64);
    expect(mean).toBeCloseTo(1.62, 12);
    expect(deviation).toBeCloseTo(0.02, 12);
    expect(uncertainty).toBeCloseTo(0.02 / Math.sqrt(3), 12);
    expect(plusMinus).toBeCloseTo((4.302652729749 * 0.02) / Math.sqrt(3), 6);
  });

  test('one reading has no scatter, and two a wide Student’s t interval', () => {
    expect(weighings(1.6).plusMinus).toBeUndefined();
    const two = weighings(1.6, 1.62);
    expect(two.plusMinus! / two.uncertainty!).toBeCloseTo(12.706, 3);
  });

  test('a shift moves the mean and nothing else', () => {
    const value = fc.double({ min: -10, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.array(value, { minLength: 2, maxLength: 9 }), value, (values, shift) => {
        const one = weighings(...values);
        const two = weighings(...values.map((x) => x + shift));
        expect(two.mean).toBeCloseTo(one.mean + shift, 9);
        expect(two.plusMinus).toBeCloseTo(one.plusMinus!, 6);
      }),
    );
  });

  test('refuses an empty list and a reading that is NaN', () => {
    expect(() => weighings()).toThrow(DomainError);
    expect(() => weighings(1, Number.NaN)).toThrow(DomainError);
  });
});
