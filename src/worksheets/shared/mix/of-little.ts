/**
 * The ± of a bucket does not fit a cupful: until it is typed, the ± is at most a fifth of the amount.
 * A choice, no source.
 */
export const OF_LITTLE = { plusMinusAtMost: 0.2 } as const;
