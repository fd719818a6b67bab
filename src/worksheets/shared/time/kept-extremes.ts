/**
 * The keys of the coldest and the warmest from casting on. The days ahead count too: when a part should be
 * strong enough rests on them.
 */
export const KEPT_EXTREMES = {
  coldest: 'curing.coldestOfAll',
  warmest: 'curing.warmestOfAll',
} as const;
/** The key of when it first freezes, s from casting; nothing lies there where it does not. */
export const KEPT_FROST = 'curing.firstFrost';
