/**
 * Something a result needs said beside it, as a short code. A worksheet turns it into a sentence.
 * `outside-range`: the input named in `of` lies outside what the source covers.
 */
export interface Note {
  readonly code: string;
  /** The argument the note is about, by the name the function gives it. */
  readonly of?: string;
}

/** What is worked out from a bound may come back a last binary digit beyond it. */
const DUST = 1e-12;

/**
 * An `outside-range` note for `of` when `value` lies outside what the source covers.
 * @source none: bookkeeping; the range is the caller's
 */
export function outsideRange(
  of: string,
  value: number,
  covered: { readonly min?: number; readonly max?: number },
): readonly Note[] {
  const { min = -Infinity, max = Infinity } = covered;
  const dust = Math.abs(value) * DUST;
  return value < min - dust || value > max + dust ? [{ code: 'outside-range', of }] : [];
}
