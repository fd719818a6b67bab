/**
 * How much rougher a move may be than calculated: a jerk, a sticking corner. A guess.
 * @source common-practice
 */
export const JERK = 0.5;

/**
 * What does a move demand at worst, with a jerk? (1 + r) times the calculated value. No range is
 * published: a guess.
 * @param asked a stress, Pa, or its share of a strength; `rougher` r, a share
 * @source common-practice
 */
export const withJerk = (asked: number, rougher = JERK): number => (1 + rougher) * asked;
