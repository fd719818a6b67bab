import { justOver, justUnder } from './quantity/dust.ts';

/**
 * Something to be said beside a result, as a short code. A worksheet turns it into a sentence.
 * `outside-range`: the input named in `of` lies outside what the source covers.
 */
export interface Note {
  readonly code: string;
  /** The argument the note is about, by the name the function gives it. */
  readonly of?: string;
}

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
  return value < justUnder(min) || value > justOver(max) ? [{ code: 'outside-range', of }] : [];
}
