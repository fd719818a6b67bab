import { expect, test } from 'vitest';
import { blankRecord } from '../../../src/bench/records/record.ts';
import { doubtedWords } from '../../../src/worksheets/live/compare/doubted-words.ts';

const [a, b, c] = ['A', 'B', 'C'].map((name) => blankRecord({ name })) as [
  ReturnType<typeof blankRecord>,
  ReturnType<typeof blankRecord>,
  ReturnType<typeof blankRecord>,
];

test('a doubted batch is looked for in the table only where it stands there', () => {
  const beside = 'that stands beside the name in the table, and the record says why.';
  expect(doubtedWords([a], [a, b])).toBe(
    `“A” has a reading that asks to be looked at again: ${beside}`,
  );
  expect(doubtedWords([a], [b])).toBe(
    '“A” has a reading that asks to be looked at again: the record says why.',
  );
  expect(doubtedWords([a, b], [a, b, c])).toBe(
    `2 batches have readings that ask to be looked at again: ${beside}`,
  );
  expect(doubtedWords([a, b, c], [c])).toBe(
    `3 batches have readings that ask to be looked at again: ${beside} Too early for the table: “A”, “B”.`,
  );
});
