import type { Kept } from '../../bench/entries.ts';

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
  has,
  onExample,
}: {
  /** What lies on the bench now, and whose it is. */
  readonly holder: Kept | undefined;
  readonly sheet: Sheet;
  /** Whether the reader has just typed or chosen something in this worksheet. */
  readonly worked: boolean;
  /** The worksheet's answer, in SI. */
  readonly has: number | undefined;
  /** Whether that rests on readings that are still the example's. */
  readonly onExample: boolean;
}): boolean =>
  holder === undefined ||
  isBy(holder, sheet) ||
  (worked &&
    has !== undefined &&
    // The example never takes what rests on the reader's own numbers alone.
    (!onExample || 'example' in holder));
