import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../../src/core/domain-error.ts';
import { speciate } from '../../../../src/core/water/carbonate/speciate.ts';

describe('a water of known pH and alkalinity', () => {
  // Davies' equation makes ions in brine more active than they are many, so that the search starts short
  // of its goal and has to double its reach, several times in the strongest.
  test.each([
    [4, 2],
    [7, 4.5],
    [10, 2],
    [12, 4.5],
  ])('is found again by its carbon, in brine too: pH %d, %d mol/kg', (pH, salt) => {
    const brine = { temperature: 298.15, otherCations: salt, activity: 'davies' as const };
    const carbon = 2e-3;
    const { alkalinity } = speciate(brine, { pH, carbon });
    expect(speciate(brine, { pH, alkalinity }).carbon / carbon).toBeCloseTo(1, 9);
  });

  test('has at least the alkalinity of its hydroxide, which a refusal gives', () => {
    const caustic = { temperature: 293.15, sodium: 0.01 };
    const { alkalinity: hydroxide } = speciate(caustic, { pH: 11.5, carbon: 0 });
    // pKw is 14.17 at 20 °C: OH⁻ of activity 2.1 mmol/kg, and more of it than that.
    expect(hydroxide).toBeGreaterThan(2.1e-3);
    const ask = (alkalinity: number) => speciate(caustic, { pH: 11.5, alkalinity });
    expect(ask(hydroxide).carbon).toBeLessThan(1e-12);
    // A thousandth above it is carbonate: at pH 11.5 nearly all CO₃²⁻, two equivalents a mole.
    const excess = 1e-3 * hydroxide;
    expect(ask(hydroxide + excess).carbon / (excess / 2)).toBeCloseTo(1, 1);
    for (const short of [1e-3, 1e-6]) {
      let refusal: unknown;
      try {
        ask(hydroxide * (1 - short));
      } catch (error) {
        refusal = error;
      }
      expect(refusal).toBeInstanceOf(DomainError);
      const { quantity, because, allowed } = refusal as DomainError;
      expect({ quantity, because }).toEqual({
        quantity: 'alkalinity',
        because: 'alkalinity-below-hydroxide',
      });
      expect(allowed.min! / hydroxide).toBeCloseTo(1, 6);
    }
  });

  test('accepts pH 7.00 for pure water at 25 °C', () => {
    for (const pH of [7, 6.99]) {
      const { carbon } = speciate({ temperature: 298.15 }, { pH, alkalinity: 0 });
      expect(carbon).toBeLessThan(1e-8);
    }
    expect(() => speciate({ temperature: 298.15 }, { pH: 7.1, alkalinity: 0 })).toThrow(
      'alkalinity-below-hydroxide',
    );
  });
});
