/** How much rougher a move may be than it was reckoned: a jerk, a sticking corner. A guess. Common practice, no source. */
export const JERK = 0.5;
