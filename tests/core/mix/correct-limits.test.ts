import { describe, expect, test } from 'vitest';
import { type CorrectionInput, correctMix } from '../../../src/core/mix/correct.ts';
import { correctionTable } from '../../../src/core/mix/correction-table.ts';
import { wetDensity } from '../../../src/core/mix/weigh.ts';
import { expectLimits } from '../refuses.ts';

const heavy: CorrectionInput = {
  measuredDensity: 660,
  massInHand: 66,
  targetDensity: 600,
  foamDensity: 80,
  baseDensity: 1850,
  tolerance: 20,
};

describe('a correction', () => {
  test('refuses densities and masses out of range, and a base mix no heavier than the foam', () => {
    expectLimits<CorrectionInput>(correctMix, heavy, {
      measuredDensity: { refuses: [0, -1] },
      massInHand: { refuses: [0, -1] },
      foamDensity: { refuses: [0, -1] },
      baseDensity: { refuses: [0, 80] },
      tolerance: { takes: [0, 25_000], refuses: [-1, 25_001] },
      targetDensity: { takes: [80.1, 1849.9], refuses: [80, 1850] },
    });
  });

  test('is not made for a mix off by exactly the tolerance, either way', () => {
    const action = (measuredDensity: number) => correctMix({ ...heavy, measuredDensity }).action;
    expect([579.9, 580, 620, 620.1].map(action)).toEqual([
      'add-base-mix',
      'leave',
      'leave',
      'add-foam',
    ]);
    // As a bucket of 10 L comes to it, 0.4 kg empty.
    const five = { ...heavy, tolerance: 0.05 * 600 };
    for (const full of [6.1, 6.7]) {
      const measuredDensity = wetDensity({ tare: 0.4, full, vessel: 0.01 });
      expect(correctMix({ ...five, measuredDensity }).action, `${full} kg`).toBe('leave');
    }
  });

  test('too light, by hand: 54 kg in 100 L want 4.8 L of base mix', () => {
    const { baseVolume, baseMass, volumeBefore, volume, mass, baseParts } = correctMix({
      ...heavy,
      measuredDensity: 540,
      massInHand: 54,
      baseRecipe: { waterCement: 0.5, sandCement: 1 },
    });
    // (600 · 0.1 − 54)/(1850 − 600), and a fifth of it water, two of cement and two of sand.
    expect(baseVolume).toBeCloseTo(0.0048, 12);
    expect(baseMass).toBeCloseTo(8.88, 9);
    expect(volumeBefore).toBeCloseTo(0.1, 12);
    expect(volume).toBeCloseTo(0.1048, 12);
    expect(mass).toBeCloseTo(62.88, 9);
    expect(baseParts).toEqual({
      cement: expect.closeTo(3.552, 9),
      water: expect.closeTo(1.776, 9),
      sand: expect.closeTo(3.552, 9),
    });
  });

  test('with foam needs none of the base mix, whatever it would be made of', () => {
    const inHand = { cement: 40, water: 20 };
    const { baseParts, waterCementTotal } = correctMix({
      ...heavy,
      inHand,
      baseRecipe: { waterCement: 0.5 },
    });
    expect(baseParts).toEqual({ cement: 0, water: 0, sand: 0 });
    // 6/520 m³ of foam is 0.923 kg of water more.
    expect(waterCementTotal).toBeCloseTo((20 + 480 / 520) / 40, 12);
    expect(correctMix(heavy)).not.toHaveProperty('baseParts');
    expect(correctMix(heavy)).not.toHaveProperty('waterCementTotal');
  });

  test('keeps the w/c of a mix that is left alone, even if the base mix is unknown', () => {
    const left = correctMix({ ...heavy, measuredDensity: 610, inHand: { cement: 40, water: 20 } });
    expect(left.waterCementTotal).toBe(0.5);
  });

  test('refuses a cement content of 0 and negative ratios', () => {
    expectLimits(
      (inHand) => correctMix({ ...heavy, inHand }),
      { cement: 40, water: 20 },
      { cement: { refuses: [0, -1] }, water: { takes: [0, 1e9], refuses: [-1, 1.1e9] } },
    );
    expectLimits(
      (baseRecipe) => correctMix({ ...heavy, baseRecipe }),
      { waterCement: 0.5, sandCement: 1 },
      {
        waterCement: { takes: [0, 100], refuses: [-0.1, 100.1] },
        sandCement: { takes: [0, 100], refuses: [-0.1, 100.1] },
      },
    );
  });

  test('gives no note for a reading at the foam’s or the base mix’s density', () => {
    for (const measuredDensity of [80, 1850])
      expect(correctMix({ ...heavy, measuredDensity }).notes).toEqual([]);
  });
});

describe('the lines of the sheet', () => {
  test('agree with the correction of that density', () => {
    const { measuredDensity, ...mix } = heavy;
    const [row] = correctionTable({ ...mix, tare: 1, vessel: 0.01, densities: [540] });
    const fix = correctMix({ ...mix, measuredDensity: 540 });
    expect(row).toEqual({ ...fix, density: 540, reading: expect.closeTo(6.4, 12) });
  });
});
