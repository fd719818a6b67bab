import type { NumberReading } from '../engine/reading.ts';
import { keepFocus } from './keep-focus.ts';

/** Says whose number stands in a field, and offers another worksheet's answer back. */
export function Origin({
  id,
  reading,
  onClear,
}: {
  /** The input it stands under. */
  readonly id: string;
  readonly reading: NumberReading;
  readonly onClear: () => void;
}) {
  if (reading.origin === 'example')
    return reading.text === '' ? null : <p class="origin">example</p>;
  // What it waits for is said beside it already.
  if (reading.waits !== undefined) return null;
  if (reading.origin === 'kept')
    return (
      <p class="origin kept" id={`${id}-from`}>
        from <q>{reading.from}</q>
        {reading.onExample && ', which still rests on the example'}
      </p>
    );
  if (reading.onOffer)
    return (
      <p class="origin">
        <button
          type="button"
          onClick={(event) => {
            onClear();
            keepFocus(event, id);
          }}
        >
          Use {reading.onOffer.text} from <q>{reading.onOffer.from}</q>
        </button>
      </p>
    );
  return null;
}
