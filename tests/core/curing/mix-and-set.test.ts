import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acceleratorFactor, chlorideSet } from '../../../src/core/curing/accelerator.ts';
import { type AgeLaw, fhpFactor } from '../../../src/core/curing/age-factor.ts';
import {
  type Ingredient,
  iceFor,
  mixTemperature,
  waterTemperatureFor,
} from '../../../src/core/curing/mix-temperature.ts';
import { quicken } from '../../../src/core/curing/quicken.ts';
import { setByTemperature, setRace, thirdRuleFactor } from '../../../src/core/curing/set.ts';
import { sabinFactors, sabinSet } from '../../../src/core/curing/set-by-water.ts';
import { DomainError } from '../../../src/core/domain-error.ts';

const dry: readonly Ingredient[] = [
  { mass: 400, temperature: 288.15, specificHeat: 1140 },
  { mass: 100, temperature: 283.15, specificHeat: 770 },
];
const water = (mass: number, temperature: number): Ingredient => ({
  mass,
  temperature,
  specificHeat: 4187,
});

describe('mix temperature', () => {
  test('lies between the coldest and the warmest ingredient', () => {
    const ingredient = fc.record({
      mass: fc.double({ min: 0.01, max: 1000, noNaN: true }),
      temperature: fc.double({ min: 274, max: 350, noNaN: true }),
      specificHeat: fc.double({ min: 500, max: 4200, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(ingredient, { minLength: 1, maxLength: 6 }), (ingredients) => {
        const { temperature } = mixTemperature({ ingredients });
        const all = ingredients.map((each) => each.temperature);
        expect(temperature).toBeGreaterThanOrEqual(Math.min(...all) - 1e-9);
        expect(temperature).toBeLessThanOrEqual(Math.max(...all) + 1e-9);
      }),
    );
  });

  test('water of the temperature asked for gives the mix asked for', () => {
    fc.assert(
      fc.property(fc.double({ min: 280, max: 310, noNaN: true }), (wanted) => {
        const { temperature } = waterTemperatureFor({ others: dry, water: 200, wanted });
        fc.pre(temperature > 273.15);
        const mixed = mixTemperature({ ingredients: [...dry, water(200, temperature)] });
        expect(mixed.temperature).toBeCloseTo(wanted, 9);
      }),
    );
  });

  test('hot, impossible and icy water are told', () => {
    const code = (wanted: number) =>
      waterTemperatureFor({ others: dry, water: 200, wanted }).notes[0]?.code;
    expect(code(293.15)).toBeUndefined();
    expect(code(325)).toBe('hot-water');
    expect(code(350)).toBe('impossible');
    expect(code(275)).toBe('needs-ice');
  });

  test('ice asked for gives the mix asked for, from 0 °C and from −10 °C', () => {
    for (const iceTemperature of [273.15, 263.15]) {
      const { mass, notes } = iceFor({
        others: dry,
        water: 200,
        waterTemperature: 293.15,
        wanted: 283.15,
        iceTemperature,
      });
      expect(notes).toEqual([]);
      const mixed = mixTemperature({
        ingredients: [...dry, water(200 - mass, 293.15)],
        ice: { mass, temperature: iceTemperature },
      });
      expect(mixed.temperature).toBeCloseTo(283.15, 9);
    }
    const all = iceFor({
      others: [{ mass: 400, temperature: 370, specificHeat: 1140 }],
      water: 50,
      waterTemperature: 330,
      wanted: 274,
    });
    expect(all).toEqual({ mass: 50, notes: [{ code: 'not-enough', of: 'ice' }] });
  });

  test('ice the mix cannot melt is left over at 0 °C, heat for heat', () => {
    const ingredients = [water(100, 283.15)];
    const { temperature, iceLeft, notes } = mixTemperature({
      ingredients,
      ice: { mass: 50, temperature: 273.15 },
    });
    expect(temperature).toBe(273.15);
    expect((50 - iceLeft) * 333_550).toBeCloseTo(100 * 4187 * 10, 6);
    expect(notes).toEqual([{ code: 'ice-left', of: 'ice' }]);
  });

  test('refuses a mix that would freeze and ice above 0 °C', () => {
    expect(() => mixTemperature({ ingredients: [water(1, 270)] })).toThrow(DomainError);
    expect(() => mixTemperature({ ingredients: dry, ice: { mass: 1, temperature: 280 } })).toThrow(
      DomainError,
    );
    expect(() => mixTemperature({ ingredients: [] })).toThrow(DomainError);
  });
});

describe('set by temperature', () => {
  const reference = { initial: 3 * 3600, final: 5 * 3600 };

  test('at the reference temperature nothing changes, and there and back is no change', () => {
    const same = setByTemperature({
      reference,
      referenceTemperature: 293.15,
      temperature: 293.15,
      law: { law: 'arrhenius', activationEnergy: 40_000 },
    });
    expect(same.arrhenius).toEqual(reference);
    expect(same.third).toEqual(reference);
    const there = thirdRuleFactor({ referenceTemperature: 293, temperature: 280 });
    const back = thirdRuleFactor({ referenceTemperature: 280, temperature: 293 });
    expect(there * back).toBeCloseTo(1, 12);
  });

  test('colder is slower by both, and they keep within a quarter near 20 °C', () => {
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

  test('below 40 °F the rule is left behind and said so', () => {
    const { notes } = setByTemperature({
      reference,
      referenceTemperature: 293.15,
      temperature: 276,
      law: { law: 'arrhenius', activationEnergy: 40_000 },
    });
    expect(notes).toEqual([{ code: 'outside-range', of: 'temperature' }]);
  });

  test('by the variable law it is slower in the cold than by one energy, as the age page counts', () => {
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

  test('refuses a final set before the initial', () => {
    expect(() =>
      setByTemperature({
        reference: { initial: 2, final: 1 },
        referenceTemperature: 293,
        temperature: 293,
        law: { law: 'fhp' },
      }),
    ).toThrow(DomainError);
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

  test('between two rows it is half way', () => {
    expect(sabinSet({ cement: 'B', waterCement: 0.31 })).toMatchObject({
      initial: 14 * 60,
      final: 330 * 60,
    });
  });

  test('factors span both cements', () => {
    const { initial, final, notes } = sabinFactors({ from: 0.3, to: 0.36 });
    expect(notes).toEqual([]);
    expect(initial[1]).toBeCloseTo(38 / 7, 9);
    expect(final[0]).toBeLessThan(final[1]);
    expect(sabinFactors({ from: 0.3, to: 0.55 }).notes).toHaveLength(1);
  });
});

describe('accelerators', () => {
  test('calcium chloride: never beyond 2 %, never with steel', () => {
    expect(() => chlorideSet({ dose: 0.0201, steel: false })).toThrow(DomainError);
    expect(() => chlorideSet({ dose: 0.005, steel: true })).toThrow(/steel/);
    expect(chlorideSet({ dose: 0, steel: true }).factor).toBe(1);
    const full = chlorideSet({ dose: 0.02, steel: false });
    expect(full.warmth).toBeCloseTo(22 / 1.8, 9);
    expect(full.shortest).toBeCloseTo(1 / 3, 9);
    expect(full.shortest).toBeLessThan(full.factor);
  });

  test('another product goes by its own sheet', () => {
    const sheet = { lowest: 0.005, highest: 0.02, claimed: 0.4 };
    expect(acceleratorFactor({ ...sheet, dose: 0.01 }).factor).toBeCloseTo(0.7, 12);
    expect(acceleratorFactor({ ...sheet, dose: 0.001 }).notes).toContainEqual({
      code: 'outside-range',
      of: 'dose',
    });
    expect(() => acceleratorFactor({ ...sheet, dose: 0.03 })).toThrow(DomainError);
  });
});

describe('the race', () => {
  test('whichever is shorter comes first', () => {
    expect(setRace({ initialSet: 7200, foamTime: 3600 })).toMatchObject({
      againstFoam: 2,
      first: 'foam',
      settlingBySet: undefined,
    });
    expect(setRace({ initialSet: 3600, foamTime: 3600 }).first).toBe('set');
  });

  test('sinking carries on to set at its pace, and never back', () => {
    const of = { initialSet: 7200, foamTime: 3600 };
    expect(setRace({ ...of, settling: { depth: 0.002, after: 1800 } }).settlingBySet).toBeCloseTo(
      0.008,
      12,
    );
    expect(setRace({ ...of, settling: { depth: 0.002, after: 9000 } }).settlingBySet).toBe(0.002);
  });

  test('ways are listed cheapest first, and chloride with steel is barred', () => {
    const of = {
      set: { initial: 3 * 3600, final: 5 * 3600 },
      temperature: 283.15,
      law: { law: 'fhp' } as const,
      mixWarmer: 8,
      roomWarmer: 10,
      rapidFactor: 0.7,
      chlorideDose: 0.02,
    };
    const ways = quicken({ ...of, steel: false });
    expect(ways.map((way) => way.way)).toEqual([
      'warmer-water',
      'warmer-room',
      'rapid-cement',
      'calcium-chloride',
    ]);
    for (const { factor, allowed } of ways) {
      expect(factor).toBeLessThan(1);
      expect(allowed).toBe(true);
    }
    const barred = quicken({ ...of, steel: true }).at(-1)!;
    expect(barred).toMatchObject({ way: 'calcium-chloride', allowed: false, factor: 1 });
  });
});
