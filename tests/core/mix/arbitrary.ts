import fc from 'fast-check';
import { baseMix } from '../../../src/core/mix/base-mix.ts';
import type { ProportionInput } from '../../../src/core/mix/proportion.ts';
import { between } from '../arbitrary.ts';

/** Recipes of ordinary materials whose wet density lies between the foam and the base mix. */
export const feasible: fc.Arbitrary<ProportionInput & { target: { wetDensity: number } }> = fc
  .record({
    volume: between(0.001, 10),
    waterCement: between(0.25, 1.5),
    sandCement: fc.oneof(fc.constant(0), between(0, 4)),
    foamDensity: between(20, 150),
    cementDensity: between(2800, 3300),
    sandDensity: between(2400, 2800),
    waterDensity: between(990, 1000),
    along: between(0.02, 0.98),
    convention: fc.constantFrom('foam-counted' as const, 'foam-ignored' as const),
  })
  .map(({ along, ...recipe }) => {
    const { density } = baseMix(recipe);
    const lightest = recipe.foamDensity;
    return { ...recipe, target: { wetDensity: lightest + along * (density - lightest) } };
  });
