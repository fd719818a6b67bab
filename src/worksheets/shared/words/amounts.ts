// Units to show instead of the usual ones of a kind.

/** Foam added in a correction: its volume, and its mass below. */
export const ADDED_FOAM = { metric: 'L', us: 'qt' } as const;
export const ADDED_FOAM_MASS = { metric: 'kg', us: 'oz' } as const;
export const SMALL_VOLUME = { metric: 'mL', us: 'fl oz' } as const;
export const SMALL_MASS = { metric: 'g', us: 'oz' } as const;
export const PERCENT = { metric: '%', us: '%' } as const;
/** Foam density, as the trade states it. */
export const FOAM = { metric: 'g/L', us: 'lb/ft3' } as const;
/** Density of base mix in a jug; the US unit is that of mud balances. */
export const JUG = { metric: 'kg/L', us: 'lb/gal' } as const;
/** Alkalinity: water reports give it in mg/L in both systems. */
export const ALKALINITY = { metric: 'mg/L CaCO3', us: 'mg/L CaCO3' } as const;
/** Times of setting, and of curing below. */
export const HOURS = { metric: 'h', us: 'h' } as const;
export const DAYS = { metric: 'd', us: 'd' } as const;
/** Stresses: kilopascals for young foamed concrete, megapascals below for hardened. */
export const KPA = { metric: 'kPa', us: 'psi' } as const;
export const MPA = { metric: 'MPa', us: 'psi' } as const;
