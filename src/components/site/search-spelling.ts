import distance from 'damerau-levenshtein';
import { wordsOf } from './search-words.ts';

/** So many slips of the finger are read over: none in a short word, which would soon be another. */
const slipsIn = (word: string) => (word.length < 4 ? 0 : word.length < 8 ? 1 : 2);

/** The word of the handbook nearest to one that it lacks, of two as near the more frequent. `words` has the frequent first. */
export function nearest(word: string, words: readonly string[]): string | undefined {
  let [best, least] = [undefined as string | undefined, slipsIn(word) + 1];
  for (const other of words) {
    if (Math.abs(other.length - word.length) >= least) continue;
    const { steps } = distance(word, other);
    if (steps < least) [best, least] = [other, steps];
  }
  return best;
}

/** A question with the nearest words of the handbook for those it lacks; nothing where none is near. */
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
