import type { Entries, KeptResults } from '../../bench/entries.ts';
import { type Answered, answer, type Unanswered } from '../../islands/engine/answer.ts';
import { readWorksheet } from '../../islands/engine/read.ts';
import type { Reading } from '../../islands/engine/reading.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Fields } from '../../islands/fields.ts';
import type { Judgement, Sum } from '../../islands/worksheet.ts';

export interface Worked<R> {
  readonly reading: Reading;
  /** What core answered, or nothing while a reading is missing or refused. */
  readonly result: R | undefined;
  readonly outcome: Answered | Unanswered;
}

/** Here nobody asks for a verdict: a sum that has none is worked out all the same. */
const judge = (): Judgement => ({ verdict: 'look', say: '' });

/** Works a worksheet out from the bench, outside the page it stands on. */
export function worked<F extends Fields, R>(
  sheet: Sum<F, R>,
  entries: Entries,
  kept: KeptResults,
  say: Say,
): Worked<R> {
  const reading = readWorksheet(sheet, entries, kept, say);
  const outcome = answer({ judge, ...sheet }, reading, say, kept);
  return { reading, outcome, result: outcome.ok ? (outcome.result as R) : undefined };
}
