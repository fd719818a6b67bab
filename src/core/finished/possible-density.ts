/**
 * The range of possible densities of a piece of concrete, kg/m³. Lighter than any foam that set
 * into one piece, or denser than cement paste and stone without a pore, is a slip of the scale, the
 * tape or the unit. Common practice, no source.
 * @source common-practice
 */
export const POSSIBLE_DENSITY = { min: 100, max: 2600 } as const;
