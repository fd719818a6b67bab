import { $learned, NOTHING_LEARNED } from '../../bench/learned.ts';
import { formatPlain, formatQuantity } from '../../core/quantity/format.ts';
import type { OfferProps } from '../fields.ts';
import { useStored } from '../use-stored.ts';
import { keepFocus } from './keep-focus.ts';

/** What a field may learn from the reader's own batches, by its key. */
export const learned = (key: string) => ({ key, Offer: LearnedOffer });

/**
 * What the reader's own batches say about a field, beside the assumed value; used only on request.
 */
function LearnedOffer({ id, name, reading, system, onTake }: OfferProps) {
  const summary = useStored($learned, NOTHING_LEARNED);
  const found = Object.hasOwn(summary.values, name) ? summary.values[name] : undefined;
  if (!found) return null;
  const { field, unit } = reading;
  const { v, pm, n } = found;
  const how = { uncertainty: pm };
  const value = formatQuantity(v, field.kind, unit, how);
  const spread = formatQuantity(pm, field.kind, unit, how).number;
  const words = `${value.number}\u00a0±\u00a0${spread}${value.unit && `\u00a0${value.unit}`} from ${n} ${summary.invented ? 'invented ' : ''}${n === 1 ? 'batch' : 'batches'}`;
  // Fill in the number as it is shown here, to the last digit.
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

/** A number as shown, in a form one can type; undefined if it is shown with a power of ten. */
function asTyped(shown: string): string | undefined {
  const plain = shown.replace('−', '-').replace(/\s/g, '');
  return /^-?\d+(\.\d+)?$/.test(plain) ? plain : undefined;
}
