import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { speciate } from '../../../../src/core/water/carbonate/speciate.ts';
import { boil } from '../../../../src/core/water/soften/boil.ts';
import {
  heldBack,
  ionExchange,
  resinCapacity,
  SALT_PER_EQUIVALENT,
} from '../../../../src/core/water/soften/ion-exchange.ts';
import {
  limeSodaForIons,
  limeSodaResidual,
  limeSodaToTarget,
} from '../../../../src/core/water/soften/lime-soda.ts';
import { sequester } from '../../../../src/core/water/soften/sequester.ts';
import {
  SETTLED_COLD,
  sodaForHardness,
  sodaMass,
  sodaMixUp,
  sodaMoles,
  softenWithSoda,
} from '../../../../src/core/water/soften/washing-soda.ts';
import { expectLimits } from '../../refuses.ts';
import { mains, solutes } from '../carbonate/waters.ts';

const water = mains();
const hardness = water.calcium + water.magnesium;

describe('washing soda', () => {
  test('never hardens a water, and softens it more the more there is', () => {
    fc.assert(
      fc.property(
        solutes,
        fc.double({ min: 5e-4, max: 6e-3, noNaN: true }),
        fc.double({ min: 0, max: 0.01, noNaN: true }),
        fc.double({ min: 0, max: 0.01, noNaN: true }),
        (salts, alkalinity, soda, more) => {
          const raw = speciate(salts, { pH: 7.5, alkalinity });
          const less = softenWithSoda({ water: raw, soda });
          const softer = softenWithSoda({ water: raw, soda: soda + more });
          expect(softer.hardness).toBeLessThanOrEqual(less.hardness + 1e-12);
          expect(less.hardness).toBeLessThanOrEqual(raw.calcium + raw.magnesium + 1e-12);
          expect(softer.water.pH).toBeGreaterThanOrEqual(less.water.pH - 1e-9);
          expect(less.water.magnesium).toBeCloseTo(raw.magnesium, 10);
        },
      ),
      { numRuns: 50 },
    );
  });

  test('finds the dose that gives the hardness asked for', () => {
    for (const target of [1e-3, 1.5e-3, 2.5e-3]) {
      const found = sodaForHardness({ water, target });
      expect(found.reached).toBe(true);
      if (!found.reached) continue;
      expect(found.softened.hardness).toBeCloseTo(target, 9);
      expect(softenWithSoda({ water, soda: found.soda }).hardness).toBeCloseTo(target, 9);
    }
  });

  test('reports a target below the magnesium as unreachable', () => {
    const found = sodaForHardness({ water, target: water.magnesium });
    expect(found).toMatchObject({ reached: false });
    if (!found.reached) expect(found.least).toBeGreaterThan(water.magnesium);
  });

  test('needs none for a water that is soft enough', () => {
    expect(sodaForHardness({ water, target: hardness })).toMatchObject({ reached: true, soda: 0 });
  });

  test('without soda keeps its hardness, even if supersaturated', () => {
    const { hardness: balanced, settled } = softenWithSoda({ water, soda: 0 });
    expect(balanced).toBeLessThan(0.99 * hardness);
    expect(settled.min).toBeCloseTo(hardness, 12);
    expect(settled.max).toBeCloseTo(hardness, 12);
  });

  test('leaves 30 to 35 mg/L in a cold bucket, above equilibrium', () => {
    const much = softenWithSoda({ water, soda: 5e-3 });
    expect(much.water.calcium).toBeLessThan(SETTLED_COLD.min / 1000);
    expect((much.settled.min - much.water.magnesium) * 100086.9).toBeCloseTo(30, 6);
    expect((much.settled.max - much.water.magnesium) * 100086.9).toBeCloseTo(35, 6);
    const soft = speciate({ temperature: 288.15, calcium: 1e-4 }, { pH: 7, alkalinity: 1e-4 });
    expect(softenWithSoda({ water: soft, soda: 1e-3 }).settled.max).toBeCloseTo(1e-4, 10);
  });

  test('refuses a water with negative sodium', () => {
    expect(() => softenWithSoda({ water: { ...water, sodium: -1e-3 }, soda: 1e-3 })).toThrow(
      'sodium',
    );
    expect(() => softenWithSoda({ water, soda: -1e-3 })).toThrow('soda');
  });

  test('precipitates as many moles as calcium is removed', () => {
    const { water: left, sludge } = softenWithSoda({ water, soda: 2e-3 });
    expect(sludge).toBeCloseTo((water.calcium - left.calcium) * 0.1000869, 12);
    const acid = speciate({ temperature: 288.15, calcium: 1e-4 }, { pH: 6, alkalinity: 1e-4 });
    expect(softenWithSoda({ water: acid, soda: 0 }).sludge).toBe(0);
  });

  test('in the wrong form is wrong by a factor of 2.7', () => {
    const soda = 2e-3;
    const weak = sodaMixUp({ water, soda, meant: 'anhydrous', used: 'decahydrate' });
    const strong = sodaMixUp({ water, soda, meant: 'decahydrate', used: 'anhydrous' });
    expect(weak.factor).toBeCloseTo(0.3704, 4);
    expect(strong.factor).toBeCloseTo(2.6997, 4);
    expect(weak.got.hardness).toBeGreaterThan(weak.meant.hardness);
    expect(strong.got.water.pH).toBeGreaterThan(strong.meant.water.pH + 0.3);
  });

  test('converts between mass and moles, both ways', () => {
    expect(sodaMass(1, 'decahydrate') / sodaMass(1, 'anhydrous')).toBeCloseTo(2.6997, 4);
    expect(sodaMoles(sodaMass(0.3, 'decahydrate'), 'decahydrate')).toBeCloseTo(0.3, 12);
  });
});

test('boiling takes carbonate hardness only, and never more than the alkalinity carries', () => {
  fc.assert(
    fc.property(solutes, fc.double({ min: 1e-4, max: 6e-3, noNaN: true }), (salts, alkalinity) => {
      const raw = speciate(salts, { pH: 7.3, alkalinity });
      const left = boil({ water: raw });
      const taken = raw.calcium + raw.magnesium - left.hardness;
      expect(taken).toBeGreaterThanOrEqual(-1e-12);
      expect(taken).toBeLessThanOrEqual(Math.min(raw.calcium, alkalinity / 2) + 1e-12);
    }),
    { numRuns: 50 },
  );
});

describe('ion exchange', () => {
  test('adds two sodium for each calcium, and lasts its capacity over the hardness', () => {
    const bed = ionExchange({ capacity: 20, hardness: 3.11 });
    expect(bed.volume).toBeCloseTo(20 / 6.22, 10);
    expect(bed.sodiumAdded).toBeCloseTo(6.22 * 0.02299, 5);
    expect(bed.salt).toBeGreaterThan(bed.leastSalt);
  });

  test('takes about 105 g of salt for each equivalent', () => {
    expect(SALT_PER_EQUIVALENT).toBeCloseTo(0.1051, 4);
  });

  test('lasts longer when some hardness is let through', () => {
    const all = ionExchange({ capacity: 20, hardness: 3 });
    expect(ionExchange({ capacity: 20, hardness: 3, leaves: 1 }).volume).toBeGreaterThan(
      all.volume,
    );
    expect(() => ionExchange({ capacity: 20, hardness: 3, leaves: 3 })).toThrow(RangeError);
  });

  test('removes nothing once it is exhausted', () => {
    expect(heldBack({ volumes: [1, 2], effluent: [5, 5], feed: 5 })).toBeCloseTo(0, 12);
    expect(heldBack({ volumes: [1, 2], effluent: [0, 0], feed: 5 })).toBe(10);
    expect(() => heldBack({ volumes: [2, 1], effluent: [0, 0], feed: 5 })).toThrow(RangeError);
    expect(() => heldBack({ volumes: [2, 3], effluent: [0], feed: 5 })).toThrow(RangeError);
  });
});

describe('lime and soda', () => {
  test('need no soda for a water that is all carbonate hardness', () => {
    const dose = limeSodaForIons({ calcium: 1, magnesium: 0.5, bicarbonate: 4 });
    expect(dose.soda).toBe(0);
  });

  test('for a target are those worked out by hand', () => {
    // 40 mg/L as calcium carbonate is what the process leaves, and what magnesium may stay.
    const forty = 0.04 / 0.1000869;
    const { lime, soda, magnesiumRemoved } = limeSodaToTarget({
      calcium: 3,
      magnesium: 1,
      bicarbonate: 4,
      carbonDioxide: 0.2,
      target: forty + 0.5,
    });
    expect(magnesiumRemoved).toBeCloseTo(1 - forty, 6);
    // Carbon dioxide, carbonate and the magnesium that goes; and, as that is more, the most excess.
    expect(lime).toBeCloseTo(0.2 + 2 + (1 - forty) + forty, 6);
    // Of two moles that are no carbonate half a one may stay.
    expect(soda).toBeCloseTo(1.5, 6);
  });

  test('scale with the reciprocal of purity; a purity of 0 is refused', () => {
    const ions = { calcium: 2, magnesium: 1, bicarbonate: 4 };
    const pure = limeSodaForIons(ions);
    const half = limeSodaForIons({ ...ions, limePurity: 0.5, sodaPurity: 0.8 });
    expect(half.lime).toBeCloseTo(pure.lime / 0.5, 12);
    expect(half.soda).toBeCloseTo(pure.soda / 0.8, 12);
    const purity = { takes: [1, 0.01], refuses: [0, -0.1, 1.01] };
    expectLimits(
      (purities) => limeSodaForIons({ ...ions, ...purities }),
      { limePurity: 1, sodaPurity: 1 },
      { limePurity: purity, sodaPurity: purity },
    );
  });

  test('leave no negative hardness, and remove no more than there is', () => {
    expectLimits(
      (of: Record<'nonCarbonate' | 'sodaRemoves' | 'carbonateLeft', number>) =>
        limeSodaResidual({ excessLime: true, ...of }),
      { nonCarbonate: 2, sodaRemoves: 0, carbonateLeft: 0.35 },
      {
        nonCarbonate: { takes: [0], refuses: [-1e-9, Number.NaN] },
        sodaRemoves: { takes: [2], refuses: [-1e-9, 2.001] },
        carbonateLeft: { takes: [0], refuses: [-1e-9, Number.NaN] },
      },
    );
  });

  test('refuse a target below what the process leaves', () => {
    const ask = { calcium: 2, magnesium: 1, bicarbonate: 4, carbonDioxide: 0.2, target: 0.3 };
    expect(() => limeSodaToTarget(ask)).toThrow(RangeError);
  });
});

describe('sequestrants', () => {
  test('bind mole for mole', () => {
    const edta = sequester({
      hardness: 3.11,
      sequestrant: 'disodiumEdtaDihydrate',
      waterCement: 0.5,
    });
    expect(edta.dose).toBeCloseTo(1.158, 3);
    expect(edta.timesRetarding).toBeUndefined();
  });

  test('citrate for a hard water is past the share that retards cement', () => {
    const citrate = sequester({
      hardness: 7,
      sequestrant: 'trisodiumCitrateDihydrate',
      waterCement: 0.5,
    });
    expect(citrate.shareOfCement).toBeCloseTo(0.00103, 5);
    expect(citrate.timesRetarding).toBeGreaterThan(1);
  });

  test('refuse a negative hardness and a w/c of 0', () => {
    expectLimits(
      (of: Record<'hardness' | 'waterCement', number>) =>
        sequester({ sequestrant: 'citricAcid', ...of }),
      { hardness: 3, waterCement: 0.5 },
      {
        hardness: { takes: [0], refuses: [-1e-9, Number.NaN] },
        waterCement: { takes: [0.01], refuses: [0, -0.5, Number.NaN] },
      },
    );
  });
});

test('a refused equivalent is reported in moles', () => {
  const ions = { calcium: 2, magnesium: 1, carbonDioxide: 0.2, bicarbonate: -4 };
  const asCarbonate = expect.objectContaining({
    quantity: 'bicarbonate',
    kind: 'hardness',
    value: -2,
  });
  expect(() => limeSodaForIons(ions)).toThrow(asCarbonate);
  expect(() => limeSodaToTarget({ ...ions, target: 1 })).toThrow(asCarbonate);
  expect(() => heldBack({ volumes: [1], effluent: [0], feed: -6 })).toThrow(
    expect.objectContaining({ kind: 'hardness', value: -3 }),
  );
  const resin = { total: 2000, calcium: 4, sodium: 1, separation: 3 };
  expect(() => resinCapacity({ ...resin, calcium: -4 })).toThrow(
    expect.objectContaining({ kind: 'hardness', value: -2 }),
  );
  expect(() => resinCapacity({ ...resin, sodium: -1 })).toThrow(
    expect.objectContaining({ kind: 'amountConcentration', value: -1 }),
  );
});
