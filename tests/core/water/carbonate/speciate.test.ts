import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError, ifAllowed } from '../../../../src/core/domain-error.ts';
import { speciate, speciateWater } from '../../../../src/core/water/carbonate/speciate.ts';
import { SPECIES } from '../../../../src/core/water/carbonate/species.ts';
import { mains, solutes, waters } from './waters.ts';

const near = (ours: number, theirs: number, part: number, floor = 1e-12) =>
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(part * Math.abs(theirs) + floor);

describe('a speciated water', () => {
  test('is electrically neutral', () => {
    fc.assert(
      fc.property(waters, (water) => {
        const ions = SPECIES.map((s) => s.charge * water.molality[s.name]);
        const charge = ions.reduce((a, b) => a + b) + water.otherCations - water.chloride;
        const size = ions.reduce((a, b) => a + Math.abs(b), 0);
        near(charge, 0, 0, 1e-9 * size);
      }),
    );
  });

  test('conserves every ion', () => {
    fc.assert(
      fc.property(
        solutes,
        fc.double({ min: 5, max: 10, noNaN: true }),
        fc.double({ min: 1e-6, max: 5e-3, noNaN: true }),
        (salts, pH, carbon) => {
          const water = speciate(salts, { pH, carbon });
          for (const name of ['calcium', 'magnesium', 'sodium', 'sulfate'] as const)
            near(water[name], salts[name], 1e-9);
          near(water.carbon, carbon, 1e-9);
        },
      ),
    );
  });

  test('is found again from its CO₂ pressure, and from every other pair of values', () => {
    fc.assert(
      fc.property(waters, (water) => {
        const { pH, alkalinity, carbon, carbonDioxidePressure } = water;
        fc.pre(carbonDioxidePressure > 1e-6);
        const pairs = [
          { pH, alkalinity },
          { pH, carbonDioxidePressure },
          { alkalinity, carbon },
          { alkalinity, carbonDioxidePressure },
        ];
        for (const pair of pairs) {
          const again = speciate(water, pair);
          near(again.pH, pH, 0, 1e-7);
          near(again.carbon, carbon, 1e-7);
        }
      }),
    );
  });

  test('has exactly the alkalinity given, 0 included', () => {
    for (const temperature of [273.15, 283.15, 298.15, 323.15])
      for (const carbonDioxidePressure of [10, 42, 500, 5000]) {
        const of = (alkalinity: number) =>
          speciate({ temperature, calcium: 1e-3 }, { alkalinity, carbonDioxidePressure })
            .alkalinity;
        expect(of(0)).toBe(0);
        for (const little of [1e-9, -1e-9]) expect(of(little) / little).toBeCloseTo(1, 3);
      }
  });

  test('is found again from carbon and CO₂ where these are unambiguous', () => {
    fc.assert(
      fc.property(waters, (water) => {
        const { carbon, carbonDioxidePressure } = water;
        fc.pre(carbonDioxidePressure > 1e-4 && water.molality.carbonDioxide < 0.9 * carbon);
        const again = speciate(water, { carbon, carbonDioxidePressure });
        near(again.pH, water.pH, 0, 1e-6);
      }),
    );
  });

  test.each([
    [10.2, 0.77],
    [10.4, 1.26],
    [10.6, 1.81],
  ])('that soda makes strong under air has a solution by Davies too: pH %d', (pH, strength) => {
    const pressure = { pH, carbonDioxidePressure: 40 };
    const water = speciate({ temperature: 298.15, activity: 'davies' }, pressure);
    // Worked out apart, as if the salts left the activity of the water at 1: so it is a little less.
    expect(water.ionicStrength).toBeLessThan(strength);
    expect(water.ionicStrength).toBeGreaterThan(0.97 * strength);
  });

  test('is found again by Davies from pH and CO₂ up to the strongest water allowed', () => {
    const strong = fc.record({
      salts: solutes,
      pH: fc.double({ min: 9, max: 12.5, noNaN: true }),
      carbon: fc.double({ min: -3, max: 0.3, noNaN: true }).map((log) => 10 ** log),
    });
    fc.assert(
      fc.property(strong, ({ salts, pH, carbon }) => {
        const of = { ...salts, activity: 'davies' as const };
        const water = ifAllowed(() => speciate(of, { pH, carbon }));
        fc.pre(water !== undefined && water.ionicStrength < 4.999);
        const { carbonDioxidePressure } = water!;
        const again = speciate(of, { pH, carbonDioxidePressure });
        near(again.ionicStrength, water!.ionicStrength, 1e-7);
        near(again.carbon, carbon, 1e-7);
      }),
      { numRuns: 300 },
    );
  });

  test('is either found or refused as too concentrated: the search never fails between', () => {
    fc.assert(
      fc.property(
        solutes,
        fc.constantFrom('davies' as const, 'extended-debye-hueckel' as const),
        fc.double({ min: 4, max: 13, noNaN: true }),
        fc.double({ min: -1, max: 5, noNaN: true }).map((log) => 10 ** log),
        (salts, activity, pH, carbonDioxidePressure) => {
          try {
            speciate({ ...salts, activity }, { pH, carbonDioxidePressure });
          } catch (refusal) {
            expect(refusal).toMatchObject({ because: 'too-concentrated' });
          }
        },
      ),
      { numRuns: 1000 },
    );
  });

  test('has a higher pH the more alkalinity it has at the same carbon', () => {
    fc.assert(
      fc.property(waters, fc.double({ min: 1e-6, max: 1e-3, noNaN: true }), (water, more) => {
        const richer = speciateWater({ ...water, alkalinity: water.alkalinity + more });
        expect(richer.pH).toBeGreaterThan(water.pH);
      }),
    );
  });

  test('notes a salinity beyond its activity model', () => {
    const salty = (sodium: number) =>
      speciate({ temperature: 288.15, sodium }, { pH: 8, alkalinity: 2e-3 }).notes;
    expect(salty(0.09)).toEqual([]);
    expect(salty(0.2)).toEqual([{ code: 'outside-range', of: 'ionicStrength' }]);
  });

  test('without solutes has the pH of pure water', () => {
    const pure = speciate({ temperature: 298.15 }, { alkalinity: 0, carbon: 0 });
    expect(pure.pH).toBeCloseTo(7.0, 3);
    expect(pure.molality.hydrogen).toBeCloseTo(pure.molality.hydroxide, 15);
  });

  test('reports an imbalance when chloride is given, and none when it is left out', () => {
    expect(mains().chargeImbalance).toBe(0);
    const { chloride } = mains();
    const short = speciateWater({ ...mains(), chloride: chloride - 1e-4 });
    expect(short.chargeImbalance).toBeCloseTo(1e-4, 8);
  });

  test('agrees with Davies in fresh water, and differs in strong', () => {
    const of = (scale: number, activity: 'davies' | 'extended-debye-hueckel') =>
      speciate(
        { temperature: 298.15, activity, calcium: 0.5 * scale, sodium: scale },
        { alkalinity: 0.2 * scale, carbon: 0.2 * scale },
      ).pH;
    const apart = (scale: number) =>
      Math.abs(of(scale, 'davies') - of(scale, 'extended-debye-hueckel'));
    expect(apart(0.002)).toBeLessThan(0.01);
    expect(apart(0.3)).toBeGreaterThan(0.02);
  });
});

describe('an impossible water', () => {
  const salts = { temperature: 288.15 };
  const because = (work: () => unknown) => {
    try {
      work();
    } catch (refusal) {
      if (refusal instanceof DomainError) return refusal.because ?? refusal.quantity;
      throw refusal;
    }
    return 'nothing';
  };

  test.each([
    ['alkalinity-below-hydroxide', () => speciate(salts, { pH: 11, alkalinity: 1e-4 })],
    [
      'carbon-below-dissolved-gas',
      () => speciate(salts, { carbon: 1e-6, carbonDioxidePressure: 1000 }),
    ],
    ['too-concentrated', () => speciate(salts, { pH: 12, carbonDioxidePressure: 100 })],
    ['temperature', () => speciate({ temperature: 330 }, { pH: 7, alkalinity: 1e-3 })],
    ['pH', () => speciate(salts, { pH: 15, alkalinity: 1e-3 })],
    ['calcium', () => speciate({ ...salts, calcium: -1 }, { pH: 7, alkalinity: 1e-3 })],
    ['carbonDioxidePressure', () => speciate(salts, { pH: 7, carbonDioxidePressure: 0 })],
    ['alkalinity', () => speciate(salts, { carbon: 1e-3, alkalinity: Number.NaN })],
  ])('%s', (name, work) => {
    expect(because(work)).toBe(name);
  });
});
