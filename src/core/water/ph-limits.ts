/**
 * The least pH of water that EN 1008 lets mix cement, Table 1. From memory. @source en-1008-memory
 */
export const LEAST_PH = 4;
/**
 * Natural water is not so alkaline: something has been washed or dissolved in it, to be found out.
 * Common practice, no source.
 * @source common-practice
 */
export const WASH_WATER = 9;
/**
 * Water this alkaline stings as well: none is drawn, made or blended for foam. Common practice, no
 * source.
 * @source common-practice
 */
export const CAUSTIC = 10;
