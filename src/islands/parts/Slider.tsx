import { useRef } from 'preact/hooks';
import { formatPlain } from '../../core/quantity/format.ts';
import { unitOf } from '../../core/quantity/kinds.ts';
import { parseQuantity } from '../../core/quantity/parse.ts';
import type { SliderProps } from '../fields.ts';

const STEPS = 100;

/** A slider for a field, with a logarithmic scale. */
export const slide = (from: string, to: string) => ({ from, to, Input: Slider });

/**
 * Changes a number by dragging or with the arrow keys; one still types in the text box beside it.
 */
function Slider({ reading, range, onText, putBack }: SliderProps) {
  const before = useRef<(() => void) | undefined>(undefined);
  const { field, unit, value } = reading;
  const end = (text: string) => {
    const read = parseQuantity(text, field.kind, field.units?.metric);
    if (!read.ok || read.value <= 0)
      throw new Error(`${field.label}: a slider cannot end at '${text}'`);
    return Math.log(read.value);
  };
  const [from, to] = [end(range.from), end(range.to)];
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
      aria-valuetext={
        value === undefined
          ? 'no number'
          : `${formatPlain(value, field.kind, unit, 4)} ${unitOf(field.kind, unit).symbol}`
      }
      onPointerDown={() => {
        before.current = undefined;
      }}
      // The browser took the touch for scrolling after it had already moved the slider: undo that.
      onPointerCancel={() => before.current?.()}
      onInput={(event) => {
        before.current ??= putBack;
        onText(text(Number(event.currentTarget.value)));
      }}
    />
  );
}
