import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DomainError } from '../../../src/core/domain-error.ts';
import { baseMix } from '../../../src/core/mix/base-mix.ts';
import { leastOvenDryDensity } from '../../../src/core/mix/least-dry.ts';
import { proportion } from '../../../src/core/mix/proportion.ts';
import { between } from '../arbitrary.ts';

const FOAM = 120;
const least = (wetDensity: number) => leastOvenDryDensity({ wetDensity, foamDensity: FOAM });

test('no mix with as light a foam and no more water has a lower dry density', () => {
  const any = fc.record({
    waterCement: between(0.25, 2),
    sandCement: fc.oneof(fc.constant(0), between(0, 4)),
    foamDensity: between(20, FOAM),
    along: between(0.02, 0.98),
  });
  fc.assert(
    fc.property(any, ({ along, ...recipe }) => {
      const { density } = baseMix(recipe);
      const wetDensity = recipe.foamDensity + along * (density - recipe.foamDensity);
      const { ovenDryDensity } = proportion({ ...recipe, volume: 1, target: { wetDensity } });
      expect(ovenDryDensity).toBeGreaterThan(least(wetDensity));
    }),
  );
});

test('up to the density of its base mix it comes from the cement of the wettest mix', () => {
  for (const wetDensity of [121, 300, 600, 1294]) {
    const thinnest = { volume: 1, target: { wetDensity }, waterCement: 2, foamDensity: FOAM };
    expect(least(wetDensity)).toBeCloseTo(proportion(thinnest).cement, 6);
  }
});

test('above that it comes from cement in water, by mass and volume', () => {
  // 1500 kg: c/3150 + (1500 − c)/1000 = 1, so c = 500 × 3150/2150.
  expect(least(1500)).toBeCloseTo(732.558, 3);
  expect(least(3150)).toBeCloseTo(3150, 6);
});

test('is 0 at a density not above the foam’s, and refuses a foam as dense as water', () => {
  expect(least(120)).toBe(0);
  expect(least(60)).toBe(0);
  for (const of of [
    { wetDensity: 0, foamDensity: 80 },
    { wetDensity: 600, foamDensity: 0 },
    { wetDensity: 600, foamDensity: 1000 },
  ])
    expect(() => leastOvenDryDensity(of)).toThrow(DomainError);
});
