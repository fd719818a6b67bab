/** How much a record may hold, so that a file from elsewhere cannot fill the store. */
export const LIMITS = {
  name: 120,
  notes: 20_000,
  /** A table of readings may be typed into one field. */
  typed: 4000,
  rows: 40,
  /** Fields of a row. */
  cells: 40,
  text: 200,
  batches: 5000,
  photos: 12,
  /** Base64 of a photo: 100 kB and a little. */
  photo: 140_000,
  corrections: 20,
  logPoints: 5000,
  /** More than all worksheets have fields. */
  benchEntries: 1000,
} as const;
