import { demand, demandWhole } from '../domain-error.ts';

/** Default confidence of a bound: 95 %. Common practice, no source. @source common-practice */
export const USUAL_CONFIDENCE = 0.95;

/**
 * How many standard errors away must a bound be so that it holds with probability `confidence`? The
 * two-sided quantile of Student's t for a whole number of degrees of freedom.
 *
 * The probability between −t and t, with θ = atan(t/√ν): for odd ν, (2/π)(θ + sin θ Σ aⱼ cos^(2j+1)
 * θ), aⱼ = aⱼ₋₁ 2j/(2j + 1); for even ν, sin θ Σ bⱼ cos^(2j) θ, bⱼ = bⱼ₋₁ (2j − 1)/(2j). Solved by
 * bisection.
 *
 * @param freedom degrees of freedom, a whole number from 1
 * @param confidence share, between 0 and 1
 * @returns the quantile. No range is published: the series is exact.
 * @throws {DomainError} freedom below 1 or not whole, confidence outside 0–1
 * @source abramowitz-stegun 26.7.3, 26.7.4 (from memory)
 */
export function studentT({
  freedom,
  confidence,
}: {
  readonly freedom: number;
  readonly confidence: number;
}): number {
  demandWhole('freedom', freedom, { min: 1 });
  demand('confidence', confidence, 'ratio', { min: 0, max: 1, aboveMin: true, belowMax: true });
  let low = 0;
  let high = Math.PI / 2;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (shareWithin(middle, freedom) < confidence) low = middle;
    else high = middle;
  }
  return Math.sqrt(freedom) * Math.tan((low + high) / 2);
}

/**
 * What is the probability below a value of Student's t? The cumulative distribution, by the series
 * above.
 *
 * @param t the value, in standard errors
 * @param freedom degrees of freedom, a whole number from 1
 * @returns a share, 0–1. No range is published: the series is exact.
 * @throws {DomainError} freedom below 1 or not whole, t not a number
 * @source abramowitz-stegun 26.7.3, 26.7.4 (from memory)
 */
export function studentTBelow({
  t,
  freedom,
}: {
  readonly t: number;
  readonly freedom: number;
}): number {
  demandWhole('freedom', freedom, { min: 1 });
  if (Math.abs(t) === Number.POSITIVE_INFINITY) return t > 0 ? 1 : 0;
  demand('t', t, 'count', {});
  const within = shareWithin(Math.atan(Math.abs(t) / Math.sqrt(freedom)), freedom);
  return (1 + Math.sign(t) * within) / 2;
}

function shareWithin(theta: number, freedom: number): number {
  const cos = Math.cos(theta);
  const odd = freedom % 2 === 1;
  let term = odd ? cos : 1;
  let sum = 0;
  for (let k = odd ? 3 : 2; k <= freedom; k += 2) {
    sum += term;
    term *= (cos ** 2 * (k - 1)) / k;
  }
  return odd ? (2 / Math.PI) * (theta + Math.sin(theta) * sum) : Math.sin(theta) * sum;
}
