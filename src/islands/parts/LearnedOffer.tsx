import type { Entry, System } from '../../bench/entries.ts';
import { formatPlain, formatQuantity } from '../../core/quantity/format.ts';
import type { NumberReading } from '../engine/reading.ts';
import { useLearned } from '../hooks.ts';
import { keepFocus } from './keep-focus.ts';

interface Props {
  /** The input it stands under. */
  readonly id: string;
  /** Which quantity the field may learn. */
  readonly name: string;
  readonly reading: NumberReading;
  readonly system: System;
  readonly onTake: (taken: Entry) => void;
}

/** What the reader's own batches say of a field, beside the value assumed; used only when asked. */
export function LearnedOffer({ id, name, reading, system, onTake }: Props) {
  const summary = useLearned();
  const found = Object.hasOwn(summary.values, name) ? summary.values[name] : undefined;
  if (!found) return null;
  const { field, unit } = reading;
  const { v, pm, n } = found;
  const how = { uncertainty: pm };
  const value = formatQuantity(v, field.kind, unit, how);
  const spread = formatQuantity(pm, field.kind, unit, how).number;
  const words = `${value.number} ± ${spread}${value.unit && `\u00a0${value.unit}`} from ${n} ${summary.invented ? 'invented ' : ''}${n === 1 ? 'batch' : 'batches'}`;
  // What is filled in is what is read here, to the last digit.
  const text = asTyped(value.number) ?? formatPlain(v, field.kind, unit, 4);
  if (reading.origin === 'yours' && reading.text === text)
    return <p class="origin kept">yours: {words}</p>;
  return (
    <p class="origin">
      <button
        type="button"
        onClick={(event) => {
          onTake({
            t: text,
            u: unit,
            s: system,
            ...(field.plusMinus !== undefined && {
              p: asTyped(spread) ?? formatPlain(pm, field.kind, unit, 2),
              pu: unit,
            }),
          });
          keepFocus(event, id);
        }}
      >
        {summary.invented ? 'Use: ' : 'Yours: '}
        {words}
      </button>
    </p>
  );
}

/** A number as shown, as one would type it; undefined for one shown with a power of ten. */
function asTyped(shown: string): string | undefined {
  const plain = shown.replace('−', '-').replace(/\s/g, '');
  return /^-?\d+(\.\d+)?$/.test(plain) ? plain : undefined;
}
