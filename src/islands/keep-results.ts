import { $kept, keep } from '../bench/store.ts';
import type { Answered, Unanswered } from './engine/answer.ts';
import { mayKeep } from './engine/keeping.ts';
import type { Reading } from './engine/reading.ts';
import type { AnyWorksheet } from './worksheet.ts';

type Found = Answered['numbers'][string] | 'asked' | undefined;

/**
 * Puts what a worksheet keeps and leaves on the bench, once any of its entries is the reader's own.
 * If two worksheets keep the same key, the last one worked in owns it. `worked`: the reader is
 * working in this one now.
 */
export function keepResults(
  sheet: AnyWorksheet,
  reading: Reading,
  answered: Answered | Unanswered,
  worked: boolean,
): void {
  const { own, onExample } = reading;
  const keeps = Object.entries(sheet.keeps ?? {});
  const answers = answered.ok && keeps[0] !== undefined && keeps[0][0] in answered.numbers;
  const owner = { from: sheet.question, by: sheet.id };
  const put = (key: string, found: (answered: Answered) => Found) => {
    const mine = own && answered.ok ? found(answered) : undefined;
    // A result that another worksheet owns is not replaced by `waits`.
    const asked = { holder: $kept.get()[key], sheet, worked, answers, onExample };
    if (!mayKeep(asked)) return;
    if (mine === 'asked' || (own && !answered.ok)) keep(key, { waits: true, ...owner });
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
  };
  for (const [name, key] of keeps) put(key, ({ numbers }) => numbers[name]);
  for (const [key, of] of Object.entries(sheet.leaves ?? {}))
    put(key, ({ result }) => {
      const value = of(result, reading);
      return typeof value === 'number' ? { value } : value;
    });
}
