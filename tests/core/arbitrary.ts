import fc from 'fast-check';

/** Any number of a span, its ends with it. */
export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
