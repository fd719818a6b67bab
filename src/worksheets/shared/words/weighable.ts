/**
 * Below this mass, kg, half a gram of a kitchen scale that shows whole grams is more than a tenth;
 * twice the mass is weighed well enough. A choice.
 */
export const WEIGHABLE = 0.005;
