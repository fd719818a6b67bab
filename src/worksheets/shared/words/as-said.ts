import { fromUnit, toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, type Kind } from '../../../core/quantity/kinds.ts';
import { handy } from '../../../islands/engine/handy.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Units } from '../../../islands/fields.ts';

/** How an amount is said: digits as `say` takes them. */
interface Said {
  readonly units?: Units;
  readonly significant?: number;
  readonly decimals?: number;
}

/** An amount as `say` shows it, in SI: who presses “exactly that” weighed what stood there, in the unit it stood in. */
export function asSaid(si: number, kind: Kind, how: Said, say: Say): number {
  const given = (how.units ?? KINDS[kind].shown)[say.system];
  const unit = how.decimals === undefined ? handy(si, kind, given) : given;
  const number = toUnit(si, kind, unit);
  const shown =
    how.decimals === undefined
      ? number.toPrecision(how.significant ?? 3)
      : number.toFixed(how.decimals);
  return fromUnit(Number(shown), kind, unit);
}

/** How an amount to weigh out is said, kg: to the hundredth of a unit, and less than one of it as the plan has it. */
export function weighedOut(si: number, say: Say): Said {
  const unit = KINDS.mass.shown[say.system];
  return handy(si, 'mass', unit) === unit ? { decimals: 2 } : {};
}

/** Of less than this, in kilograms or pounds, a hundredth of one rounds away more than a hundredth. */
const LITTLE = 0.5;

/** How a scale's reading is said that so much, kg, lies on: finer where that is little. */
export const scaleReads = (load: number, say: Say): Said => ({
  decimals: toUnit(load, 'mass', KINDS.mass.shown[say.system]) < LITTLE ? 3 : 2,
});

/** What lies in a vessel, kg, as its full and its empty weight: what they leave must come of them as they are said. */
export function netWords(full: number, empty: number, say: Say): string {
  const reads = scaleReads(full - empty, say);
  return `${say(full, 'mass', reads)} − ${say(empty, 'mass', reads)}`;
}
