/**
 * What a bucket is known to is no ± of a cupful: until it is typed, that of a small amount is no more than a fifth of
 * it. A choice: no source.
 */
export const OF_LITTLE = { plusMinusAtMost: 0.2 } as const;
