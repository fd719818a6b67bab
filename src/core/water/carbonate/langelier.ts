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
 * The index rises with pH until hydroxide replaces carbonate, and then falls, so up to two pH are
 * saturated; the lower is returned. It is sought between 3 and 11: uphill from 0.1 above pH − SI
 * (at least 4) to a saturated pH, then down from there. `undefined` if no pH is saturated: there is
 * no calcium or no alkalinity, or hydroxide exceeds the alkalinity before calcite is saturated.
 * Range as `speciate`.
 *
 * @throws {DomainError} as `speciate`; 'too-concentrated' also if the water is so at a pH tried.
 * @throws {NotConverged} as `speciate`.
 * @source langelier-1936 (from memory) for the idea; plummer-busenberg-1982 for the constants
 */
export function saturationPH(water: Speciation): number | undefined {
  if (water.calcium <= 0 || water.alkalinity <= 0) return undefined;
  const index = (pH: number) => indexAt(water, pH);
  // In common waters SI rises one for one with pH, so pH − SI is close to the answer.
  const near = water.pH - saturationIndex(water, 'calcite');
  const high = saturatedFrom(index, Math.min(Math.max(near + 0.1, 4), MOST));
  if (high === undefined) return undefined;
  for (let low = high - 0.5; low >= LEAST; low -= 0.5) {
    const atLow = index(low);
    if (atLow < 0) return root(index, { low, high, atLow }, { x: 1e-9, f: 1e-9 });
  }
  return undefined;
}

/** The range in which the pH is sought. */
const LEAST = 3;
const MOST = 11;

/** The length of a step uphill, and the accuracy with which a maximum is then located. */
const STEP = 0.25;
const CLOSE = 1e-4;

/**
 * A pH uphill of `start` at which the index is at least 0; undefined if even its maximum is below.
 */
function saturatedFrom(index: (pH: number) => number, start: number): number | undefined {
  let [at, here] = [start, index(start)];
  if (here >= 0) return at;
  for (const step of [STEP, -STEP]) {
    for (;;) {
      const next = Math.min(Math.max(at + step, LEAST), MOST);
      const there = index(next);
      if (there >= 0) return next;
      // If both are refused, both are too high: then the index rises towards lower pH.
      if (next === at || there < here || (there === here && step > 0)) break;
      [at, here] = [next, there];
    }
  }
  return summit(index, Math.max(at - STEP, LEAST), Math.min(at + STEP, MOST));
}

/** Golden-section search for the maximum between two pH, up to the first index of at least 0. */
function summit(index: (pH: number) => number, from: number, to: number): number | undefined {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  while (high - low > CLOSE) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    const [atLeft, atRight] = [index(left), index(right)];
    if (atLeft >= 0) return left;
    if (atRight >= 0) return right;
    // If both are refused, both are too high.
    if (atLeft >= atRight) high = right;
    else low = left;
  }
  return undefined;
}

/**
 * The index at a pH; −Infinity if hydroxide alone exceeds the alkalinity: then there is no
 * carbonate.
 */
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
 * Calcium carbonate precipitation potential, mol per kg of water: the amount that precipitates
 * (positive) or dissolves (negative) until the water is in equilibrium with calcite, closed to the
 * air. Times 100.09 g/mol it is nearly the mg/L used in practice. Range as `speciate`.
 *
 * @throws {DomainError} and {NotConverged} as `speciate`.
 * @source plummer-busenberg-1982, standard-methods-2330 (from memory)
 */
export function precipitationPotential(water: CarbonateWater): number {
  return equilibrateWithCalcite(water, { calcite: Infinity }).precipitated;
}
