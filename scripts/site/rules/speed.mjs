// A page answers at once, on a slow phone too.

/** From a key press to its results, ms: a frame, on a phone four times slower than a usual machine. */
export const FRAME = 16;

/** How that is timed: the median of so many presses, in the quietest of so many rounds. */
export const PRESSES = 5;
export const ROUNDS = 8;
/** So often a page is loaded at most, while a worksheet of it takes longer than a frame. */
export const LOADS = 6;

/** What Lighthouse gives a page at least, in each of its categories. */
export const LEAST_SCORE = 0.99;
