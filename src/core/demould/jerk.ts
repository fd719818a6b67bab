/** How much rougher a move may be than it was reckoned: a jerk, a sticking corner. A guess. @source common-practice */
export const JERK = 0.5;

/**
 * What does a move ask for at worst, with a jerk? (1 + r) of what was reckoned. No range is published: a guess.
 * @param asked a stress, Pa, or its share of a strength; `rougher` r, a share
 * @source common-practice
 */
export const withJerk = (asked: number, rougher = JERK): number => (1 + rougher) * asked;
