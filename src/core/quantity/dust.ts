/**
 * How far off a bound a value may come back that was worked out from it: a last binary digit, as when 32 °F is turned
 * to 0 °C. In the value's own unit. No range: any number.
 * @source none: a guard, not a formula
 */
export const dust = (value: number): number => Math.abs(value) * 1e-12;
