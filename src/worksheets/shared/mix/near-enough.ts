/** How far off is near enough, as a share of the target. @source california-721-2-1 */
export const NEAR_ENOUGH = 0.05;
/** Farther off than so many times that, the mix is not the one that was planned. A line of our own, no source. */
export const STILL_THAT_MIX = 2;
/** Batches off by less than this share on average are no reason to correct a plan: so much comes of a share learned from few. A choice. */
export const WORTH = 0.02;
