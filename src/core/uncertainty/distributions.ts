import { demand, demandWhole } from '../domain-error.ts';
import type { Random } from './random.ts';

/** The distribution of a reading: draws one value from two streams, uniform and standard normal. */
export type Distribution = (even: Random, normal: Random) => number;

/**
 * A normal distribution: N(mean, u²). No range: a definition.
 * @param mean in the unit of the reading
 * @param u standard uncertainty, same unit, 0 or more
 * @throws {DomainError} for a negative uncertainty
 * @source jcgm-101 6.4.7
 */
export function gaussian(mean: number, u: number): Distribution {
  demand('uncertainty', u, 'count', { min: 0 });
  return (_, normal) => mean + u * normal();
}

/**
 * A uniform distribution between two ends: R(a, b). Its standard uncertainty is (b − a)/√12. No
 * range: a definition.
 * @throws {DomainError} when the ends are in the wrong order
 * @source jcgm-101 6.4.2
 */
export function rectangular(low: number, high: number): Distribution {
  demand('high', high, 'count', { min: low });
  return (even) => low + (high - low) * even();
}

/**
 * The same with uncertain ends: a ± d and b ± d. Its variance is (b − a)²/12 + d²/9. No range: a
 * definition.
 * @throws {DomainError} when the ends are in the wrong order, or d is negative or above half the
 *   width
 * @source jcgm-101 6.4.3 (from memory)
 */
export function curvedTrapezoid({
  low,
  high,
  slack,
}: {
  readonly low: number;
  readonly high: number;
  readonly slack: number;
}): Distribution {
  demand('high', high, 'count', { min: low });
  demand('slack', slack, 'count', { min: 0, max: (high - low) / 2 });
  return (even) => {
    const from = low - slack + 2 * slack * even();
    const to = low + high - from;
    return from + (to - from) * even();
  };
}

/**
 * A quantity that oscillates sinusoidally between two ends and is read at a random moment: U(a, b).
 * Its standard uncertainty is (b − a)/√8. No range: a definition.
 * @throws {DomainError} when the ends are in the wrong order
 * @source jcgm-101 6.4.6
 */
export function arcsine(low: number, high: number): Distribution {
  demand('high', high, 'count', { min: low });
  return (even) => (low + high) / 2 + ((high - low) / 2) * Math.sin(2 * Math.PI * even());
}

/**
 * The mean of a few repeated readings, scaled and shifted Student's t: t(mean, s²) with ν degrees
 * of freedom, a whole number. Its standard uncertainty is s √(ν/(ν − 2)) for ν above 2. No range: a
 * definition.
 * @throws {DomainError} for a negative scale, fewer than one degree of freedom, or a number not
 *   whole
 * @source jcgm-101 6.4.9
 */
export function scaledT({
  mean,
  scale,
  freedom,
}: {
  readonly mean: number;
  readonly scale: number;
  readonly freedom: number;
}): Distribution {
  demand('scale', scale, 'count', { min: 0 });
  demandWhole('freedom', freedom, { min: 1 });
  return (_, normal) => {
    let squares = 0;
    for (let i = 0; i < freedom; i++) squares += normal() ** 2;
    return mean + scale * normal() * Math.sqrt(freedom / squares);
  };
}
