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
 * What the reader's own batches say beside an estimate that has no field for it; nothing until they
 * say something.
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
    // An earlier summary has less; ask the next page to learn it again.
    if (earlier) noteUnlearned();
  }, [earlier]);
  return found && low !== undefined && high !== undefined ? (
    <p class="note">
      {`${invented ? 'The invented batches' : 'Your own batches'} (${found.n}) ${words({ ...found, low, high })}`}
    </p>
  ) : null;
}
