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
 * worksheet keeps it takes over only when its answer has just changed: the last one worked on has it.
 */
export const mayKeep = ({
  holder,
  sheet,
  had,
  has,
  onExample,
}: {
  /** What lies on the bench now, and whose it is. */
  readonly holder: Kept | undefined;
  readonly sheet: Sheet;
  /** The worksheet's answer when it last looked, in SI; `first` before it has. */
  readonly had: number | undefined | 'first';
  readonly has: number | undefined;
  /** Whether that rests on readings that are still the example's. */
  readonly onExample: boolean;
}): boolean =>
  holder === undefined ||
  isBy(holder, sheet) ||
  (had !== 'first' &&
    has !== undefined &&
    had !== has &&
    // The example never takes what rests on the reader's own numbers alone.
    (!onExample || 'example' in holder));
