/**
 * Relative rounding error of a conversion to another unit and back, as in 3 in = 7.62 cm: thousands
 * of units in the last place, and less than any reading shows.
 * @source none: a guard, not a formula
 */
export const DUST = 1e-12;

/**
 * Relative rounding error of a value computed from several others.
 * @source none: a guard, not a formula
 */
export const SLIVER = 1e-9;

/**
 * Slightly above an upper bound, so that a value on the bound does not exceed it, in the bound's
 * own unit. `share` is the relative error allowed. No range: any number.
 * @source none: a guard, not a formula
 */
export const justOver = (bound: number, share = DUST): number => bound + share * Math.abs(bound);

/**
 * Slightly below a lower bound, so that a value on the bound does not fall short of it. Unit and
 * `share` as `justOver`. No range: any number.
 * @source none: a guard, not a formula
 */
export const justUnder = (bound: number, share = DUST): number => bound - share * Math.abs(bound);
