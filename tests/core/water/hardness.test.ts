import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { MOLAR_MASS_CALCIUM_CARBONATE } from '../../../src/core/quantity/constants.ts';
import {
  hardnessFromDrops,
  hardnessFromIons,
  hardnessFromTitration,
  hardnessParts,
  titreFromStandard,
} from '../../../src/core/water/hardness.ts';
import {
  softEnoughForFoam,
  tradeClass,
  usgsClass,
} from '../../../src/core/water/hardness-class.ts';
import { expectLimits } from '../refuses.ts';

/** mg/L as CaCO₃ to mol/m³. */
const carbonate = (mgPerL: number) => mgPerL / MOLAR_MASS_CALCIUM_CARBONATE;
const amount = fc.double({ min: 0, max: 100, noNaN: true });

describe('hardness from ions', () => {
  test('the demo workshop has 311 mg/L as calcium carbonate', () => {
    const { total } = hardnessFromIons({ calcium: 0.095, magnesium: 0.018 });
    expect(total * MOLAR_MASS_CALCIUM_CARBONATE).toBeCloseTo(311.4, 1);
  });

  test('calcium and magnesium hardness add to the total, each from its own ion only', () => {
    fc.assert(
      fc.property(amount, amount, amount, (calcium, magnesium, more) => {
        const before = hardnessFromIons({ calcium, magnesium });
        const after = hardnessFromIons({ calcium: calcium + more, magnesium });
        expect(before.total).toBe(before.calcium + before.magnesium);
        expect(after.calcium).toBeGreaterThanOrEqual(before.calcium);
        expect(after.magnesium).toBe(before.magnesium);
      }),
    );
  });

  test('refuses a negative ion by name', () => {
    expect(() => hardnessFromIons({ calcium: 0.1, magnesium: -0.1 })).toThrow('magnesium');
  });
});

describe('hardness from a titration', () => {
  test('titrating the standard solution gives its own hardness', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 50, noNaN: true }), (standard) => {
        const run = { sample: 50e-6, titrant: 20e-6 };
        const titre = titreFromStandard({ standard, ...run });
        expect(hardnessFromTitration({ titre, ...run })).toBeCloseTo(standard, 9);
      }),
    );
  });

  test('the blank is subtracted, and one of 0 changes nothing', () => {
    const run = { titrant: 15e-6, titre: 10, sample: 50e-6 };
    expect(hardnessFromTitration(run)).toBeCloseTo(3, 12);
    expect(hardnessFromTitration({ ...run, blank: 0 })).toBe(hardnessFromTitration(run));
    expect(hardnessFromTitration({ ...run, blank: 0.5e-6 })).toBeCloseTo(2.9, 12);
  });

  test('refuses a blank above the titrant and an empty sample', () => {
    const run = { titrant: 1e-6, titre: 10, sample: 50e-6 };
    expect(() => hardnessFromTitration({ ...run, blank: 2e-6 })).toThrow('blank');
    expect(() => hardnessFromTitration({ ...run, sample: 0 })).toThrow('sample');
  });
});

test('a drop kit gives the hardness per drop times the drops', () => {
  expect(hardnessFromDrops({ drops: 17, perDrop: 0.1783 })).toBeCloseTo(3.0311, 6);
  expectLimits(
    hardnessFromDrops,
    { drops: 17, perDrop: 0.1783 },
    { drops: { takes: [0], refuses: [-1, 1e6 + 1] }, perDrop: { refuses: [0, -0.1] } },
  );
});

test('carbonate and non-carbonate hardness add to the total, and neither is negative', () => {
  fc.assert(
    fc.property(amount, amount, (total, alkalinity) => {
      const parts = hardnessParts({ total, alkalinity });
      expect(parts.carbonate + parts.nonCarbonate).toBeCloseTo(total, 9);
      expect(parts.carbonate).toBeGreaterThanOrEqual(0);
      expect(parts.nonCarbonate).toBeGreaterThanOrEqual(0);
      expect(parts.carbonate).toBeLessThanOrEqual(alkalinity / 2);
    }),
  );
});

describe('classes', () => {
  test.each([
    [0, 'soft'],
    [59.999, 'soft'],
    [60, 'soft'],
    [60.001, 'moderately-hard'],
    [60.4, 'moderately-hard'],
    [119.999, 'moderately-hard'],
    [120, 'moderately-hard'],
    [120.001, 'hard'],
    [179.999, 'hard'],
    [180, 'hard'],
    [180.001, 'very-hard'],
    [900, 'very-hard'],
  ])('%d mg/L is %s to the survey', (mgPerL, name) => {
    expect(usgsClass(carbonate(mgPerL))).toBe(name);
  });

  test.each([
    [311, 'very-hard'],
    [699.9, 'very-hard'],
    [700, 'extremely-hard'],
  ])('%d mg/L is %s to the trade', (mgPerL, name) => {
    expect(tradeClass(carbonate(mgPerL))).toBe(name);
  });

  test.each([
    [0, true],
    [60.4, true],
    [120, true],
    [120.1, false],
    [900, false],
  ])('%d mg/L soft enough for foam: %s', (mgPerL, enough) => {
    expect(softEnoughForFoam(carbonate(mgPerL))).toBe(enough);
  });

  test('the class never falls as hardness rises, and only a negative hardness is refused', () => {
    // Up to 800 mg/L as calcium carbonate, past the last line drawn.
    const classed = fc.double({ min: 0, max: 8, noNaN: true });
    const classes = ['soft', 'moderately-hard', 'hard', 'very-hard', 'extremely-hard'];
    for (const classOf of [usgsClass, tradeClass])
      fc.assert(
        fc.property(classed, classed, (a, b) => {
          const [less, more] = [Math.min(a, b), Math.max(a, b)].map((total) =>
            classes.indexOf(classOf(total)),
          );
          expect(less).toBeGreaterThanOrEqual(0);
          expect(more).toBeGreaterThanOrEqual(less!);
        }),
      );
    expect(() => usgsClass(-1)).toThrow(DomainError);
    expect(() => usgsClass(Number.NaN)).toThrow(DomainError);
  });
});
