import { NotConverged } from './not-converged.ts';

/**
 * The x between `low` and `high` at which a continuous `f` changes sign.
 *
 * False position (Illinois variant), with a bisection whenever four steps have not halved the
 * bracket, so it can neither diverge nor stall. Stops when the bracket or |f| is within the
 * tolerances `within`.
 *
 * `atLow` and `atHigh` are f at the ends, if already known.
 *
 * @throws {NotConverged} when f has the same sign at both ends, or after 200 steps.
 * @source definition
 */
export function root(
  f: (x: number) => number,
  between: {
    readonly low: number;
    readonly high: number;
    readonly atLow?: number;
    readonly atHigh?: number;
  },
  within: { readonly x: number; readonly f: number },
): number {
  let { low, high } = between;
  let fLow = between.atLow ?? f(low);
  let fHigh = between.atHigh ?? f(high);
  if (Math.abs(fLow) <= within.f) return low;
  if (Math.abs(fHigh) <= within.f) return high;
  if (!(fLow * fHigh < 0)) throw new NotConverged('root', 0);
  let side = 0;
  let wide = Math.abs(high - low);
  for (let step = 1; step <= 200; step++) {
    const cut = (low * fHigh - high * fLow) / (fHigh - fLow);
    const stalled = step % 4 === 0 && Math.abs(high - low) > wide / 2;
    if (step % 4 === 0) wide = Math.abs(high - low);
    const inside = !stalled && cut > Math.min(low, high) && cut < Math.max(low, high);
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
