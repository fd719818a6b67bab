/** Exact conversions the sources of this folder are written in. Core itself stays in SI. */

/** 0 °C in kelvin, exact. @source nist-sp811 */
export const ICE_POINT = 273.15;

/** One hour in seconds, exact. @source nist-sp811 */
export const HOUR = 3600;

/** One day in seconds, exact. @source nist-sp811 */
export const DAY = 86400;

/** One mile an hour in m/s, exact. @source nist-sp811 */
export const MILE_PER_HOUR = 1609.344 / 3600;

/** One pound in kg, exact. @source nist-sp811 */
export const POUND = 0.45359237;

/** One square foot in m², exact. @source nist-sp811 */
export const SQUARE_FOOT = 0.3048 ** 2;

/** One pound-force per square inch in Pa, exact by definition. @source nist-sp811 */
export const PSI = (POUND * 9.80665) / 0.0254 ** 2;

/** Celsius temperature of a kelvin one. No range: arithmetic. @source nist-sp811 */
export function celsius(kelvin: number): number {
  return kelvin - ICE_POINT;
}

/** Fahrenheit temperature of a kelvin one. No range: arithmetic. @source nist-sp811 */
export function fahrenheit(kelvin: number): number {
  return celsius(kelvin) * 1.8 + 32;
}
