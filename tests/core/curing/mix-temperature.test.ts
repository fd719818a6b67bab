import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Ingredient,
  iceAsWater,
  iceFor,
  mixTemperature,
  waterTemperatureFor,
} from '../../../src/core/curing/mix-temperature.ts';
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

  test('with ice as well, the water asked for gives the mix asked for', () => {
    for (const temperature of [273.15, 263.15]) {
      const ice = { mass: 20, temperature };
      const asked = waterTemperatureFor({ others: dry, water: 200, wanted: 290, ice });
      const mixed = mixTemperature({ ingredients: [...dry, water(200, asked.temperature)], ice });
      expect(mixed.temperature).toBeCloseTo(290, 9);
    }
    expect(() =>
      waterTemperatureFor({
        others: dry,
        water: 200,
        wanted: 290,
        ice: { mass: 1, temperature: 274 },
      }),
    ).toThrow(DomainError);
  });

  test('ice counts as water colder by its latent heat', () => {
    // 333.55 ÷ 4.187, and 21 kJ/kg more from −10 °C.
    expect(iceAsWater(273.15) - 273.15).toBeCloseTo(-79.663, 3);
    expect(iceAsWater(263.15) - 273.15).toBeCloseTo(-84.679, 3);
    expect(() => iceAsWater(273.2)).toThrow(DomainError);
  });

  test('notes water that is hot, above boiling or below freezing', () => {
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
