import { describe, expect, test } from 'vitest';
import { designBatch } from '../../../src/core/mix/batch-design.ts';
import { equivalent, type Ingredients } from '../../../src/core/mix/ingredients.ts';
import { expectLimits } from '../refuses.ts';

const neat: Ingredients = { binder: [{ kind: 'portland', share: 1 }], waterCement: 0.5 };
const of = (more: Partial<Ingredients>) => equivalent({ ...neat, ...more });
const plain = of({});

describe('all solids beside the binder are combined into one', () => {
  test('with the masses and volumes of its parts, by hand', () => {
    const found = of({
      sand: { ratio: 1, density: 2500, absorption: 0.25 },
      lightFiller: { ratio: 0.5, density: 500 },
      pigment: { share: 0.05, density: 5000 },
    });
    expect(found.sandCement).toBeCloseTo(1.55, 12);
    // 0.4, 1 and 0.01 litres to a kilogram of binder.
    expect(found.sandDensity).toBeCloseTo(1550 / 1.41, 9);
    // A fifth of the surface-dry sand is the water in it.
    expect(found.dry).toBeCloseTo(0.8 + 0.5 + 0.05, 12);
    expect(found.fibreShare).toBe(0);
    expect(found.fibreMass).toBe(0);
  });

  test('including the solids of an admixture, at the density of water', () => {
    const found = of({ admixture: { share: 0.01, waterShare: 0.6 } });
    expect(found).toEqual({
      ...plain,
      sandCement: 0.004,
      sandDensity: expect.closeTo(1000, 9),
      dry: 0.004,
    });
    expect(of({ admixture: { share: 0.01, waterShare: 1 } })).toEqual(plain);
  });

  test('except fibre, which is dosed by the volume of the mix', () => {
    // 1 % of polypropylene of 900 kg/m³.
    const found = of({ fibre: { kind: 'polypropylene', share: 0.01 } });
    expect(found).toEqual({ ...plain, fibreShare: 0.01, fibreMass: 9 });
  });
});

describe('each ingredient has its limits', () => {
  test('sand and a light filler', () => {
    for (const which of ['sand', 'lightFiller'])
      expectLimits(
        (filler) => of({ [which]: filler }),
        { ratio: 1, density: 2650, absorption: 0.01 },
        {
          ratio: { takes: [0, 10], refuses: [-0.1, 10.1], as: 'fillerRatio' },
          density: { takes: [100, 5000], refuses: [99, 5001], as: 'fillerDensity' },
          absorption: { takes: [0, 1], refuses: [-0.01, 1.01] },
        },
      );
  });

  test('pigment, an admixture and fibre', () => {
    expectLimits(
      (pigment) => of({ pigment }),
      { share: 0.05, density: 5000 },
      {
        share: { takes: [0, 1], refuses: [-0.01, 1.01, Number.NaN], as: 'pigmentShare' },
        density: { takes: [1000, 8000], refuses: [999, 8001], as: 'pigmentDensity' },
      },
    );
    expectLimits(
      (admixture) => of({ admixture }),
      { share: 0.01, waterShare: 0.6 },
      {
        share: { takes: [0, 1], refuses: [-0.01, 1.01, Number.NaN], as: 'admixtureShare' },
        waterShare: { takes: [0, 1], refuses: [-0.01, 1.01] },
      },
    );
    expectLimits(
      ({ share }: { share: number }) => of({ fibre: { kind: 'steel', share } }),
      { share: 0.01 },
      { share: { takes: [0, 0.1], refuses: [-0.01, 0.101], as: 'fibreShare' } },
    );
  });

  test('an ingredient of amount 0 is not checked for density or moisture', () => {
    const none = {
      sand: { ratio: 0, density: 0, moisture: 9, absorption: -1 },
      lightFiller: { ratio: 0, density: -1, moisture: -1 },
      pigment: { share: 0, density: 0 },
      admixture: { share: 0, waterShare: 9 },
    };
    expect(of(none)).toEqual(plain);
    const batch = { volume: 0.1, target: { wetDensity: 600 }, foamDensity: 80, ...neat };
    expect(designBatch({ ...batch, ...none }).waterToAdd).toBe(designBatch(batch).waterToAdd);
  });
});
