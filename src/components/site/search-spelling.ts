import distance from 'damerau-levenshtein';
import { wordsOf } from './search-words.ts';

/** How many typing errors are forgiven: none in a short word, which would soon match another. */
const slipsIn = (word: string) => (word.length < 4 ? 0 : word.length < 8 ? 1 : 2);

/**
 * The handbook's word nearest to one it lacks; in a tie, the more frequent. `words` is sorted by
 * frequency.
 */
export function nearest(word: string, words: readonly string[]): string | undefined {
  let [best, least] = [undefined as string | undefined, slipsIn(word) + 1];
  for (const other of words) {
    if (Math.abs(other.length - word.length) >= least) continue;
    const { steps } = distance(word, other);
    if (steps < least) [best, least] = [other, steps];
  }
  return best;
}

/**
 * A question with each unknown word replaced by the nearest one of the handbook; undefined if none
 * is near.
 */
export function respelt(
  asked: string,
  unknown: readonly string[],
  words: readonly string[],
): string | undefined {
  const read = asked
    .split(/\s+/)
    .map((typed) => {
      const [[word = ''] = []] = wordsOf(typed);
      return (unknown.includes(word) && nearest(word, words)) || typed;
    })
    .join(' ');
  return read === asked ? undefined : read;
}
