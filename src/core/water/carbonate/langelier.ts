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
 * The index rises with pH to the point where hydroxide takes the place of carbonate, and falls beyond:
 * the lower of the two such pH. Sought between 3 and 11, from 0.1 above pH − SI (from 4 at least) uphill to
 * a saturated pH and down again from there. `undefined` when no pH is saturated: no calcium, no alkalinity,
 * or hydroxide that outweighs the alkalinity before calcite is saturated. Range as `speciate`.
 *
 * @throws {DomainError} as `speciate`, 'too-concentrated' too when the water is so at a pH on the way.
 * @throws {NotConverged} as `speciate`.
 * @source langelier-1936 (from memory) for the idea; plummer-busenberg-1982 for the constants
 */
export function saturationPH(water: Speciation): number | undefined {
  if (water.calcium <= 0 || water.alkalinity <= 0) return undefined;
  const index = (pH: number) => indexAt(water, pH);
  // pH less SI is all but the answer, since SI rises one for one with pH in common waters.
  const near = water.pH - saturationIndex(water, 'calcite');
  const high = saturatedFrom(index, Math.min(Math.max(near + 0.1, 4), MOST));
  if (high === undefined) return undefined;
  for (let low = high - 0.5; low >= LEAST; low -= 0.5) {
    const atLow = index(low);
    if (atLow < 0) return root(index, { low, high, atLow }, { x: 1e-9, f: 1e-9 });
  }
  return undefined;
}

/** Where pH is sought. */
const LEAST = 3;
const MOST = 11;

/** How far a step goes uphill, and how closely a summit is then looked for. */
const STEP = 0.25;
const CLOSE = 1e-4;

/** Some pH at which the index is not below nought, uphill of `start`; nothing where its summit is below. */
function saturatedFrom(index: (pH: number) => number, start: number): number | undefined {
  let [at, here] = [start, index(start)];
  if (here >= 0) return at;
  for (const step of [STEP, -STEP]) {
    for (;;) {
      const next = Math.min(Math.max(at + step, LEAST), MOST);
      const there = index(next);
      if (there >= 0) return next;
      // Two refused alike are both too high: there the way up is down.
      if (next === at || there < here || (there === here && step > 0)) break;
      [at, here] = [next, there];
    }
  }
  return summit(index, Math.max(at - STEP, LEAST), Math.min(at + STEP, MOST));
}

/** Golden sections about the summit between two pH, to the first that is not below nought. */
function summit(index: (pH: number) => number, from: number, to: number): number | undefined {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  while (high - low > CLOSE) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    const [atLeft, atRight] = [index(left), index(right)];
    if (atLeft >= 0) return left;
    if (atRight >= 0) return right;
    // Refused alike, both are too high.
    if (atLeft >= atRight) high = right;
    else low = left;
  }
  return undefined;
}

/** At a pH whose hydroxide alone outweighs the alkalinity there is no such water, and no carbonate in it. */
function indexAt(water: Speciation, pH: number): number {
  try {
    return saturationIndex(speciate(water, { pH, alkalinity: water.alkalinity }), 'calcite');
  } catch (refusal) {
    if (refusal instanceof DomainError && refusal.because === 'alkalinity-below-hydroxide')
      return -Infinity;
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
