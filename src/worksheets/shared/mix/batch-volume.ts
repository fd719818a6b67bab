/** Where the reader types how much mix to make, such as the sum of several forms. */
export const TYPED_VOLUME = 'proportion.volume';

/** How much mix is made, for what follows: what was typed there, else what the forms hold. A test holds its words to it. */
export const BATCH_VOLUME = {
  takes: 'batch.volume',
  borrows: { bench: TYPED_VOLUME, from: 'What goes into the batch?', by: 'proportion' },
} as const;
