import { demand } from '../../domain-error.ts';
import { GRAIN, POUND } from '../../quantity/constants.ts';
import * as MOLAR_MASS from '../molar-masses.ts';

/**
 * Salt to regenerate a softener, kg per eq of hardness: 0.3 lb a kilograin.
 * @source ten-states-standards 4.4.2
 */
export const SALT_PER_EQUIVALENT =
  (0.3 * POUND) / ((1000 * GRAIN) / (MOLAR_MASS.calciumCarbonate / 2));

/**
 * How long a softener lasts, and its cost in salt and sodium.
 *
 * `capacity` of the bed in eq (2 for each mol of hardness), `hardness` in mol/m³ (`leaves`, default
 * 0, is what still comes through), `saltPerEquivalent` in kg/eq. Results: `volume` m³ to
 * exhaustion; `salt` kg to regenerate, and `leastSalt`, the stoichiometric 58.44 g/eq that no
 * softener reaches; `sodiumAdded` kg/m³, two Na⁺ for each Ca²⁺ or Mg²⁺. The alkalinity does not
 * change.
 *
 * @throws {DomainError} for a capacity or hardness that is not positive, or more coming through.
 * @source definition; ten-states-standards for the salt
 */
export function ionExchange(softener: {
  readonly capacity: number;
  readonly hardness: number;
  readonly leaves?: number;
  readonly saltPerEquivalent?: number;
}): {
  readonly volume: number;
  readonly salt: number;
  readonly leastSalt: number;
  readonly sodiumAdded: number;
} {
  const { capacity, hardness, leaves = 0, saltPerEquivalent = SALT_PER_EQUIVALENT } = softener;
  demand('capacity', capacity, 'count', { min: 0, aboveMin: true });
  demand('hardness', hardness, 'hardness', { min: 0, aboveMin: true });
  demand('leaves', leaves, 'hardness', { min: 0, max: hardness, belowMax: true });
  demand('saltPerEquivalent', saltPerEquivalent, 'mass', { min: MOLAR_MASS.sodiumChloride });
  const removed = 2 * (hardness - leaves);
  return {
    volume: capacity / removed,
    salt: capacity * saltPerEquivalent,
    leastSalt: capacity * MOLAR_MASS.sodiumChloride,
    sodiumAdded: removed * MOLAR_MASS.sodium,
  };
}

/**
 * Calcium a sodium resin can hold in competition with the sodium in the water, eq per m³ of resin.
 *
 * q = `total` · C_Ca/(C_Ca + C_Na/α) with the separation factor α of calcium over sodium;
 * concentrations `calcium` and `sodium` in eq/m³. `treated` is m³ of water per m³ of resin. No
 * range is published.
 *
 * @throws {DomainError} for a capacity, calcium or factor that is not positive.
 * @source davis-2010 Example 8-1
 */
export function resinCapacity(resin: {
  readonly total: number;
  readonly calcium: number;
  readonly sodium: number;
  readonly separation: number;
}): { readonly calcium: number; readonly treated: number } {
  const above = { min: 0, aboveMin: true };
  // Equivalents as moles: two to the mole of calcium, one to that of sodium.
  demand('total', resin.total / 2, 'hardness', above);
  demand('calcium', resin.calcium / 2, 'hardness', above);
  demand('sodium', resin.sodium, 'amountConcentration', { min: 0 });
  demand('separation', resin.separation, 'ratio', above);
  const held = (resin.total * resin.calcium) / (resin.calcium + resin.sodium / resin.separation);
  return { calcium: held, treated: held / resin.calcium };
}

/**
 * Hardness removed by a softener, from the salt its regeneration used up, mol/m³.
 *
 * `volume` m³ softened, `salt` kg of NaCl that did the exchanging: salt/58.44 equivalents. No
 * range: arithmetic.
 *
 * @throws {DomainError} for a volume that is not positive or a negative mass.
 * @source zeolite-exercise
 */
export function hardnessFromRegeneration(run: {
  readonly volume: number;
  readonly salt: number;
}): number {
  demand('volume', run.volume, 'volume', { min: 0, aboveMin: true });
  demand('salt', run.salt, 'mass', { min: 0 });
  return run.salt / MOLAR_MASS.sodiumChloride / 2 / run.volume;
}

/**
 * Equivalents retained by a bed, from what came through: ∫ (feed − effluent) dV by the trapezoidal
 * rule.
 *
 * `volumes` in m³, from 0 on (the bed is clean at 0), none less than the one before; `effluent` and
 * `feed` in eq/m³. No range: arithmetic.
 *
 * @throws {DomainError} when a volume is under the one before, or the lists differ in length.
 * @source davis-2010 Problem 8-2
 */
export function heldBack(run: {
  readonly volumes: readonly number[];
  readonly effluent: readonly number[];
  readonly feed: number;
}): number {
  const { volumes, effluent, feed } = run;
  demand('feed', feed / 2, 'hardness', { min: 0 });
  demand('effluent', effluent.length, 'count', { min: volumes.length, max: volumes.length });
  let [held, last, through] = [0, 0, effluent[0] ?? 0];
  volumes.forEach((volume, i) => {
    demand('volumes', volume, 'volume', { min: last });
    const next = effluent[i]!;
    held += (volume - last) * (feed - (through + next) / 2);
    [last, through] = [volume, next];
  });
  return held;
}
