// Alternatives to a kind’s own units, which apply wherever none are given.

/** Foam added in a correction: in US units quarts, and ounces of it. */
export const ADDED_FOAM = { metric: 'L', us: 'qt' } as const;
export const ADDED_FOAM_MASS = { metric: 'kg', us: 'oz' } as const;
export const SMALL_VOLUME = { metric: 'mL', us: 'fl oz' } as const;
export const SMALL_MASS = { metric: 'g', us: 'oz' } as const;
export const PERCENT = { metric: '%', us: '%' } as const;
/** Foam, as this trade states it. */
export const FOAM = { metric: 'g/L', us: 'lb/ft3' } as const;
/** Base mix in a jug: in US units as mud balances show it. */
export const JUG = { metric: 'kg/L', us: 'lb/gal' } as const;
/** Alkalinity: reports give it in mg/L everywhere. */
export const ALKALINITY = { metric: 'mg/L CaCO3', us: 'mg/L CaCO3' } as const;
/** Times: how long a mix sets, a part cures. */
export const HOURS = { metric: 'h', us: 'h' } as const;
export const DAYS = { metric: 'd', us: 'd' } as const;
/** Stresses: tens and hundreds of kilopascals in young foamed concrete, megapascals in hardened. */
export const KPA = { metric: 'kPa', us: 'psi' } as const;
export const MPA = { metric: 'MPa', us: 'psi' } as const;
