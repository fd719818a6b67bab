/**
 * A value turned to another unit and back may miss itself by so small a share, as 3 in is 7.62 cm: thousands of last
 * binary digits, and less than any reading shows.
 * @source none: a guard, not a formula
 */
export const DUST = 1e-12;

/**
 * A value worked out of several others may miss what it comes to by so small a share.
 * @source none: a guard, not a formula
 */
export const SLIVER = 1e-9;

/**
 * So little over an upper bound that a value lying on it does not pass, in the bound's own unit. `share` of it that the
 * value may be off. No range: any number.
 * @source none: a guard, not a formula
 */
export const justOver = (bound: number, share = DUST): number => bound + share * Math.abs(bound);

/**
 * So little under a lower bound that a value lying on it does not pass. Unit and `share` as `justOver`. No range: any number.
 * @source none: a guard, not a formula
 */
export const justUnder = (bound: number, share = DUST): number => bound - share * Math.abs(bound);
