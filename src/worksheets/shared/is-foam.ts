/** Denser than this, kg/m³, it has less than three quarters of gas in it, and is hardly foam. A choice. */
const HARDLY = 250;

/** Whether it is a foam at all that is weighed so, kg/m³. */
export const isFoam = (density: number): boolean => density <= HARDLY;
