import { demand } from '../domain-error.ts';
import type { Note } from '../note.ts';
import { studentT, USUAL_CONFIDENCE } from '../uncertainty/student-t.ts';
import {
  type Bounded,
  constantBounds,
  drainTimeBounds,
  exponentBounds,
  type FittedCurve,
} from './drainage-bounds.ts';
import type { StraightDrainage } from './drainage-curve.ts';
import { fitLogistic, moveTogether } from './logistic-fit.ts';

export interface DrainageReading {
  /** Time since the foam was made, s. */
  readonly time: number;
  /** Share of the foam's liquid drained by then (see `drained.ts`). */
  readonly drained: number;
}

export interface DrainageFit {
  readonly supported: true;
  /** Half time and exponent, as the other drainage functions take them, with their spread. */
  readonly curve: FittedCurve;
  /** The exponent n. */
  readonly exponent: Bounded;
  /** The constant c, in sⁿ. */
  readonly constant: Bounded;
  /** When a quarter of the liquid has drained, s: t25 = (c/3)^(1/n). */
  readonly quarterTime: Bounded;
  /** When half has, s: t50 = c^(1/n). */
  readonly halfTime: Bounded;
  /** Standard deviation of the readings about the curve, as a share of the liquid. */
  readonly scatter: number;
  /** Readings used: those after time 0. */
  readonly readings: number;
  /**
   * `beyond-readings`: the quarter or half time is later than the last reading, so it depends on
   * the assumed shape of the curve. (A time before the first reading does too, but has no note.)
   * `poor-fit`: the scatter is over three times the error of a reading, so this foam does not drain
   * along this curve.
   */
  readonly notes: readonly Note[];
}

/**
 * Why readings cannot support a fit:
 * - `too-few-readings`: fewer than four after time 0, or fewer than three different times
 * - `liquid-returns`: the drained share falls by more than four times the error of a reading (2.8
 *   standard errors of a difference)
 * - `no-rise`: the shares differ by no more than four times the error of a reading (nothing drains
 *   yet, or everything has)
 * - `no-single-curve`: no exponent fits best
 * - `curve-not-fixed`: a curve fits but is hardly determined: the low bound of its exponent is not
 *   above 0, or the bounds of its quarter time are more than a factor of 10 apart
 * - `no-curvature`: a straight line fits as well; `straight` is that line, valid up to the last
 *   reading
 */
export type Unsupported =
  | { readonly supported: false; readonly because: Exclude<Reason, 'no-curvature'> }
  | {
      readonly supported: false;
      readonly because: 'no-curvature';
      readonly straight: StraightDrainage & { readonly low: number; readonly high: number };
      /** The last reading, s. The line is not to be trusted past it. */
      readonly upTo: number;
    };
type Reason =
  | 'too-few-readings'
  | 'liquid-returns'
  | 'no-rise'
  | 'no-single-curve'
  | 'curve-not-fixed'
  | 'no-curvature';

/** Error of one reading, as a share of the liquid: 1 mL in 100 mL. @source common-practice */
const READING_ERROR = 0.01;
/**
 * The fewest readings after time 0 that can show the scatter about a curve with two constants.
 * @source common-practice
 */
const FEWEST_READINGS = 4;
/**
 * Degrees of freedom of `together`, which was not found from these readings: so many that Student's
 * t is that of the normal distribution, 1.96 at 95 %.
 */
const MANY = 1000;
/**
 * If the bounds of the quarter time are further apart than this factor, there is no fit.
 * @source common-practice
 */
const WIDEST_BOUNDS = 10;

/**
 * What curve do the readings of a draining foam follow, and how sure is it?
 *
 * v(t) = tⁿ/(c + tⁿ) by least squares on v. Bounds are t × s × √(gᵀ (JᵀJ)⁻¹ g) on n and on the
 * logarithms of c and of the times, with s² = squares/(N − 2), s at least the error of a reading,
 * and Student's t with N − 2 degrees of freedom. A line through the origin, v = r t, is preferred
 * if its squares exceed the curve's by less than (t s)² and s_line = √(squares/(N − 1)) is below 3
 * s. Its bounds are t × s_line/√Σt², with the same t, and s_line at least the error of a reading.
 * An error common to all shares, such as that of the foam's density, does not show in the readings.
 * It is added in quadrature, to first order: z times the change it causes in the curve or the line.
 * No range is published.
 *
 * @param readings times in s and shares drained, in any order; readings at time 0 are ignored
 * @param readingError standard error of one share, 0.01 by default
 * @param together relative standard uncertainty common to all shares; 0 by default
 * @param confidence of the bounds, default `USUAL_CONFIDENCE`
 * @returns the fit, or why there is none
 * @throws {DomainError} a negative time; a share more than five errors outside 0–1; an error not
 *   above 0 or above 0.2; a negative `together`; a confidence outside 0–1
 * @source food-foam-drainage the curve
 * @source gavin-lm parameter uncertainty from (JᵀWJ)⁻¹ (from memory)
 * @source jcgm-100 5.1.2, what all shares have in common
 */
export function fitDrainage({
  readings,
  readingError = READING_ERROR,
  together = 0,
  confidence = USUAL_CONFIDENCE,
}: {
  readonly readings: readonly DrainageReading[];
  readonly readingError?: number;
  readonly together?: number;
  readonly confidence?: number;
}): DrainageFit | Unsupported {
  demand('readingError', readingError, 'ratio', { min: 0, max: 0.2, aboveMin: true });
  demand('together', together, 'ratio', { min: 0 });
  for (const { time, drained } of readings) {
    demand('time', time, 'time', { min: 0 });
    demand('drained', drained, 'ratio', { min: -5 * readingError, max: 1 + 5 * readingError });
  }
  const used = readings.filter(({ time }) => time > 0).sort((a, b) => a.time - b.time);
  const times = used.map(({ time }) => time);
  const shares = used.map(({ drained }) => drained);
  const refused = unfit(times, shares, readingError);
  if (refused) return { supported: false, because: refused };

  const logs = times.map(Math.log);
  const fit = fitLogistic(logs, shares);
  const freedom = times.length - 2;
  const t = studentT({ freedom, confidence });
  const scatter = fit ? Math.sqrt(fit.squares / freedom) : 0;
  const half = t * Math.max(scatter, readingError);
  const common = together > 0 ? together * studentT({ freedom: MANY, confidence }) : 0;

  // The curve is preferred only if it fits better by more than scatter can explain (F = t² for one
  // more constant). A line that misses the readings by three errors is not considered.
  const line = straightLine(times, shares);
  const missed = Math.sqrt(line.squares / (freedom + 1));
  const gained = line.squares - (fit?.squares ?? line.squares);
  if (gained < half ** 2 && missed < 3 * Math.max(scatter, readingError)) {
    const { rate } = line;
    const own = (t * Math.max(missed, readingError)) / Math.sqrt(line.timesSquared);
    const reach = Math.hypot(own, common * rate);
    const straight = { rate, low: Math.max(0, rate - reach), high: rate + reach };
    return { supported: false, because: 'no-curvature', straight, upTo: times.at(-1)! };
  }
  if (!fit) return { supported: false, because: 'no-single-curve' };

  const { uu, un, nn } = fit.inverse;
  const read: FittedCurve = {
    halfTime: Math.exp(fit.u),
    exponent: fit.n,
    spread: { uu: half ** 2 * uu, un: half ** 2 * un, nn: half ** 2 * nn },
  };
  const open = drainTimeBounds({ curve: read, share: 0.25 });
  if (exponentBounds(read).low <= 0 || open.high > WIDEST_BOUNDS * open.low)
    return { supported: false, because: 'curve-not-fixed' };
  const curve = common > 0 ? movedBy(common, read, moveTogether(fit, logs, shares)) : read;
  const quarterTime = drainTimeBounds({ curve, share: 0.25 });
  const halfTime = drainTimeBounds({ curve, share: 0.5 });
  return {
    supported: true,
    curve,
    exponent: exponentBounds(curve),
    constant: constantBounds(curve),
    quarterTime,
    halfTime,
    scatter,
    readings: times.length,
    notes: [
      ...reached('quarterTime', quarterTime.value, times),
      ...reached('halfTime', halfTime.value, times),
      ...(scatter > 3 * readingError ? [{ code: 'poor-fit', of: 'readings' }] : []),
    ],
  };
}

/**
 * The curve with its spread widened by the change that a relative error `common` to all shares
 * causes.
 */
function movedBy(common: number, curve: FittedCurve, move: { u: number; n: number }): FittedCurve {
  const [du, dn] = [common * move.u, common * move.n];
  const { uu, un, nn } = curve.spread;
  return { ...curve, spread: { uu: uu + du ** 2, un: un + du * dn, nn: nn + dn ** 2 } };
}

function unfit(
  times: readonly number[],
  shares: readonly number[],
  readingError: number,
): Exclude<Reason, 'no-curvature'> | undefined {
  if (times.length < FEWEST_READINGS || new Set(times).size < 3) return 'too-few-readings';
  let highest = Number.NEGATIVE_INFINITY;
  for (const share of shares) {
    if (share < highest - 4 * readingError) return 'liquid-returns';
    highest = Math.max(highest, share);
  }
  const rise = Math.max(...shares) - Math.min(...shares);
  return rise <= 4 * readingError ? 'no-rise' : undefined;
}

/** The best line through the origin: no liquid has drained at time 0. */
function straightLine(times: readonly number[], shares: readonly number[]) {
  let [product, timesSquared] = [0, 0];
  for (const [i, time] of times.entries()) {
    product += time * shares[i]!;
    timesSquared += time ** 2;
  }
  const rate = Math.max(0, product / timesSquared);
  const squares = times.reduce((sum, time, i) => sum + (shares[i]! - rate * time) ** 2, 0);
  return { rate, squares, timesSquared };
}

function reached(of: string, time: number, times: readonly number[]): readonly Note[] {
  return time > times.at(-1)! ? [{ code: 'beyond-readings', of }] : [];
}
