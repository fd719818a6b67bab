/**
 * “Near enough”: the tolerance of a wet density, as a share of the target.
 * @source california-721-2-1
 */
export const NEAR_ENOUGH = 0.05;
/** Beyond this many times that tolerance, a mix is not the planned one. A choice, no source. */
export const STILL_THAT_MIX = 2;
/**
 * A mean deviation of batches below this share is no reason to correct the plan: a survival learned
 * from few batches causes as much. A choice.
 */
export const WORTH = 0.02;
