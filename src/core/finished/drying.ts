import { demand } from '../domain-error.ts';
import { DAY } from '../quantity/constants.ts';

/** A piece has dried out when a day in the oven takes less than this share of its mass. From memory. @source en-12390-7 */
export const CONSTANT_MASS_SHARE = 0.002;

/** One weighing of a drying piece: s after the first, and kg. */
export interface Weighing {
  readonly time: number;
  readonly mass: number;
}

/**
 * Has it dried to constant mass? True when the last weighing lost less than 0.2 % of its mass against one
 * at least a day before it. `change` is that loss; undefined until two weighings lie a day apart. No
 * range: a comparison.
 * @param weighings in order of time
 * @param share 0–1, the share that counts as constant
 * @throws {DomainError} for no weighing, a mass not above 0 or times out of order
 * @source en-12390-7
 */
export function constantMass(
  weighings: readonly Weighing[],
  share: number = CONSTANT_MASS_SHARE,
): { readonly constant: boolean; readonly change?: number } {
  demand('weighings', weighings.length, 'count', { min: 1 });
  weighings.forEach(({ time, mass }, i) => {
    demand('mass', mass, 'mass', { min: 0, aboveMin: true });
    demand('time', time, 'time', { min: weighings[i - 1]?.time ?? 0 }, 'out-of-order');
  });
  const last = weighings.at(-1)!;
  const before = weighings.findLast((w) => last.time - w.time >= DAY);
  if (!before) return { constant: false };
  const change = (before.mass - last.mass) / last.mass;
  return { constant: Math.abs(change) < share, change };
}

/**
 * How moist is it? u = (moist − dry)/dry, kg/kg. No range: arithmetic.
 * @param of masses of the same piece, kg; moist at least dry
 * @throws {DomainError} for a dry mass not above 0 or a moist mass below it
 * @source common-practice
 */
export function moistureByMass(of: { readonly moist: number; readonly dry: number }): number {
  demand('dry', of.dry, 'mass', { min: 0, aboveMin: true });
  demand('moist', of.moist, 'mass', { min: of.dry });
  return (of.moist - of.dry) / of.dry;
}
