import { demand } from '../domain-error.ts';

/**
 * How a foam drains: v(t) = tⁿ/(c + tⁿ), written with its half time τ = c^(1/n) so that every
 * constant has a plain unit: v = 1/(1 + (τ/t)ⁿ).
 */
export interface DrainageCurve {
  /** Time at which half the liquid has drained, s. */
  readonly halfTime: number;
  /** The exponent n. */
  readonly exponent: number;
}

/** Early drainage that shows no curvature yet: v = rate × t, until all is drained. */
export interface StraightDrainage {
  /** Share of the liquid drained a second, 1/s. */
  readonly rate: number;
}

export type Drainage = DrainageCurve | StraightDrainage;

/**
 * What share of the liquid has drained by a time?
 *
 * v = tⁿ/(c + tⁿ) with c = τⁿ, or rate × t up to 1.
 *
 * @param drainage half time in s and exponent, or rate in 1/s
 * @param time since the foam was made, s
 * @returns share drained, 0–1. No range is published; the curve is a fit, not a law.
 * @throws {DomainError} a negative time or rate, a half time or exponent that is not positive
 * @source food-foam-drainage v = V tⁿ/(c + tⁿ)
 */
export function drainedAt({
  drainage,
  time,
}: {
  readonly drainage: Drainage;
  readonly time: number;
}): number {
  check(drainage);
  demand('time', time, 'time', { min: 0 });
  if ('rate' in drainage) return Math.min(1, drainage.rate * time);
  return 1 / (1 + (drainage.halfTime / time) ** drainage.exponent);
}

/**
 * When has a given share drained?
 *
 * t = τ (v/(1 − v))^(1/n), so a quarter at (c/3)^(1/n); or v/rate.
 *
 * @param drainage half time in s and exponent, or rate in 1/s
 * @param share of the liquid, 0 to less than 1
 * @returns time since the foam was made, s; Infinity when the rate is 0. No range is published.
 * @throws {DomainError} a share outside 0–1, a negative rate, a half time or exponent not positive
 * @source food-foam-drainage half time c^(1/n)
 */
export function timeToDrain({
  drainage,
  share,
}: {
  readonly drainage: Drainage;
  readonly share: number;
}): number {
  check(drainage);
  demand('share', share, 'ratio', { min: 0, max: 1, belowMax: true });
  if (share === 0) return 0;
  if ('rate' in drainage) return share / drainage.rate;
  return drainage.halfTime * (share / (1 - share)) ** (1 / drainage.exponent);
}

/**
 * How fast is liquid draining at a time?
 *
 * dv/dt = n v (1 − v)/t, which is n/(4 τ) at the half time; or the rate, until all is drained.
 *
 * @param drainage half time in s and exponent, or rate in 1/s
 * @param time since the foam was made, s, above 0
 * @returns share of the liquid a second, 1/s. No range is published.
 * @throws {DomainError} a time, half time or exponent that is not positive, a negative rate
 * @source food-foam-drainage derivative of the curve
 */
export function drainageRate({
  drainage,
  time,
}: {
  readonly drainage: Drainage;
  readonly time: number;
}): number {
  demand('time', time, 'time', { min: 0, aboveMin: true });
  const v = drainedAt({ drainage, time });
  if ('rate' in drainage) return v < 1 ? drainage.rate : 0;
  return (drainage.exponent * v * (1 - v)) / time;
}

function check(drainage: Drainage): void {
  if ('rate' in drainage) {
    demand('rate', drainage.rate, 'ratio', { min: 0 });
    return;
  }
  demand('halfTime', drainage.halfTime, 'time', { min: 0, aboveMin: true });
  demand('exponent', drainage.exponent, 'ratio', { min: 0, aboveMin: true });
}
