import { fromUnit, toUnit } from '../../../core/quantity/convert.ts';
import { KINDS } from '../../../core/quantity/kinds.ts';
import { handy } from '../../../islands/engine/handy.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Units } from '../../../islands/fields.ts';

/** How an amount is formatted; the digits are those of `say`. */
interface Said {
  readonly units?: Units;
  readonly significant?: number;
  readonly decimals?: number;
}

/**
 * An amount as `say` shows it, converted back to SI. Pressing “exactly that” records the number
 * that was on screen, in its unit.
 */
export function asSaid(si: number, kind: 'mass' | 'volume', how: Said, say: Say): number {
  const given = (how.units ?? KINDS[kind].shown)[say.system];
  const unit = how.decimals === undefined ? handy(si, kind, given) : given;
  const number = toUnit(si, kind, unit);
  const shown =
    how.decimals === undefined
      ? number.toPrecision(how.significant ?? 3)
      : number.toFixed(how.decimals);
  return fromUnit(Number(shown), kind, unit);
}

/**
 * How to format an amount to weigh out, kg: to the hundredth of a unit, and below one unit as in
 * the plan.
 */
export function weighedOut(si: number, say: Say): Said {
  const unit = KINDS.mass.shown[say.system];
  return handy(si, 'mass', unit) === unit ? { decimals: 2 } : {};
}

/**
 * Below this many kilograms or pounds, rounding to a hundredth changes the amount by more than one
 * per cent.
 */
const LITTLE = 0.5;

/** How to format the scale's reading for a load, kg: finer if the load is small. */
export const scaleReads = (load: number, say: Say): Said => ({
  decimals: toUnit(load, 'mass', KINDS.mass.shown[say.system]) < LITTLE ? 3 : 2,
});

/** From this many pounds on, weights are given in whole ounces. A choice. */
const WHOLE_OUNCES = 10;

/**
 * What `say` shows of a weight as most US scales show it, with the mark before it: ` = 18 lb 3 oz` for 18.17 lb.
 * Nothing in metric, below a pound, and of whole pounds.
 */
export function inOunces(si: number, how: Said, say: Say): string {
  if (say.system !== 'us') return '';
  const ounces = toUnit(asSaid(si, 'mass', how, say), 'mass', 'oz');
  const step = ounces < WHOLE_OUNCES * 16 ? 10 : 1;
  const steps = Math.round(ounces * step);
  const over = steps % (16 * step);
  // Less than a pound, or whole pounds.
  if (over === steps || (!over && Math.abs(ounces * step - steps) < 1e-6)) return '';
  const mass = (of: number, us: string) =>
    say(fromUnit(of / step, 'mass', us), 'mass', { units: { metric: us, us }, plain: true });
  return ` = ${mass((steps - over) / 16, 'lb')} ${mass(over, 'oz')}`;
}

/** A weight to be read on a scale. */
export const onScale = (si: number, how: Said, say: Say): string =>
  say(si, 'mass', how) + inOunces(si, how, say);

/**
 * The content of a vessel, kg, as its full and its empty weight. The difference of the two as shown
 * must equal it.
 */
export function netWords(full: number, empty: number, say: Say): string {
  const reads = scaleReads(full - empty, say);
  return `${say(full, 'mass', reads)} − ${say(empty, 'mass', reads)}`;
}
