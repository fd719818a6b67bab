import { expect, test } from 'vitest';
import type { Entries, Entry } from '../../../src/bench/entries.ts';
import { answer } from '../../../src/islands/engine/answer.ts';
import { readWorksheet } from '../../../src/islands/engine/read.ts';
import { speaker } from '../../../src/islands/engine/say.ts';
import { type AnyWorksheet, benchKey, type Judgement } from '../../../src/islands/worksheet.ts';
import { mustAnswer } from '../must-answer.ts';

/** What is typed, by field, a ± behind its number (`24 MPa ± 0`); a list of rows by its cells. What is left out is the example's. */
type Typed = Readonly<Record<string, string | readonly Readonly<Record<string, string>>[]>>;

/** What is typed besides, and the kind and a decisive word of the verdict it must have. */
type Case = readonly [typed: Typed, verdict: Judgement['verdict'], words: RegExp];

const metric = speaker('metric');
const typed = (text: string) => {
  const [t = '', p] = text.split(' ± ');
  return { t, s: 'metric', ...(p !== undefined && { p }) } as const;
};

const entryOf = (given: Typed[string]): Entry =>
  typeof given === 'string'
    ? typed(given)
    : {
        rows: given.map((row) =>
          Object.fromEntries(Object.entries(row).map(([cell, t]) => [cell, typed(t)])),
        ),
      };

function judged(sheet: AnyWorksheet, given: Typed): Judgement {
  const entries = Object.fromEntries(
    Object.entries(given).map(([field, value]) => {
      if (!(field in sheet.fields)) throw new Error(`${sheet.id} has no field '${field}'`);
      return [benchKey(sheet, field), entryOf(value)];
    }),
  ) as Entries;
  const outcome = answer(sheet, readWorksheet(sheet, entries, {}, metric), metric);
  mustAnswer(outcome);
  return outcome.judgement;
}

/** The cases of a worksheet that share `common`, in pairs either side of a limit. */
export function verdicts(sheet: AnyWorksheet, common: Typed, cases: readonly Case[]): void {
  test.each(cases)(`${sheet.id}: %j is %s, %s`, (own, verdict, words) => {
    const found = judged(sheet, { ...common, ...own });
    expect(found).toMatchObject({ verdict, say: expect.stringMatching(words) });
  });
}
