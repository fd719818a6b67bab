/** Units of the bench: what a maker weighs in kilograms and measures in litres. */
export const LITRES = { metric: 'L', us: 'gal' } as const;
/** Foam that a correction brings, wherever it is said: in US units quarts, and ounces of it. */
export const ADDED_FOAM = { metric: 'L', us: 'qt' } as const;
export const ADDED_FOAM_MASS = { metric: 'kg', us: 'oz' } as const;
export const SMALL_VOLUME = { metric: 'mL', us: 'fl oz' } as const;
export const SMALL_MASS = { metric: 'g', us: 'oz' } as const;
export const PERCENT = { metric: '%', us: '%' } as const;
/** Wet and dry densities, and foam, as this trade says them. */
export const DENSITY = { metric: 'kg/m3', us: 'lb/ft3' } as const;
export const FOAM = { metric: 'g/L', us: 'lb/ft3' } as const;
/** Hardness, as calcium carbonate; in grains for US readers, whose softeners and strips count them. */
export const HARDNESS = { metric: 'mg/L CaCO3', us: 'gpg' } as const;
/** Alkalinity: reports give it in mg/L everywhere. */
export const ALKALINITY = { metric: 'mg/L CaCO3', us: 'mg/L CaCO3' } as const;
/** Measures as they are read off a form or a part. */
export const MM = { metric: 'mm', us: 'in' } as const;
/** Times: how long a foam is mixed and waits, a mix sets, a part cures. */
export const MINUTES = { metric: 'min', us: 'min' } as const;
export const HOURS = { metric: 'h', us: 'h' } as const;
export const DAYS = { metric: 'd', us: 'd' } as const;
/** Pressures of air, and stresses: of young foamed concrete tens and hundreds of kilopascals, of hardened megapascals. */
export const KPA = { metric: 'kPa', us: 'psi' } as const;
export const MPA = { metric: 'MPa', us: 'psi' } as const;
/** Temperatures. */
export const WARMTH = { metric: 'degC', us: 'degF' } as const;
/** A share as a number, such as a water/cement ratio. */
export const PLAIN = { metric: '1', us: '1' } as const;
