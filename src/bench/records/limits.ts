/** How much a record may hold, so that an imported file cannot fill the store. */
export const LIMITS = {
  name: 120,
  notes: 20_000,
  /** One field may hold a table of readings. */
  typed: 4000,
  rows: 40,
  /** Fields of a row. */
  cells: 40,
  text: 200,
  batches: 5000,
  photos: 12,
  /** Base64 of a photo: a little over 100 kB. */
  photo: 140_000,
  corrections: 20,
  logPoints: 5000,
  /** More than all worksheets have fields. */
  benchEntries: 1000,
} as const;
