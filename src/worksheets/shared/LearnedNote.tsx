import { $learned, NOTHING_LEARNED } from '../../bench/learned.ts';
import { useStored } from '../../islands/use-stored.ts';

interface Found {
  /** The lesson and its ±, SI. */
  readonly v: number;
  readonly pm: number;
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
  return found ? (
    <p class="note">
      {`${invented ? 'The invented batches' : 'Your own batches'} (${found.n}): ${words(found)}`}
    </p>
  ) : null;
}
