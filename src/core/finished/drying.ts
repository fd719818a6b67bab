import { demand } from '../domain-error.ts';
import { DAY } from '../quantity/constants.ts';
import { justOver, justUnder, SLIVER } from '../quantity/dust.ts';

/**
 * A piece has dried out when a day in the oven takes less than this share of its mass. From memory.
 * @source en-12390-7
 */
export const CONSTANT_MASS_SHARE = 0.002;

/** One weighing of a drying piece: s after the first, and kg. */
export interface Weighing {
  readonly time: number;
  readonly mass: number;
}

interface Since {
  readonly constant: boolean;
  /** Share of its mass lost since the last weighing at least a day before, below 0 for a gain. */
  readonly change?: number;
  /** The time between the two, s. */
  readonly span?: number;
  /** `change` per day. */
  readonly perDay?: number;
}

export interface ConstantMass extends Since {
  /** Whether the weighings are precise enough to show it: since that one, or an earlier one. */
  readonly shown: boolean;
}

/**
 * Has it dried to constant mass?
 *
 * True when its mean loss since the last weighing at least a day before is less than 0.2 % of its
 * mass a day: drying slows, so the last of several days lost no more than their mean. A gain need
 * not slow down, so the whole gain must be less than that. `shown` requires weighings whose
 * uncertainty is no larger than the loss allowed between them. All but `constant` and `shown` is
 * undefined until two weighings are a day apart. No range: a comparison.
 * @param weighings in order of time
 * @param scale kg, the uncertainty of each
 * @throws {DomainError} for no weighing, a mass not above 0 or times out of order
 * @source en-12390-7
 */
export function constantMass(weighings: readonly Weighing[], scale = 0): ConstantMass {
  demand('weighings', weighings.length, 'count', { min: 1 });
  weighings.forEach(({ time, mass }, i) => {
    demand('mass', mass, 'mass', { min: 0, aboveMin: true });
    demand('time', time, 'time', { min: weighings[i - 1]?.time ?? 0 }, 'out-of-order');
  });
  const last = weighings.at(-1)!;
  const aDay = justUnder(DAY, SLIVER);
  const before = weighings.filter((w) => last.time - w.time >= aDay).map((w) => since(w, last));
  const latest = before.at(-1) ?? { constant: false };
  const shows = ({ constant, span }: Since) =>
    constant && scale <= justOver((CONSTANT_MASS_SHARE * last.mass * span!) / DAY);
  return { ...latest, shown: latest.constant && before.some(shows) };
}

function since(before: Weighing, last: Weighing): Since {
  const change = (before.mass - last.mass) / last.mass;
  const span = last.time - before.time;
  const perDay = change * (DAY / span);
  const constant = change > 0 ? perDay < CONSTANT_MASS_SHARE : -change < CONSTANT_MASS_SHARE;
  return { constant, change, span, perDay };
}

/**
 * How moist is it? u = (moist − dry)/dry, kg/kg. No range: arithmetic.
 * @param of masses of the same piece, kg; moist at least dry
 * @throws {DomainError} for a dry mass not above 0 or a moist mass below it ('heavier-dried')
 * @source common-practice
 */
export function moistureByMass(of: { readonly moist: number; readonly dry: number }): number {
  demand('dry', of.dry, 'mass', { min: 0, aboveMin: true });
  demand('moist', of.moist, 'mass', { min: of.dry }, 'heavier-dried');
  return (of.moist - of.dry) / of.dry;
}
