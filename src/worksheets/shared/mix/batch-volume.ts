/** The bench key of a volume of mix that the reader typed, such as the sum of several forms. */
export const TYPED_VOLUME = 'proportion.volume';

/**
 * Options of a field for the volume of the batch: the typed volume, else what the forms hold. A
 * test checks the question and id.
 */
export const BATCH_VOLUME = {
  takes: 'batch.volume',
  borrows: { bench: TYPED_VOLUME, from: 'What goes into the batch?', by: 'proportion' },
} as const;
