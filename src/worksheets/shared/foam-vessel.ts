/** The worksheet that asks for the vessel of the foam. A test holds its words to it. */
const weighing = { from: 'How heavy is my foam?', by: 'foam-density' } as const;

/** The empty weight of the vessel the foam was weighed in, for buckets that may be the same one. */
export const FOAM_TARE = { bench: 'bucket.tare', ...weighing } as const;

/** Its volume: known, or else weighed full of water. */
export const FOAM_VESSEL = {
  takes: 'bucket.brim',
  borrows: { bench: 'bucket.volume', unless: ['foam.vesselKnown', 'weighed'], ...weighing },
} as const;
