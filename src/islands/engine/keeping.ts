import type { Kept, KeptResults } from '../../bench/entries.ts';
import { type AnySum, alsoKept } from '../worksheet.ts';
import type { Answered } from './answer.ts';
import type { Reading } from './reading.ts';
import type { Say } from './say.ts';

interface Sheet {
  readonly id: string;
  readonly question: string;
}

/** Whether a worksheet kept it. What was kept before ids were names its worksheet by the question alone. */
export const isBy = ({ by, from }: Kept, { id, question }: Sheet) =>
  by === undefined ? from === question : by === id;

/**
 * Whether a worksheet may write, or take back, a result it keeps. Its own it always may. What another
 * worksheet keeps it takes over only while the reader works in it: the last one worked on has it, and not
 * one that shares a reading with that and answers anew.
 */
export const mayKeep = ({
  holder,
  sheet,
  worked,
  answers,
  onExample,
}: {
  /** What lies on the bench now, and whose it is. */
  readonly holder: Kept | undefined;
  readonly sheet: Sheet;
  /** Whether the reader has just typed or chosen something in this worksheet. */
  readonly worked: boolean;
  /** Whether the first of what it keeps has an answer: the rest goes with that, and goes away with it. */
  readonly answers: boolean;
  /** Whether that rests on readings that are still the example's. */
  readonly onExample: boolean;
}): boolean =>
  holder === undefined ||
  isBy(holder, sheet) ||
  (worked &&
    answers &&
    // The example never takes what rests on the reader's own numbers alone.
    (!onExample || 'example' in holder));

export interface Held {
  /** What later worksheets take, up to whose it is. */
  readonly say: string;
  readonly holder: Kept;
  /** Whether this worksheet could have it, if the reader wants that. */
  readonly mayTake: boolean;
}

/** Where another worksheet has what this one answers too, and it differs. */
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
    // A later worksheet has the last word, unless it took its number here.
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
