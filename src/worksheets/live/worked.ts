import type { Entries, KeptResults } from '../../bench/entries.ts';
import { type Answered, answer, type Unanswered } from '../../islands/engine/answer.ts';
import { readWorksheet } from '../../islands/engine/read.ts';
import type { Reading } from '../../islands/engine/reading.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Fields } from '../../islands/fields.ts';
import type { Judgement, Sum } from '../../islands/worksheet.ts';

export interface Worked<R> {
  readonly reading: Reading;
  /** The result of core, or undefined while a reading is missing or refused. */
  readonly result: R | undefined;
  readonly outcome: Answered | Unanswered;
}

/** A verdict is not needed here, so that a worksheet without one is worked out as well. */
const judge = (): Judgement => ({ verdict: 'look', say: '' });

/** Works a worksheet out from the bench, outside its own page. */
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
