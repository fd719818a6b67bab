import { DomainError } from '../../domain-error.ts';
import { equilibrateWithCalcite } from './equilibrate.ts';
import { root } from './root.ts';
import { saturationIndex } from './saturation.ts';
import { speciate } from './speciate.ts';
import type { Speciation } from './speciation.ts';
import type { CarbonateWater } from './water.ts';

/**
 * The pH at which this water, with the calcium and alkalinity it has, would be just saturated with
 * calcite (Langelier's pH_s), from the full speciation.
 *
 * Sought from 0.1 above pH − SI, but from 4 at least, up to 11; from the first pH there that is saturated,
 * down to 3. `undefined` when there is none: no calcium, no alkalinity, or hydroxide that outweighs the
 * alkalinity before calcite is saturated. Range as `speciate`.
 *
 * @throws {DomainError} as `speciate`, 'too-concentrated' too when the water is so at a pH on the way.
 * @throws {NotConverged} as `speciate`.
 * @source langelier-1936 (from memory) for the idea; plummer-busenberg-1982 for the constants
 */
export function saturationPH(water: Speciation): number | undefined {
  const { alkalinity } = water;
  if (water.calcium <= 0 || alkalinity <= 0) return undefined;
  const index = (pH: number) => saturationIndex(speciate(water, { pH, alkalinity }), 'calcite');
  // pH less SI is all but the answer, since SI rises one for one with pH in common waters.
  const near = water.pH - saturationIndex(water, 'calcite');
  for (let high = Math.min(Math.max(near + 0.1, 4), 11); high <= 11; high += 0.25) {
    const reached = indexOrNothing(index, high);
    if (reached === undefined) return undefined;
    if (reached < 0) continue;
    for (let low = high - 0.5; low >= 3; low -= 0.5) {
      const atLow = index(low);
      if (atLow < 0)
        return root(index, { low, high, atLow, atHigh: reached }, { x: 1e-9, f: 1e-9 });
    }
    return undefined;
  }
  return undefined;
}

/** At a pH whose hydroxide alone outweighs the alkalinity there is no such water. */
function indexOrNothing(index: (pH: number) => number, pH: number): number | undefined {
  try {
    return index(pH);
  } catch (refusal) {
    if (refusal instanceof DomainError && refusal.because === 'alkalinity-below-hydroxide')
      return undefined;
    throw refusal;
  }
}

/**
 * Calcium carbonate precipitation potential, mol per kg of water: what would come out (positive)
 * or go in (negative) were the water left beside calcite, closed to the air. Times 100.09 g/mol it
 * is near enough the mg/L of the trade. Range as `speciate`.
 *
 * @throws {DomainError} and {NotConverged} as `speciate`.
 * @source plummer-busenberg-1982, standard-methods-2330 (from memory)
 */
export function precipitationPotential(water: CarbonateWater): number {
  return equilibrateWithCalcite(water, { calcite: Infinity }).precipitated;
}
