import { NotConverged } from './not-converged.ts';

/**
 * The x between `low` and `high` at which a continuous `f` changes sign.
 *
 * Bisection quickened by the Illinois false position: the bracket always shrinks, so it cannot run
 * away. Stops when the bracket or f is within the tolerances given.
 *
 * @throws {NotConverged} when f has the same sign at both ends, or after 200 steps.
 * @source definition
 */
export function root(
  f: (x: number) => number,
  between: { readonly low: number; readonly high: number },
  within: { readonly x: number; readonly f: number },
): number {
  let { low, high } = between;
  let fLow = f(low);
  let fHigh = f(high);
  if (Math.abs(fLow) <= within.f) return low;
  if (Math.abs(fHigh) <= within.f) return high;
  if (!(fLow * fHigh < 0)) throw new NotConverged('root', 0);
  let side = 0;
  for (let step = 1; step <= 200; step++) {
    const cut = (low * fHigh - high * fLow) / (fHigh - fLow);
    const inside = step % 4 !== 0 && cut > Math.min(low, high) && cut < Math.max(low, high);
    const x = inside ? cut : (low + high) / 2;
    const fx = f(x);
    if (Math.abs(fx) <= within.f || Math.abs(high - low) <= within.x) return x;
    if (fx * fHigh > 0) {
      high = x;
      fHigh = fx;
      if (side === -1) fLow /= 2;
      side = -1;
    } else {
      low = x;
      fLow = fx;
      if (side === 1) fHigh /= 2;
      side = 1;
    }
  }
  throw new NotConverged('root', 200);
}
