import { describe, expect, test } from 'vitest';
import { acceleratorFactor, chlorideSet } from '../../../src/core/curing/accelerator.ts';
import { type AgeLaw, fhpFactor } from '../../../src/core/curing/age-factor.ts';
import { EARLIEST_SET, setByTemperature } from '../../../src/core/curing/set.ts';
import { sabinFactors, sabinSet } from '../../../src/core/curing/set-by-water.ts';
import { thirdRuleFactor } from '../../../src/core/curing/third-rule.ts';
import { DomainError } from '../../../src/core/domain-error.ts';
import { expectLimits } from '../refuses.ts';

describe('set by temperature', () => {
  const reference = { initial: 3 * 3600, final: 5 * 3600 };

  test('is unchanged at the reference temperature, and after a change there and back', () => {
    const same = setByTemperature({
      reference,
      referenceTemperature: 293.15,
      temperature: 293.15,
      law: { law: 'arrhenius', activationEnergy: 40_000 },
    });
    expect(same.arrhenius).toEqual(reference);
    expect(same.third).toEqual(reference);
    expect(thirdRuleFactor(-13) * thirdRuleFactor(13)).toBeCloseTo(1, 12);
    expect(thirdRuleFactor(-10 / 1.8)).toBeCloseTo(4 / 3, 12);
    expect(thirdRuleFactor(10 / 1.8)).toBeCloseTo(3 / 4, 12);
    expect(() => thirdRuleFactor(Number.NaN)).toThrow(DomainError);
  });

  test('is slower in the cold by both laws, which agree within a quarter near 20 °C', () => {
    for (const celsius of [10, 15, 25, 30]) {
      const { arrhenius, third } = setByTemperature({
        reference,
        referenceTemperature: 293.15,
        temperature: 273.15 + celsius,
        law: { law: 'arrhenius', activationEnergy: 40_000 },
      });
      expect(arrhenius.initial > reference.initial).toBe(celsius < 20);
      expect(third.initial > reference.initial).toBe(celsius < 20);
      expect(Math.abs(Math.log(arrhenius.initial / third.initial))).toBeLessThan(0.25);
    }
  });

  test('notes a temperature below 40 °F as outside the rule', () => {
    const { notes } = setByTemperature({
      reference,
      referenceTemperature: 293.15,
      temperature: 276,
      law: { law: 'arrhenius', activationEnergy: 40_000 },
    });
    expect(notes).toEqual([{ code: 'outside-range', of: 'temperature' }]);
  });

  test('in the cold is slower by the FHP law than by a constant activation energy', () => {
    const at = (law: AgeLaw) =>
      setByTemperature({
        reference,
        referenceTemperature: 293.15,
        temperature: 278.15,
        law,
      }).arrhenius.initial / reference.initial;
    expect(at({ law: 'fhp' })).toBeCloseTo(1 / fhpFactor({ temperature: 278.15 }), 12);
    expect(at({ law: 'fhp' })).toBeGreaterThan(at({ law: 'arrhenius', activationEnergy: 42_500 }));
  });

  test('a reference found at another temperature is first brought to 20 °C', () => {
    const law = { law: 'fhp' } as const;
    const warm = setByTemperature({
      reference,
      referenceTemperature: 303.15,
      temperature: 293.15,
      law,
    }).arrhenius;
    const back = setByTemperature({
      reference: warm,
      referenceTemperature: 293.15,
      temperature: 303.15,
      law,
    }).arrhenius;
    expect(back.initial).toBeCloseTo(reference.initial, 6);
    expect(warm.initial).toBeGreaterThan(reference.initial);
  });

  test.each([
    ['before the initial', 1, /initial|final/],
    ['beyond any', 1e300, /final/],
  ])('refuses a final set %s', (_, final, says) => {
    const ask = () =>
      setByTemperature({
        reference: { initial: 2, final },
        referenceTemperature: 293,
        temperature: 250,
        law: { law: 'fhp' },
      });
    expect(ask).toThrow(DomainError);
    expect(ask).toThrow(says);
  });
});

describe('set by water', () => {
  test('more water is never quicker, and outside the rows the end holds', () => {
    for (const cement of ['A', 'B'] as const) {
      let before = 0;
      for (let w = 0.2; w < 0.5; w += 0.005) {
        const { initial, final } = sabinSet({ cement, waterCement: w });
        expect(final).toBeGreaterThanOrEqual(initial);
        expect(final).toBeGreaterThanOrEqual(before);
        before = final;
      }
    }
    const wet = sabinSet({ cement: 'A', waterCement: 0.5 });
    expect(wet).toMatchObject({ initial: 55 * 60, final: 85 * 60 });
    expect(wet.notes).toEqual([{ code: 'outside-range', of: 'waterCement' }]);
  });

  test('half way between two rows the factor is the mean', () => {
    expect(sabinSet({ cement: 'B', waterCement: 0.31 })).toMatchObject({
      initial: 14 * 60,
      final: 330 * 60,
    });
  });

  test('factors span both cements', () => {
    const { initial, final } = sabinFactors({ from: 0.3, to: 0.36 })!;
    expect(initial[1]).toBeCloseTo(38 / 7, 9);
    expect(final[0]).toBeLessThan(final[1]);
  });

  test('a cement whose rows do not cover the change is left out, and the range of the others is given', () => {
    const [a, b] = [
      { from: 0.267, to: 0.4 },
      { from: 0.24, to: 0.36 },
    ];
    const covers = (from: number, to: number) => sabinFactors({ from, to })?.covers;
    expect(covers(0.3, 0.36)).toEqual([a, b]);
    expect(covers(0.3, 0.55)).toEqual([a, b]);
    expect(covers(0.349, 0.6)).toEqual([a, b]);
    expect(covers(0.351, 0.6)).toEqual([a]);
    expect(covers(0.36, 0.6)).toEqual([a]);
    expect(covers(0.2, 0.276)).toEqual([b]);
    expect(covers(0.2, 0.278)).toEqual([a, b]);
    for (const [from, to] of [
      [0.2, 0.24],
      [0.2, 0.249],
      [0.391, 0.6],
      [0.4, 0.6],
    ] as const)
      expect(covers(from, to)).toBeUndefined();
    // All that is asked, however little.
    expect(covers(0.3, 0.301)).toEqual([a, b]);
    // A alone: from 0.36 to 0.4, of (42…46) + 27/31 × 4 = 45.48 to 55 minutes.
    expect(sabinFactors({ from: 0.36, to: 0.6 })!.initial[0]).toBeCloseTo(55 / 45.4839, 4);
    expect(sabinFactors({ from: 0.36, to: 0.6 })!.initial[1]).toBeCloseTo(55 / 45.4839, 4);
  });
});

describe('accelerators', () => {
  test('calcium chloride is refused beyond 2 % and with steel', () => {
    expect(() => chlorideSet({ dose: 0.0201, steel: false })).toThrow(DomainError);
    expect(() => chlorideSet({ dose: 0.005, steel: true })).toThrow(/steel/);
    expect(chlorideSet({ dose: 0, steel: true }).factor).toBe(1);
    const full = chlorideSet({ dose: 0.02, steel: false });
    expect(full.warmth).toBeCloseTo(22 / 1.8, 9);
    expect(full.shortest).toBeCloseTo(1 / 3, 9);
    expect(full.shortest).toBeLessThan(full.factor);
  });

  test('another product goes by its data sheet', () => {
    const sheet = { lowest: 0.005, highest: 0.02, claimed: 0.4 };
    expect(acceleratorFactor({ ...sheet, dose: 0.01 }).factor).toBeCloseTo(0.7, 12);
    expect(acceleratorFactor({ ...sheet, dose: 0.001 }).notes).toContainEqual({
      code: 'outside-range',
      of: 'dose',
    });
    expect(() => acceleratorFactor({ ...sheet, dose: 0.03 })).toThrow(DomainError);
  });

  test('a data sheet holds from its lowest dose up; a dose of 0 is the plain mix', () => {
    const sheet = { lowest: 0.005, highest: 0.02, claimed: 0.4 };
    const codes = (dose: number) =>
      acceleratorFactor({ ...sheet, dose }).notes.map(({ code, of }) => `${code} ${of}`);
    expect(codes(0.0049)).toEqual(['outside-range dose']);
    for (const within of [0, 0.005, 0.01, 0.02]) expect(codes(within)).toEqual([]);
    expect(acceleratorFactor({ ...sheet, dose: 0 }).factor).toBe(1);
    expect(acceleratorFactor({ ...sheet, dose: 0.02 }).factor).toBeCloseTo(0.4, 12);
  });

  test('refuses a data sheet whose lowest dose exceeds its highest, and a claim that is no share', () => {
    expectLimits(
      acceleratorFactor,
      { dose: 0, lowest: 0.005, highest: 0.02, claimed: 0.4 },
      {
        dose: { takes: [0, 0.02], refuses: [-0.001, 0.0201] },
        lowest: { takes: [0], refuses: [-0.001] },
        highest: { takes: [0.0051], refuses: [0.005, 0.004] },
        claimed: { takes: [0.01, 1], refuses: [0, -0.1, 1.01] },
      },
    );
  });
});

test('the stronger the class, the sooner a cement may set: 75, 60 and 45 minutes', () => {
  // EN 197-1, Table 3, from memory.
  const minutes = (['32.5', '42.5', '52.5'] as const).map((each) => EARLIEST_SET[each] / 60);
  expect(minutes).toEqual([75, 60, 45]);
});
