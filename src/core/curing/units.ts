import { FOOT, HOUR, ICE_POINT, POUND } from '../quantity/constants.ts';

/** One mile an hour in m/s, exact. @source nist-sp-811 */
export const MILE_PER_HOUR = (5280 * FOOT) / HOUR;

/** One lb/(ft²·h) in kg/(m²·s), exact. @source nist-sp-811 */
export const POUND_PER_SQUARE_FOOT_HOUR = POUND / FOOT ** 2 / HOUR;

/** Temperature in °C of one in K. No range: arithmetic. @source definition */
export function celsius(kelvin: number): number {
  return kelvin - ICE_POINT;
}

/** Temperature in °F of one in K. No range: arithmetic. @source definition */
export function fahrenheit(kelvin: number): number {
  return celsius(kelvin) * 1.8 + 32;
}
