import { nice, tickStep, ticks } from 'd3-array';

/** Width of a picture. */
export const WIDTH = 420;
/** Approximate width of a letter in a picture on a phone, where text is drawn larger. */
export const LETTER = 8.6;

/** A linear map from one range of numbers to another. */
export interface Linear {
  (value: number): number;
  /** The range it maps to: positions in the picture. */
  range(): readonly [number, number];
  /** Round numbers within the domain, about `count` of them. */
  ticks(count?: number): readonly number[];
  /** Formats ticks with the decimals they need and no more. */
  tickFormat(count?: number): (tick: number) => string;
  /** The same with the domain extended to round numbers. */
  nice(count?: number): Linear;
}

type Span = readonly [number, number];

const COUNT = 10;

/**
 * A linear scale from `domain` to `range`, using the ticks of d3-array. The tests compare it with
 * d3-scale, which is not shipped because it brings colours, dates and a formatter along. Numbers
 * have no thousands separator, which could be taken for a decimal comma. Range: a domain that spans at least a millionth of its
 * ends, or nothing; between the two, rounding decides where `nice` puts them.
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

/** The decimals needed to tell one tick from the next, at most as many as `toFixed` allows. */
const decimalsOf = (step: number): number =>
  step > 0 ? Math.min(100, Math.max(0, -Math.floor(Math.log10(step) + 1e-9))) : 0;
