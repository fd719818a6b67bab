/** The worksheet that asks for the vessel of the foam: its question and id, checked by a test. */
const weighing = { from: 'How heavy is my foam?', by: 'foam-density' } as const;

/** The empty weight of that vessel, for fields about a bucket that may be the same one. */
export const FOAM_TARE = { bench: 'bucket.tare', ...weighing } as const;

/** Added to the refusal of a full vessel that weighs no more than the empty one. */
export const zeroed = (full: number): string =>
  full > 0
    ? ' If the scale was set to zero with the empty vessel on it, type 0 for its empty weight.'
    : '';

/** The volume of the foam’s vessel: as typed, or as found by weighing it full of water. */
export const FOAM_VESSEL = {
  takes: 'bucket.brim',
  borrows: { bench: 'bucket.volume', unless: ['foam.vesselKnown', 'weighed'], ...weighing },
} as const;
