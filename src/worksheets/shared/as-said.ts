import { fromUnit, toUnit } from '../../core/quantity/convert.ts';
import { KINDS, type Kind } from '../../core/quantity/kinds.ts';
import { handy } from '../../islands/engine/handy.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Units } from '../../islands/fields.ts';

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
