import { useEffect } from 'preact/hooks';
import { $learned, NOTHING_LEARNED } from '../../../bench/learned.ts';
import { noteUnlearned } from '../../../bench/store.ts';
import { useStored } from '../../../islands/use-stored.ts';

interface Found {
  /** The lesson and its ±, SI. */
  readonly v: number;
  readonly pm: number;
  /** Between which the next batch lies, 95 %. */
  readonly low: number;
  readonly high: number;
}

/** What the reader's own batches say beside an estimate that has no field for it; nothing before they say it. */
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
    // An earlier summary said less: the next page learns it anew.
    if (earlier) noteUnlearned();
  }, [earlier]);
  return found && low !== undefined && high !== undefined ? (
    <p class="note">
      {`${invented ? 'The invented batches' : 'Your own batches'} (${found.n}) ${words({ ...found, low, high })}`}
    </p>
  ) : null;
}
