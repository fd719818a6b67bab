import { scaleLinear as straight } from 'd3-scale';

/** Takes numbers of one span to another along a straight line. */
export interface Linear {
  (value: number): number;
  /** The span it ends in: where pictures are drawn. */
  range(): readonly [number, number];
  /** Round numbers within the span it begins with, about `count` of them. */
  ticks(count?: number): readonly number[];
  /** Puts those into text, with the decimals they need and no more. */
  tickFormat(count?: number): (tick: number) => string;
  /** The same with the ends of its span moved out to round numbers. */
  nice(count?: number): Linear;
}

type Span = readonly [number, number];

/**
 * A linear scale from `domain` to `range`. The one door to the library, so that every picture writes
 * its numbers alike: without a thousands mark, which could be taken for a decimal comma.
 */
export function scaleLinear(domain: Span, range: Span): Linear {
  const scale = straight(domain, range);
  return Object.assign((value: number) => scale(value), {
    range: () => range,
    ticks: (count?: number) => scale.ticks(count),
    tickFormat: (count?: number) => {
      const format = scale.tickFormat(count);
      return (tick: number) => format(tick).replaceAll(',', '');
    },
    nice: (count?: number) =>
      scaleLinear(scale.copy().nice(count).domain() as [number, number], range),
  });
}
