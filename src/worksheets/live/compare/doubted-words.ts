import type { BatchRecord } from '../../../bench/records/record.ts';
import { nameOf, namesInWords } from '../records/record-words.ts';

/**
 * Names the batches with a doubtful reading, and where to look: a table shows the latest batches
 * only.
 */
export function doubtedWords(
  doubted: readonly BatchRecord[],
  shown: readonly BatchRecord[],
): string {
  const [first, more] = doubted;
  const earlier = doubted.filter((record) => !shown.includes(record));
  return [
    more
      ? `${doubted.length} batches have readings that ask`
      : `“${nameOf(first!)}” has a reading that asks`,
    ' to be looked at again: ',
    earlier.length < doubted.length && 'that stands beside the name in the table, and ',
    'the record says why.',
    more && earlier.length > 0 && ` Too early for the table: ${namesInWords(earlier.map(nameOf))}.`,
  ]
    .filter(Boolean)
    .join('');
}
