import { nice, tickStep, ticks } from 'd3-array';

/** A picture is this wide. */
export const WIDTH = 420;
/** About the width of a letter in a picture, on a phone, where text is drawn larger. */
export const LETTER = 8.6;

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

const COUNT = 10;

/**
 * A linear scale from `domain` to `range`, on the round numbers of d3-array. The whole of d3-scale is
 * held beside it in the tests; it is not shipped, since it brings colours, dates and a formatter along.
 * Numbers stand without a thousands mark, which could be taken for a decimal comma.
 */
export function scaleLinear(domain: Span, range: Span): Linear {
  const [from, to] = domain;
  const [start, end] = range;
  const share = (value: number) => (to === from ? 0.5 : (value - from) / (to - from));
  return Object.assign(
    (value: number) => {
      const t = share(value);
      return start * (1 - t) + end * t;
    },
    {
      range: () => range,
      ticks: (count = COUNT) => ticks(from, to, count),
      tickFormat: (count = COUNT) => {
        const decimals = decimalsOf(tickStep(from, to, count));
        return (tick: number) =>
          tick
            .toFixed(decimals)
            .replace(/^-(?=.*[1-9])/, '−')
            .replace('-', '');
      },
      nice: (count = COUNT) => scaleLinear(nice(from, to, count), range),
    },
  );
}

/** The decimals that tell one tick from the next, as many as text can have. */
const decimalsOf = (step: number): number =>
  step > 0 ? Math.min(100, Math.max(0, -Math.floor(Math.log10(step) + 1e-9))) : 0;
