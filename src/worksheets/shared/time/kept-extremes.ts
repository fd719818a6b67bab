/**
 * The bench keys of the coldest and the warmest temperature after casting. Forecasts count too,
 * because the time at which a part should be strong enough depends on them.
 */
export const KEPT_EXTREMES = {
  coldest: 'curing.coldestOfAll',
  warmest: 'curing.warmestOfAll',
} as const;
/** The bench key of the first frost, s after casting; nothing is kept there if there is none. */
export const KEPT_FROST = 'curing.firstFrost';
