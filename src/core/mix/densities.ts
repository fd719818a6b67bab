/** Density of portland cement particles, kg/m³ (specific gravity 3.15). @source pca-cement */
export const CEMENT_DENSITY = 3150;

/** Density of sand particles, kg/m³ (specific gravity 2.65). @source navedtra-14071 */
export const SAND_DENSITY = 2650;

/**
 * Density of mixing water, kg/m³: the trade's round number, 0.2 % above water at 20 °C.
 * @source common-practice
 */
export const MIX_WATER_DENSITY = 1000;
