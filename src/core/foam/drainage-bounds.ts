import { demand } from '../domain-error.ts';
import { type DrainageCurve, drainedAt, timeToDrain } from './drainage-curve.ts';

/** A fitted value with its bounds at the confidence the fit was asked for. */
export interface Bounded {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A curve with the uncertainty that the readings leave in its two constants. */
export interface FittedCurve extends DrainageCurve {
  /**
   * Squared half widths: Student's t squared times the covariance of u = ln τ (τ in s) and the
   * exponent n, plus the error common to all shares.
   */
  readonly spread: { readonly uu: number; readonly un: number; readonly nn: number };
}

/**
 * When has a given share drained, and how sure is that? ln t = u + ln(v/(1 − v))/n, with bounds to
 * first order in u and n.
 *
 * @param curve from `fitDrainage`
 * @param share of the liquid, between 0 and 1
 * @returns times since the foam was made, s. No range is published; past the last reading the
 *   bounds know nothing of another shape the curve might have.
 * @throws {DomainError} a share not between 0 and 1
 * @source gavin-lm confidence of the fit
 */
export function drainTimeBounds({
  curve,
  share,
}: {
  readonly curve: FittedCurve;
  readonly share: number;
}): Bounded {
  demand('share', share, 'ratio', { min: 0, max: 1, aboveMin: true, belowMax: true });
  const odds = Math.log(share / (1 - share));
  const reach = halfWidth(curve, 1, -odds / curve.exponent ** 2);
  const value = timeToDrain({ drainage: curve, share });
  return { value, low: value * Math.exp(-reach), high: value * Math.exp(reach) };
}

/**
 * What share has drained by a time, and how sure is that? ln(v/(1 − v)) = n (ln t − u), with bounds
 * to first order in u and n.
 *
 * @param curve from `fitDrainage`
 * @param time since the foam was made, s
 * @returns shares, 0–1. No range is published; see `drainTimeBounds` on times past the last
 *   reading.
 * @throws {DomainError} a negative time
 * @source gavin-lm confidence of the fit
 */
export function drainedBounds({
  curve,
  time,
}: {
  readonly curve: FittedCurve;
  readonly time: number;
}): Bounded {
  const value = drainedAt({ drainage: curve, time });
  if (time === 0) return { value, low: 0, high: 0 };
  const away = Math.log(time / curve.halfTime);
  const odds = curve.exponent * away;
  const reach = halfWidth(curve, -curve.exponent, away);
  const share = (logOdds: number) => 1 / (1 + Math.exp(-logOdds));
  return { value, low: share(odds - reach), high: share(odds + reach) };
}

/**
 * The exponent n with its bounds. The half width is √spread.nn.
 *
 * @param curve from `fitDrainage`
 * @returns n and its bounds, no unit. No range is published. Throws nothing.
 * @source gavin-lm confidence of the fit
 */
export function exponentBounds(curve: FittedCurve): Bounded {
  const reach = halfWidth(curve, 0, 1);
  return { value: curve.exponent, low: curve.exponent - reach, high: curve.exponent + reach };
}

/**
 * The constant c = τⁿ with its bounds. ln c = n u, with bounds to first order in u and n.
 *
 * @param curve from `fitDrainage`
 * @returns c and its bounds, in sⁿ. No range is published. Throws nothing.
 * @source food-foam-drainage half time c^(1/n)
 * @source gavin-lm confidence of the fit
 */
export function constantBounds(curve: FittedCurve): Bounded {
  const u = Math.log(curve.halfTime);
  const reach = halfWidth(curve, curve.exponent, u);
  const value = curve.halfTime ** curve.exponent;
  return { value, low: value * Math.exp(-reach), high: value * Math.exp(reach) };
}

/** Half width of a quantity with derivatives `du` with respect to u and `dn` with respect to n. */
function halfWidth({ spread: { uu, un, nn } }: FittedCurve, du: number, dn: number): number {
  return Math.sqrt(Math.max(0, uu * du ** 2 + 2 * un * du * dn + nn * dn ** 2));
}
