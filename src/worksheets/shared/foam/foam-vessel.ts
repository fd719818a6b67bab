/** The worksheet that asks for the vessel of the foam. A test holds its words to it. */
const weighing = { from: 'How heavy is my foam?', by: 'foam-density' } as const;

/** The empty weight of the vessel the foam was weighed in, for buckets that may be the same one. */
export const FOAM_TARE = { bench: 'bucket.tare', ...weighing } as const;

/** Said behind a full vessel that weighs no more than the empty one. */
export const zeroed = (full: number): string =>
  full > 0
    ? ' If the scale was set to zero with the empty vessel on it, type 0 for its empty weight.'
    : '';

/** Its volume: known, or else weighed full of water. */
export const FOAM_VESSEL = {
  takes: 'bucket.brim',
  borrows: { bench: 'bucket.volume', unless: ['foam.vesselKnown', 'weighed'], ...weighing },
} as const;
