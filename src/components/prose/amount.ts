import { formatQuantity } from '../../core/quantity/format.ts';
import { KINDS, type Kind } from '../../core/quantity/kinds.ts';
import { handy } from '../../islands/engine/handy.ts';
import { precision } from '../../islands/engine/say.ts';

/** An amount in a chapter, in SI. */
export interface AmountProps {
  /** Both ends of a range, in the order they are said. */
  value: number | readonly [number, number];
  kind: Kind;
  significant?: number;
  decimals?: number;
  /**
   * For a minimum or a maximum: rounds so that the number as shown is still enough, or not too
   * much.
   */
  toward?: 'up' | 'down';
  /** Units other than the kind's usual ones. */
  metric?: string;
  us?: string;
}

/**
 * `20.0 °C (68.0 °F)`, or `31 to 35 °C (88 to 95 °F)`. A range whose ends read the same is one
 * number. Neither half wraps.
 */
export function inBoth({ value, kind, metric, us, ...how }: AmountProps): string {
  const values = typeof value === 'number' ? [value] : value;
  const largest = values.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
  const here = (system: 'metric' | 'us', given: string | undefined) => {
    const unit = handy(largest, kind, given ?? KINDS[kind].shown[system]);
    const said = values.map((each) => formatQuantity(each, kind, unit, precision(kind, how)));
    const numbers = [...new Set(said.map(({ number }) => number))].join('\u00a0to\u00a0');
    return [numbers, said[0]?.unit].filter(Boolean).join('\u00a0');
  };
  const [first, second] = [here('metric', metric), here('us', us)];
  return first === second ? first : `${first} (${second})`;
}
