import { ifAllowed } from '../domain-error.ts';
import { SLIVER } from '../quantity/dust.ts';

/** The smallest and largest possible value of a reading, SI. */
export interface Limits {
  readonly min: number;
  readonly max: number;
}

/**
 * The possible value nearest to the reading at which one of several functions is zero, or a limit
 * of the reading; undefined if there is none. For functions that are linear in the reading, or
 * nearly so: each root is found in a few secant steps. No range: a search.
 *
 * @param of `read`, its standard uncertainty `doubt`, above 0, and the `limits` of such a reading,
 *   in one unit; `ends` in any; `can` whether a value can be
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

/** Number of steps, for functions that are not quite linear. */
const STEPS = 8;

/**
 * The root of a line, by the secant through x and a point a tenth of its uncertainty below, or
 * above if less is impossible.
 */
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
