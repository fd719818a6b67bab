import { formatPlain } from '../../core/quantity/format.ts';
import { unitOf } from '../../core/quantity/kinds.ts';
import { parseQuantity } from '../../core/quantity/parse.ts';
import type { NumberReading } from '../engine/reading.ts';
import type { NumberField } from '../fields.ts';

const STEPS = 100;

/** Moves a number with a drag or the arrow keys; the text beside it stays the place to type. */
export function Slider({
  reading,
  slider,
  onText,
}: {
  readonly reading: NumberReading;
  readonly slider: NonNullable<NumberField['slider']>;
  readonly onText: (text: string) => void;
}) {
  const { field, unit, value } = reading;
  const end = (text: string) => {
    const read = parseQuantity(text, field.kind, field.units?.metric);
    if (!read.ok || read.value <= 0)
      throw new Error(`${field.label}: a slider cannot end at '${text}'`);
    return Math.log(read.value);
  };
  const [from, to] = [end(slider.from), end(slider.to)];
  const place =
    value === undefined || value <= 0 ? 0 : (STEPS * (Math.log(value) - from)) / (to - from);
  const text = (at: number) =>
    formatPlain(Math.exp(from + ((to - from) * at) / STEPS), field.kind, unit, 2);
  return (
    <input
      class="slider"
      type="range"
      min="0"
      max={STEPS}
      value={Math.round(Math.min(STEPS, Math.max(0, place)))}
      aria-label={`${field.label}, slider`}
      aria-valuetext={`${reading.text} ${unitOf(field.kind, unit).symbol}`}
      onInput={(event) => onText(text(Number(event.currentTarget.value)))}
    />
  );
}
