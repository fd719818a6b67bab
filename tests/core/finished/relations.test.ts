import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { ABSORPTION_BY_MASS, moistureByVolume } from '../../../src/core/finished/absorption.ts';
import {
  flexuralFromCompressive,
  splittingComparators,
} from '../../../src/core/finished/flexural.ts';
import { FROST } from '../../../src/core/finished/frost.ts';
import {
  CELLULAR_MODULUS,
  flyAshModulus,
  pauwModulus,
  sandModulus,
  tadaModulus,
} from '../../../src/core/finished/modulus.ts';
import { rangesAt } from '../../../src/core/finished/published-range.ts';
import { DRYING_SHRINKAGE } from '../../../src/core/finished/shrinkage.ts';
import { between } from '../../../src/core/finished/strength-relations/relation.ts';
import { between as double } from '../arbitrary.ts';

test('every modulus rises with the quantity it is estimated from', () => {
  fc.assert(
    fc.property(double(0.3e6, 20e6), double(1e4, 1e6), (compressive, more) => {
      const stronger = compressive + more;
      for (const relation of [sandModulus, flyAshModulus])
        expect(relation({ compressive: stronger }).modulus).toBeGreaterThan(
          relation({ compressive }).modulus,
        );
      const pauw = (fc: number) => pauwModulus({ density: 900, compressive: fc }).modulus;
      expect(pauw(stronger)).toBeGreaterThan(pauw(compressive));
      expect(splittingComparators(stronger).normalWeight).toBeGreaterThan(
        splittingComparators(compressive).normalWeight,
      );
    }),
  );
  expect(pauwModulus({ density: 900, compressive: 3e6 }).notes).toHaveLength(1);
  expect(pauwModulus({ density: 1800, compressive: 2e7 }).notes).toEqual([]);
  expect(() => tadaModulus({ density: 160 })).toThrow(DomainError);
  expect(() => sandModulus({ compressive: 0 })).toThrow(DomainError);
});

test('the modulus from density alone is above the values measured on light cellular concrete', () => {
  const { density, modulus } = CELLULAR_MODULUS;
  expect(tadaModulus({ density: density.min }).modulus).toBeGreaterThan(modulus.high);
});

test('flexural strength is a band about a quarter of the compressive one', () => {
  const { low, high } = flexuralFromCompressive({ low: 1e6, high: 2e6 });
  expect(low).toBeCloseTo(0.22e6, 6);
  expect(high).toBeCloseTo(0.7e6, 6);
  expect(() => flexuralFromCompressive({ low: 2, high: 1 })).toThrow(DomainError);
});

describe('published ranges', () => {
  test.each([...DRYING_SHRINKAGE, ...ABSORPTION_BY_MASS])('$id is in order', (range) => {
    expect(range.high).toBeGreaterThanOrEqual(range.low);
    expect(range.high).toBeLessThan(0.5);
    if (range.density) expect(range.density.max).toBeGreaterThanOrEqual(range.density.min);
    // foam-review-2020 Table 2: at 28 or 90 days, or a year.
    if (range.age) expect([28, 90, 365]).toContain(range.age / 86_400);
  });

  test('finds the ranges that cover a density', () => {
    const at600 = rangesAt(DRYING_SHRINKAGE, 600).map(({ id }) => id);
    expect(at600).toContain('review-44');
    expect(at600).toContain('ramamurthy-typical');
    expect(at600).not.toContain('bca-800');
  });

  test('no two frost facts share an id', () => {
    expect(new Set(FROST.map(({ id }) => id)).size).toBe(FROST.length);
  });
});

test('moisture by volume is moisture by mass times dry over water density', () => {
  expect(moistureByVolume({ byMass: 0.5, dryDensity: 500, waterDensity: 1000 })).toBeCloseTo(
    0.25,
    12,
  );
  expect(() => moistureByVolume({ byMass: -1, dryDensity: 5, waterDensity: 1 })).toThrow(
    DomainError,
  );
});

test('a table of ranges is interpolated linearly, and constant beyond its ends', () => {
  const at = between([
    [400, 1, 2],
    [600, 3, 6],
    [700, 4, 9],
  ]);
  for (const [density, low, high] of [
    [300, 1, 2],
    [400, 1, 2],
    [450, 1.5, 3],
    [600, 3, 6],
    [650, 3.5, 7.5],
    [700, 4, 9],
    [900, 4, 9],
  ] as const)
    expect(at(density), `${density}`).toEqual({ low, high });
});
