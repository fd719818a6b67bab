import { demand } from '../domain-error.ts';
import { STANDARD_GRAVITY } from '../quantity/constants.ts';

/** The load on a part as it leaves its form, by the two usual rules. */
export interface Stripping {
  /** Which of the two is larger. */
  readonly governs: 'factor' | 'pull';
  /** The values to pass on: the factor with no pull, or the pull with a factor of 1. */
  readonly factor: number;
  /** Pa */
  readonly adhesion: number;
}

/**
 * How hard does the form hold the part back? Precast practice multiplies the weight by a factor;
 * another rule adds a pull on each area of the face, whatever the weight. Both stand for the same
 * suction, so they are not added: the larger governs. ρ g d k against ρ g d + a. Under a pull per
 * area of 1 kPa and a factor of 1.3 the pull governs below 3.3 kPa of weight. Both from memory, for
 * ordinary concrete; no range is published.
 * @param part density kg/m³ and depth m, above 0; factor 1 or more; adhesion Pa, 0 or more
 * @throws {DomainError} outside those
 * @source pci-handbook
 * @source cen-tr-15728
 */
export function strippingBurden(part: {
  readonly density: number;
  readonly depth: number;
  readonly factor: number;
  readonly adhesion: number;
}): Stripping {
  const { density, depth, factor, adhesion } = part;
  demand('density', density, 'density', { min: 0, aboveMin: true });
  demand('depth', depth, 'length', { min: 0, aboveMin: true });
  demand('factor', factor, 'ratio', { min: 1 });
  demand('adhesion', adhesion, 'stress', { min: 0 });
  const weight = density * STANDARD_GRAVITY * depth;
  return weight + adhesion > weight * factor
    ? { governs: 'pull', factor: 1, adhesion }
    : { governs: 'factor', factor, adhesion: 0 };
}
