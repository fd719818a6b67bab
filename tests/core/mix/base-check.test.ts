import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkBase } from '../../../src/core/mix/base-check.ts';
import { baseMix } from '../../../src/core/mix/base-mix.ts';
import { batchCost } from '../../../src/core/mix/cost.ts';
import { pigmentMass } from '../../../src/core/mix/pigment.ts';
import { pooled } from '../../../src/core/mix/several-buckets.ts';
import { between } from '../arbitrary.ts';

describe('checking the base mix', () => {
  test('finds the w/c of a base mix of any recipe, with or without air', () => {
    fc.assert(
      fc.property(
        between(0.25, 1.5),
        between(0.25, 1.5),
        between(0, 3),
        between(0, 0.2),
        (mixed, wanted, sandCement, air) => {
          const { density } = baseMix({ waterCement: mixed, sandCement });
          const found = checkBase({
            measuredDensity: density * (1 - air),
            air,
            recipe: { waterCement: wanted, sandCement },
            cement: 10,
          });
          expect(found.waterCement).toBeCloseTo(mixed, 9);
          // What it says to add brings the ratio to what was wanted.
          const water = mixed * 10 + found.addWater;
          expect(water / (10 + found.addCement)).toBeCloseTo(wanted, 9);
          expect(Math.min(found.addWater, found.addCement)).toBe(0);
          expect(found.addSand).toBeCloseTo(found.addCement * sandCement, 12);
        },
      ),
    );
  });

  test('the derivative of w/c by density agrees with a difference quotient', () => {
    const at = (measuredDensity: number) =>
      checkBase({ measuredDensity, recipe: { waterCement: 0.4 }, cement: 13, air: 0.02 });
    const slope = (at(1900.01).waterCement - at(1899.99).waterCement) / 0.02;
    expect(at(1900).perDensity / slope).toBeCloseTo(1, 6);
  });

  test('the derivative of w/c by the specific volume of cement agrees with a difference quotient', () => {
    const at = (space: number) =>
      checkBase({
        measuredDensity: 1900,
        recipe: { waterCement: 0.4, sandCement: 0.5, cementDensity: 1 / space },
        cement: 13,
        air: 0.02,
      });
    const [space, step] = [1 / 3150, 1e-9];
    const slope = (at(space + step).waterCement - at(space - step).waterCement) / (2 * step);
    expect(at(space).perSpace / slope).toBeCloseTo(1, 6);
  });

  test('refuses a density that no base mix has', () => {
    const ask = (measuredDensity: number) =>
      checkBase({ measuredDensity, recipe: { waterCement: 0.4 }, cement: 13 });
    expect(() => ask(1000)).toThrow('thinner-than-water');
    expect(() => ask(3200)).toThrow('drier-than-no-water');
  });

  test('a refusal gives the density as read and the limit including air', () => {
    const ask = () =>
      checkBase({ measuredDensity: 2300, recipe: { waterCement: 0.4 }, cement: 13, air: 0.3 });
    expect(ask).toThrow(
      expect.objectContaining({ value: 2300, allowed: { min: 700, max: 2205, aboveMin: true } }),
    );
  });

  test('a mix of the planned w/c has the expected density at any air content', () => {
    const recipe = { waterCement: 0.4, sandCement: 1 };
    const measuredDensity = baseMix(recipe).density * 0.95;
    const found = checkBase({ measuredDensity, recipe, cement: 13, air: 0.05 });
    expect(found.wantedDensity).toBeCloseTo(measuredDensity, 9);
    expect(found.waterCement).toBeCloseTo(0.4, 12);
  });
});

describe('several buckets', () => {
  test('have a pooled density of mass over volume, between lightest and heaviest', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ mass: between(0.1, 30), density: between(300, 1900) }), {
          minLength: 1,
          maxLength: 8,
        }),
        (buckets) => {
          const all = pooled(buckets);
          const densities = buckets.map(({ density }) => density);
          expect(all.density).toBeGreaterThanOrEqual(Math.min(...densities) * (1 - 1e-12));
          expect(all.density).toBeLessThanOrEqual(Math.max(...densities) * (1 + 1e-12));
          expect(all.density * all.volume).toBeCloseTo(all.mass, 9);
        },
      ),
    );
  });

  test('equal masses of 500 and 700 are 583.3, not 600', () => {
    expect(
      pooled([
        { mass: 10, density: 500 },
        { mass: 10, density: 700 },
      ]).density,
    ).toBeCloseTo(583.333, 3);
  });
});

describe('pigment and cost', () => {
  test('notes follow the dose', () => {
    const codes = (share: number, ownMaximum?: number) =>
      pigmentMass({ cementitious: 20, share, ownMaximum }).notes.map(({ code }) => code);
    expect(codes(0.03)).toEqual([]);
    expect(codes(0.1001)).toEqual(['over-ceiling']);
    expect(codes(0.05, 0.04)).toEqual(['over-own-maximum']);
    expect(codes(0.07)).toEqual(['saturated']);
    expect(codes(0.005)).toEqual(['pale']);
  });

  test('waste is the share of the money that is not in a form', () => {
    const { total, perPart, perVolume, wasted, dearest } = batchCost({
      lines: [
        { name: 'cement', amount: 35, price: 0.3 },
        { name: 'concentrate', amount: 0.5, price: 9 },
      ],
      parts: 12,
      made: 0.1,
      used: 0.08,
    });
    expect(total).toBeCloseTo(15, 12);
    expect(perPart).toBeCloseTo(1.25, 12);
    expect(perVolume).toBeCloseTo(187.5, 9);
    expect(wasted).toBeCloseTo(3, 12);
    expect(dearest).toBe(0);
  });
});
