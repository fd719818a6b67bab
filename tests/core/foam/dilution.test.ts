import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { concentrateShare, type Dilution } from '../../../src/core/foam/dilution.ts';

const densities = { concentrateDensity: 1100, waterDensity: 998.2 };
const share = (convention: Dilution, stated: number) =>
  concentrateShare({ convention, stated, ...densities });

describe('what a stated dilution means', () => {
  test('1 : 40 is one part in 41, and 1 in 40 is one part in 40', () => {
    expect(share('parts-water', 40).byVolume).toBeCloseTo(1 / 41, 12);
    expect(share('one-in', 40).byVolume).toBeCloseTo(1 / 40, 12);
    expect(share('one-in', 41).byVolume).toBeCloseTo(share('parts-water', 40).byVolume, 12);
    expect(share('percent-volume', 0.025).byVolume).toBe(0.025);
  });

  test('a percentage by mass of a heavy concentrate is a smaller share by volume', () => {
    const { byVolume, byMass } = share('percent-mass', 0.025);
    expect(byMass).toBeCloseTo(0.025, 12);
    expect(byVolume).toBeLessThan(0.025);
    expect(byVolume).toBeCloseTo(0.025 / 1100 / (0.025 / 1100 + 0.975 / 998.2), 12);
  });

  test('the 1 : N found for any convention gives the same share again', () => {
    const conventions = fc.constantFrom<Dilution>('parts-water', 'one-in');
    fc.assert(
      fc.property(conventions, fc.double({ min: 1.5, max: 200, noNaN: true }), (kind, stated) => {
        const first = share(kind, stated);
        const again = share('parts-water', first.partsWater);
        expect(again.byVolume).toBeCloseTo(first.byVolume, 12);
        expect(share('percent-mass', first.byMass).byVolume).toBeCloseTo(first.byVolume, 12);
      }),
    );
  });

  test('the mass of the mixture is the sum of its parts', () => {
    const { byVolume, byMass, density } = share('parts-water', 30);
    expect(density * byMass).toBeCloseTo(1100 * byVolume, 9);
    expect(density * (1 - byMass)).toBeCloseTo(998.2 * (1 - byVolume), 9);
  });

  test('refuses 1 in 1 as no dilution', () => {
    expect(() => share('one-in', 1)).toThrow(DomainError);
    expect(() => share('parts-water', 0)).toThrow(DomainError);
    expect(() => share('percent-volume', 1)).toThrow(DomainError);
    expect(() => share('percent-mass', 2.5)).toThrow(DomainError);
  });
});
