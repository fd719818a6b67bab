import { ifAllowed } from '../domain-error.ts';
import { SLIVER } from '../quantity/dust.ts';

/** The least and the greatest a reading can be, SI. */
export interface Limits {
  readonly min: number;
  readonly max: number;
}

/**
 * The value nearest to what was read at which one of some ends is nothing, or a limit of the reading, and that can be;
 * undefined where none is. Of ends that are straight lines, or all but, in the reading: each is met by a few steps of the
 * secant. No range: a search.
 *
 * @param of `read`, its standard uncertainty `doubt`, above 0, and the `limits` of such a reading, in one unit; `ends` in
 *   any; `can` whether a value can be
 * @throws whatever an end or `can` throws but what `ifAllowed` lets go: what is refused cannot be
 * @source definition
 */
export function nearestPossible(of: {
  readonly read: number;
  readonly doubt: number;
  readonly limits?: Limits | undefined;
  readonly ends: readonly ((value: number) => number)[];
  readonly can: (value: number) => boolean;
}): number | undefined {
  const { read, doubt, limits, ends, can } = of;
  const { min, max } = limits ?? { min: -Infinity, max: Infinity };
  const far = (value: number) => Math.abs(value - read);
  return [...ends.map((end) => ifAllowed(() => zeroOf(end, read, doubt)) ?? Number.NaN), min, max]
    .filter((value) => Number.isFinite(value) && value >= min && value <= max)
    .toSorted((a, b) => far(a) - far(b))
    .find((value) => ifAllowed(() => can(value)));
}

/** Steps for what is not quite a straight line. */
const STEPS = 8;

/** Where a line meets nothing: by the secant from x and a tenth of its doubt below, or above where less cannot be. */
function zeroOf(f: (x: number) => number, x: number, doubt: number): number {
  const step = doubt / 10;
  let [a, b] = [x, x > step ? x - step : x + step];
  let fa = f(a);
  for (let i = 0; i < STEPS; i++) {
    const fb = f(b);
    if (fb === fa || Math.abs(b - a) < SLIVER * Math.abs(b)) break;
    [a, b, fa] = [b, b - (fb * (b - a)) / (fb - fa), fb];
  }
  return b;
}
