import { useState } from 'preact/hooks';
import { arrived } from '../../../bench/arrived.ts';
import type { Entry } from '../../../bench/entries.ts';
import type { LinesReading } from '../../../islands/engine/reading.ts';
import { lines } from '../../../islands/fields/lines.tsx';
import { readMoment } from '../../../islands/fields/read-moment.ts';
import type { Columns, InputProps, LinesField } from '../../../islands/fields.ts';
import { useEntries } from '../../../islands/hooks.ts';
import { momentInWords } from '../time/moments.ts';

/**
 * A field for lines of readings since casting. Lines that came from a log store which casting they
 * count from, and offer to be counted again if “Cast at” changes.
 */
export const linesSinceCasting = <const C extends Columns>(
  spec: Omit<LinesField<C>, 'type' | 'as'>,
): LinesField<C> => {
  const field = lines(spec);
  const { Input } = field.as;
  const SinceCasting = (props: InputProps<LinesReading>) => {
    const { entry, onEntry } = props;
    const from = entry?.from;
    if (from === undefined || !entry?.t) return <Input {...props} />;
    // Lines added below count from the same casting; a replaced text is the reader’s own.
    const [first] = entry.t.split('\n');
    return (
      <>
        <Input
          {...props}
          onEntry={(typed) =>
            onEntry(first && typed.t?.startsWith(first) ? { ...typed, from } : typed)
          }
        />
        <Another entry={entry} from={from} onEntry={onEntry} />
      </>
    );
  };
  return { ...field, as: { ...field.as, Input: SinceCasting } };
};

const CAST_AT = 'curing.castAt';

function Another({
  entry,
  from,
  onEntry,
}: Pick<InputProps<LinesReading>, 'onEntry'> & { readonly entry: Entry; readonly from: string }) {
  const castAt = useEntries([CAST_AT])[CAST_AT]?.t;
  const [refused, refuse] = useState<string>();
  const [was, is] = [from, castAt ?? from].map(readMoment);
  if (was === undefined || was === is) return null;
  const anew = async () => {
    const { countedAnew } = await arrived(import('./logger-file.ts'));
    const brought = await countedAnew(entry, is! - was);
    if (brought) onEntry({ ...brought.entry, from: castAt! });
    else refuse(castAt);
  };
  return (
    <p class="problem">
      These hours are counted from a casting on {momentInWords(was)}, not from Cast at.{' '}
      {refused !== undefined && refused === castAt
        ? 'All of them are from before it.'
        : is !== undefined && (
            <button type="button" onClick={anew}>
              Count them from {momentInWords(is)}
            </button>
          )}
    </p>
  );
}
