import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { type CorrectionInput, correctMix } from '../../../src/core/mix/correct.ts';
import { correctionTable } from '../../../src/core/mix/correction-table.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { between } from '../arbitrary.ts';
import { feasible } from './arbitrary.ts';

const mix: fc.Arbitrary<CorrectionInput> = fc
  .record({
    foamDensity: between(20, 150),
    baseDensity: between(1400, 2200),
    measured: between(0.01, 0.99),
    target: between(0.01, 0.99),
    massInHand: between(1, 1000),
    tolerance: between(0, 50),
  })
  .map(({ measured, target, ...rest }) => {
    const at = (share: number) => rest.foamDensity + share * (rest.baseDensity - rest.foamDensity);
    return { ...rest, measuredDensity: at(measured), targetDensity: at(target) };
  });

const heavy: CorrectionInput = {
  measuredDensity: 660,
  massInHand: 66,
  targetDensity: 600,
  foamDensity: 80,
  baseDensity: 1850,
  tolerance: 20,
};

describe('a correction', () => {
  test('lands on the target or leaves a mix within tolerance, with mass and volume conserved', () => {
    fc.assert(
      fc.property(mix, (input) => {
        const c = correctMix(input);
        const off = input.measuredDensity - input.targetDensity;
        expect(c.mass).toBeCloseTo(input.massInHand + c.foamMass + c.baseMass, 9);
        expect(c.volume).toBeCloseTo(
          input.massInHand / input.measuredDensity + c.foamVolume + c.baseVolume,
          9,
        );
        expect(c.foamMass).toBeCloseTo(c.foamVolume * input.foamDensity, 9);
        expect(c.baseMass).toBeCloseTo(c.baseVolume * input.baseDensity, 9);
        expect(Math.min(c.foamVolume, c.baseVolume)).toBe(0);
        if (c.action === 'leave') {
          expect(Math.abs(off)).toBeLessThanOrEqual(input.tolerance);
          expect(c.foamVolume + c.baseVolume).toBe(0);
        } else {
          expect(c.action).toBe(off > 0 ? 'add-foam' : 'add-base-mix');
          expect(c.density / input.targetDensity).toBeCloseTo(1, 9);
          expect(c.foamVolume + c.baseVolume).toBeGreaterThan(0);
        }
        expect(c.notes).toEqual([]);
      }),
    );
  });

  test('asks for more foam where some of its gas is lost, and still lands on the target', () => {
    // By hand: of foam of 80 a volume leaves 1 − 0.2 × 0.92 = 0.816; (66 − 600 × 0.1) / (600 × 0.816 − 80) m³.
    const c = correctMix({ ...heavy, survival: 0.8 });
    expect(c.foamVolume).toBeCloseTo(6 / 409.6, 12);
    expect(c.volume).toBeCloseTo(0.1 + (0.816 * 6) / 409.6, 12);
    expect(c.density).toBeCloseTo(600, 9);
    expect(correctMix({ ...heavy, survival: 1 })).toEqual(correctMix(heavy));
    for (const survival of [0, -0.1, 1.01])
      expect(() => correctMix({ ...heavy, survival })).toThrow('survival');
    // What is left of such foam weighs 80 ÷ (1 − 0.9 × 0.92) = 465.
    const dying = { ...heavy, survival: 0.1 };
    expect(() => correctMix({ ...dying, targetDensity: 466 })).not.toThrow();
    expect(() => correctMix({ ...dying, targetDensity: 465 })).toThrow('lighter-than-foam');
  });

  test('the heavier the mix, the more foam', () => {
    fc.assert(
      fc.property(mix, between(1, 100), (input, more) => {
        const at = (measuredDensity: number) =>
          correctMix({ ...input, tolerance: 0, measuredDensity }).foamVolume;
        const target = input.targetDensity;
        // The same volume in hand would weigh more; here the mass is fixed, so foam per volume is compared.
        const perVolume = (d: number) => (at(d) * d) / input.massInHand;
        expect(perVolume(target + more + 1)).toBeGreaterThan(perVolume(target + more));
      }),
    );
  });

  test('100 L at 660 take 11.54 L of foam to come to 600', () => {
    const c = correctMix(heavy);
    // (66 − 600 × 0.1) / (600 − 80) m³.
    expect(c.foamVolume).toBeCloseTo(6 / 520, 12);
  });

  test('of a batch made with too little foam asks for exactly the foam left out', () => {
    fc.assert(
      fc.property(feasible, between(0.1, 0.9), (recipe, share) => {
        const p = proportion({ ...recipe, convention: 'foam-counted' });
        const made = share * p.foamVolume;
        const mass = p.baseMass + made * recipe.foamDensity;
        const c = correctMix({
          measuredDensity: mass / (p.baseVolume + made),
          massInHand: mass,
          targetDensity: p.wetDensity,
          foamDensity: recipe.foamDensity,
          baseDensity: p.baseDensity,
          tolerance: 0,
          inHand: { cement: p.cement, water: p.water + made * recipe.foamDensity },
        });
        expect(c.foamVolume / (p.foamVolume - made)).toBeCloseTo(1, 6);
        expect(c.waterCementTotal).toBeCloseTo(p.waterCementTotal, 9);
        expect(c.volume / p.volume).toBeCloseTo(1, 9);
      }),
    );
  });

  test('base mix is itemised and carries its water into the total', () => {
    const c = correctMix({
      ...heavy,
      measuredDensity: 540,
      inHand: { cement: 40, water: 26 },
      baseRecipe: { waterCement: 0.5 },
    });
    expect(c.action).toBe('add-base-mix');
    const { cement = 0, water = 0 } = c.baseParts ?? {};
    expect(cement + water).toBeCloseTo(c.baseMass, 9);
    expect(water / cement).toBeCloseTo(0.5, 9);
    expect(c.waterCementTotal).toBeCloseTo((26 + water) / (40 + cement), 9);
  });

  test('foam raises the total w/c; base mix of unknown recipe leaves it unknown', () => {
    const inHand = { cement: 40, water: 26 };
    const foamed = correctMix({ ...heavy, inHand });
    expect(foamed.waterCementTotal).toBeGreaterThan(26 / 40);
    const light = correctMix({ ...heavy, measuredDensity: 500, inHand });
    expect('waterCementTotal' in light).toBe(false);
  });
});

describe('where it cannot land', () => {
  const because = (input: CorrectionInput) => {
    try {
      correctMix(input);
    } catch (error) {
      if (error instanceof DomainError) return error.because;
    }
    return 'landed';
  };

  test('refuses a target not between foam and base mix', () => {
    expect(because({ ...heavy, targetDensity: 80 })).toBe('lighter-than-foam');
    expect(because({ ...heavy, targetDensity: 1850 })).toBe('heavier-than-base-mix');
  });

  test('notes a reading that no mix of foam and base mix has', () => {
    const note = [{ code: 'check-reading', of: 'measuredDensity' }];
    expect(correctMix({ ...heavy, measuredDensity: 1900 }).notes).toEqual(note);
    expect(correctMix({ ...heavy, measuredDensity: 70 }).notes).toEqual(note);
  });
});

describe('the table for the bench', () => {
  const { measuredDensity: _, ...rest } = heavy;
  const sheet = { ...rest, tare: 0.8, vessel: 0.02 };

  test('gives the same corrections', () => {
    const densities = [540, 560, 580, 600, 620, 640, 660, 680];
    const rows = correctionTable({ ...sheet, densities });
    expect(rows.map(({ action }) => action)).toEqual([
      'add-base-mix',
      'add-base-mix',
      'leave',
      'leave',
      'leave',
      'add-foam',
      'add-foam',
      'add-foam',
    ]);
    const row = rows[6]!;
    expect(row.reading).toBeCloseTo(14, 9);
    expect(row.foamVolume).toBe(correctMix(heavy).foamVolume);
  });

  test('has one row for each density given', () => {
    expect(correctionTable({ ...sheet, densities: [] })).toEqual([]);
  });
});
