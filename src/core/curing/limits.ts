import { HOUR, ICE_POINT } from '../quantity/constants.ts';

/** Rounding error of a reading in °F, K: it must not pass a limit. */
const DIGIT = 1e-6;

/**
 * At or below this, K, water in the pores may freeze: 0 °C, on the safe side of the solution's own
 * point. Common practice, no source.
 * @source common-practice
 */
export const FREEZES_AT = ICE_POINT + DIGIT;

/**
 * Before this age, s, no estimate is offered, whatever the growth curve says: a curve fitted to
 * days says nothing about hours. Adjusted for cold; where it is warm, by the clock: that warmth
 * does not shorten it is a choice. 16 h is the shortest time that test specimens stay in their
 * moulds. Read second-hand.
 * @source en-12390-2
 */
export const EARLIEST_ADJUSTED_AGE = 16 * HOUR;

/**
 * Whether a part is too young for any estimate, by its adjusted age or by the clock. `adjustedAge`
 * s; `sinceCasting` s, if known. No range: a comparison.
 * @source en-12390-2
 */
export function tooYoungToEstimate(of: {
  readonly adjustedAge: number;
  readonly sinceCasting?: number | undefined;
}): boolean {
  return Math.min(of.adjustedAge, of.sinceCasting ?? Infinity) < EARLIEST_ADJUSTED_AGE;
}

/**
 * The lowest temperature a part should have while it cures, K: 5 °C. Common practice, no source.
 * @source common-practice
 */
export const COLDEST_CURE = ICE_POINT + 5;

/**
 * Limit of the core temperature, K: 70 °C, above which delayed ettringite may form. Common
 * practice, no source.
 * @source common-practice
 */
export const PEAK_LIMIT = ICE_POINT + 70;

/**
 * The boiling point of water at sea level, K, beyond which a sum of conducted heat is meaningless.
 * @source common-practice
 */
export const BOILS = ICE_POINT + 100;

/**
 * Whether a part gets hotter than it should while it cures; 70 °C itself is too hot. `temperature`
 * K. No range: a comparison.
 * @source common-practice
 */
export function tooHotToCure(temperature: number): boolean {
  return temperature >= PEAK_LIMIT - DIGIT;
}

/**
 * Whether a part gets colder than it should while it cures; 5 °C itself is not too cold.
 * `temperature` K. No range: a comparison.
 * @source common-practice
 */
export function tooColdToCure(temperature: number): boolean {
  return temperature < COLDEST_CURE - DIGIT;
}
