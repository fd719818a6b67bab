import type { Kept } from '../../bench/entries.ts';

/**
 * Whether a worksheet may write, or take back, a result it keeps. Its own it always may. What another
 * worksheet keeps it takes over only when its answer has just changed: the last one worked on has it.
 */
export const mayKeep = ({
  holder,
  question,
  had,
  has,
}: {
  /** What lies on the bench now, and whose it is. */
  readonly holder: Kept | undefined;
  readonly question: string;
  /** The worksheet's answer when it last looked, in SI; `first` before it has. */
  readonly had: number | undefined | 'first';
  readonly has: number | undefined;
}): boolean =>
  holder === undefined ||
  holder.from === question ||
  (had !== 'first' && has !== undefined && had !== has);
