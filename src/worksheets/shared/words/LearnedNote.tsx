import { useEffect } from 'preact/hooks';
import { $learned, NOTHING_LEARNED } from '../../../bench/learned.ts';
import { noteUnlearned } from '../../../bench/store.ts';
import { useStored } from '../../../islands/use-stored.ts';

interface Found {
  /** The learned value and its ±, SI. */
  readonly v: number;
  readonly pm: number;
  /** The 95 % interval for the next batch. */
  readonly low: number;
  readonly high: number;
}

/**
 * A note with what was learned from the reader’s batches, beside an estimate that has no field for
 * it. Draws nothing until something is learned.
 */
export function LearnedNote({
  name,
  words,
}: {
  readonly name: string;
  readonly words: (found: Found) => string;
}) {
  const { values, invented } = useStored($learned, NOTHING_LEARNED);
  const found = Object.hasOwn(values, name) ? values[name] : undefined;
  const { low, high } = found ?? {};
  const earlier = found && low === undefined;
  useEffect(() => {
    // A summary from an earlier version lacks the interval; have the next page learn it again.
    if (earlier) noteUnlearned();
  }, [earlier]);
  return found && low !== undefined && high !== undefined ? (
    <p class="note">
      {`${invented ? 'The invented batches' : 'Your own batches'} (${found.n}) ${words({ ...found, low, high })}`}
    </p>
  ) : null;
}
