/** Of less than this a kitchen scale that shows whole grams is a tenth off; twice it is well weighed, kg. A choice. */
export const WEIGHABLE = 0.005;
