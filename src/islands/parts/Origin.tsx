import type { NumberReading } from '../engine/reading.ts';
import { keepFocus } from './keep-focus.ts';

/** Says whose number a field shows, and offers to restore another worksheet's answer. */
export function Origin({
  id,
  reading,
  onClear,
}: {
  /** The id of the input it belongs to. */
  readonly id: string;
  readonly reading: NumberReading;
  readonly onClear: () => void;
}) {
  if (reading.origin === 'example')
    return reading.text === '' ? null : <p class="origin">example</p>;
  // The problem beside the field already says what it waits for.
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
