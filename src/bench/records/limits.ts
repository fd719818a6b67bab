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

type Loose = Readonly<Record<string, unknown>>;

/** A record cut to what it may hold, and the parts that held more, whole: those that grow while it is written. */
export function withinLimits(record: Loose): { readonly within: Loose; readonly over: Loose } {
  const over: Record<string, unknown> = {};
  const within: Record<string, unknown> = { ...record };
  for (const part of ['notes', 'photos', 'corrections'] as const) {
    const held = record[part];
    if (!(typeof held === 'string' || Array.isArray(held)) || held.length <= LIMITS[part]) continue;
    over[part] = held;
    within[part] = held.slice(0, LIMITS[part]);
  }
  return { within, over };
}
