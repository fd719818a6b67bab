import type { Answered, Unanswered } from '../../src/islands/engine/answer.ts';

/** Fails with what is wrong where a worksheet has no answer. */
export function mustAnswer(found: Answered | Unanswered): asserts found is Answered {
  if (!found.ok) throw new Error(found.problems.map(({ say }) => say).join(' '));
}
