import { HOUR, ICE_POINT } from '../quantity/constants.ts';

/** The last digit of a reading in °F, K: no limit is passed by it. */
const DIGIT = 1e-6;

/** At or below this, K, water in the pores may freeze: 0 °C, on the safe side of the solution's own point. Common practice, no source. @source common-practice */
export const FREEZES_AT = ICE_POINT + DIGIT;

/**
 * Before this age, s, no estimate is offered, whatever the growth curve says: a curve fitted to days says
 * nothing about hours. Adjusted for cold, but by the clock where it is warm: that warmth does not shorten
 * it is a choice. 16 h is the least time test specimens stay in their moulds.
 * Read second-hand. @source en-12390-2
 */
export const EARLIEST_ADJUSTED_AGE = 16 * HOUR;

/**
 * Whether a part is younger than any estimate speaks of: by its age adjusted for temperature, or by the
 * clock. `adjustedAge` s; `sinceCasting` s, where it is known. No range: a comparison.
 * @source en-12390-2
 */
export function tooYoungToEstimate(of: {
  readonly adjustedAge: number;
  readonly sinceCasting?: number | undefined;
}): boolean {
  return Math.min(of.adjustedAge, of.sinceCasting ?? Infinity) < EARLIEST_ADJUSTED_AGE;
}

/** Coldest a part should get while it cures, K: 5 °C. Common practice, no source. @source common-practice */
export const COLDEST_CURE = ICE_POINT + 5;

/** Core temperature not to pass, K: 70 °C, above which ettringite may form late. Common practice, no source. @source common-practice */
export const PEAK_LIMIT = ICE_POINT + 70;

/** Where water boils at sea level, K, and no sum of heat conducted means anything more. @source common-practice */
export const BOILS = ICE_POINT + 100;

/**
 * Whether a part gets hotter than it should while it cures: at 70 °C itself it does. `temperature` K. No
 * range: a comparison.
 * @source common-practice
 */
export function tooHotToCure(temperature: number): boolean {
  return temperature >= PEAK_LIMIT - DIGIT;
}

/**
 * Whether a part gets colder than it should while it cures: at 5 °C itself it does not. `temperature` K.
 * No range: a comparison.
 * @source common-practice
 */
export function tooColdToCure(temperature: number): boolean {
  return temperature < COLDEST_CURE - DIGIT;
}
