import type { Kept, KeptResults } from '../../bench/entries.ts';
import { type AnySum, alsoKept } from '../worksheet.ts';
import type { Answered } from './answer.ts';
import type { Reading } from './reading.ts';
import type { Say } from './say.ts';

interface Sheet {
  readonly id: string;
  readonly question: string;
}

/**
 * Whether this worksheet kept it. Results kept before ids existed name their worksheet by its
 * question only.
 */
export const isBy = ({ by, from }: Kept, { id, question }: Sheet) =>
  by === undefined ? from === question : by === id;

/**
 * Whether a worksheet may write or remove a kept result. Its own it always may. It takes over
 * another's only while the reader works in it: the last one worked in owns the result, not one that
 * shares a reading with it and recomputes.
 */
export const mayKeep = ({
  holder,
  sheet,
  worked,
  answers,
  onExample,
}: {
  /** What is on the bench now, and whose it is. */
  readonly holder: Kept | undefined;
  readonly sheet: Sheet;
  /** Whether the reader has just typed or chosen something in this worksheet. */
  readonly worked: boolean;
  /**
   * Whether the first of its kept results has an answer. The others are kept and removed with that
   * one.
   */
  readonly answers: boolean;
  /** Whether that result rests on readings that are still the example's. */
  readonly onExample: boolean;
}): boolean =>
  holder === undefined ||
  isBy(holder, sheet) ||
  (worked &&
    answers &&
    // A result that rests on the example never replaces one that rests only on the reader's
    // numbers.
    (!onExample || 'example' in holder));

export interface Held {
  /** The sentence on what later worksheets take, up to the name of its worksheet. */
  readonly say: string;
  readonly holder: Kept;
  /** Whether this worksheet could take it over, if the reader wants that. */
  readonly mayTake: boolean;
}

/** The first result that another worksheet keeps too, with a different value. */
export function heldElsewhere(
  sheet: AnySum,
  { onExample }: Reading,
  { numbers }: Answered,
  kept: KeptResults,
  say: Say,
): Held | undefined {
  const keeps = Object.entries(sheet.keeps ?? {});
  for (const [name, key] of alsoKept(sheet)) {
    const mine = numbers[name];
    if (!mine) continue;
    const spec = sheet.results[name]!;
    const said = (of: Kept | undefined) => of && 'v' in of && say(of.v, spec.kind, spec);
    const later = kept[sheet.givesWay?.[name] ?? ''];
    // A later worksheet has the last word, unless it took its number from here.
    const holder = said(later) && said(later) !== said(kept[key]) ? later : kept[key];
    const theirs = said(holder);
    if (!holder || !theirs || isBy(holder, sheet)) continue;
    if (theirs !== say(mine.value, spec.kind, spec))
      return {
        say: `${spec.label}: what follows takes ${theirs}, from`,
        holder,
        mayTake:
          holder !== later &&
          mayKeep({ holder, sheet, worked: true, answers: keeps[0]![0] in numbers, onExample }),
      };
  }
  return undefined;
}
