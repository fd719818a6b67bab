/**
 * Something a result needs said beside it that does not make it wrong: a source's range left
 * behind, a practice limit crossed. Core gives the code; a worksheet turns it into a sentence.
 */
export interface Note {
  /** A short code: 'outside-range', 'paste-robs-foam'. */
  readonly code: string;
  /** The argument or result it is about, by the name the function gives it. */
  readonly of?: string;
}
