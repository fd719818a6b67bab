import { $kept, keep } from '../bench/store.ts';
import type { Answered, Unanswered } from './engine/answer.ts';
import { mayKeep } from './engine/keeping.ts';
import type { Reading } from './engine/reading.ts';
import type { AnyWorksheet } from './worksheet.ts';

/**
 * Puts the results a worksheet keeps on the bench, once anything in it is the reader's own. Where two
 * worksheets keep the same thing, the one last worked on has it. `worked`: the reader works in this one now.
 */
export function keepResults(
  sheet: AnyWorksheet,
  { own, onExample }: Reading,
  answered: Answered | Unanswered,
  worked: boolean,
): void {
  const owner = { from: sheet.question, by: sheet.id };
  for (const [name, key] of Object.entries(sheet.keeps ?? {})) {
    const mine = own && answered.ok ? answered.numbers[name] : undefined;
    // What another worksheet has does not wait for this one.
    const asked = { holder: $kept.get()[key], sheet, worked, has: mine?.value, onExample };
    if (!mayKeep(asked)) continue;
    if (own && !answered.ok) keep(key, { waits: true, ...owner });
    else
      keep(
        key,
        mine && {
          v: mine.value,
          ...(mine.sure && { pm: mine.sure.pm }),
          ...(onExample && { example: true }),
          ...owner,
        },
      );
  }
}
