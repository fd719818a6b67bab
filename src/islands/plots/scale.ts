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

/** A step is one, two or five times a power of ten: whichever is nearest in ratio to the one asked for. */
function roundStep(width: number, count: number): number {
  const asked = width / count;
  const power = 10 ** Math.floor(Math.log10(asked));
  const over = asked / power;
  const factor = over < Math.SQRT2 ? 1 : over < Math.sqrt(10) ? 2 : over < Math.sqrt(50) ? 5 : 10;
  return factor * power;
}

/** The n-th multiple of a step. A step below one is the inverse of a whole number: dividing errs less. */
const multiple = (n: number, step: number) => (step < 1 ? n / Math.round(1 / step) : n * step);

/** The first and the last multiple of a step within a span, or the nearest outside it. */
function multiples([from, to]: Span, step: number, outside: boolean): Span {
  const [low, high] = outside ? [Math.floor, Math.ceil] : [Math.ceil, Math.floor];
  // An end that is a multiple but for its last binary digits counts as one.
  const near = (x: number, cut: (x: number) => number) =>
    Math.abs(x - Math.round(x)) < 1e-9 * Math.max(1, Math.abs(x)) ? Math.round(x) : cut(x);
  return [near(from / step, low), near(to / step, high)];
}

/** A linear scale from `domain`, the lesser end first, to `range`. */
export function scaleLinear(domain: Span, range: Span): Linear {
  const [from, to] = domain;
  const width = to - from;
  const usable = Number.isFinite(width) && width > 0;
  const scale = (value: number) =>
    range[0] + (usable ? (value - from) / width : 0.5) * (range[1] - range[0]);

  const ticks = (count = 10): readonly number[] => {
    if (!usable) return [from];
    const step = roundStep(width, count);
    const [first, last] = multiples(domain, step, false);
    return Array.from({ length: last - first + 1 }, (_, i) => multiple(first + i, step));
  };
  const tickFormat = (count = 10) => {
    const decimals = usable ? Math.max(0, -Math.floor(Math.log10(roundStep(width, count)))) : 0;
    return (tick: number) => tick.toFixed(Math.min(20, decimals)).replace('-', '\u2212');
  };
  const nice = (count = 10): Linear => {
    if (!usable) return linear;
    let span: Span = domain;
    // Moving the ends out may make a larger step the nearer one.
    for (let step = 0, i = 0; i < 10; i++) {
      const next = roundStep(span[1] - span[0], count);
      if (next === step) break;
      step = next;
      const [first, last] = multiples(span, step, true);
      span = [multiple(first, step), multiple(last, step)];
    }
    return scaleLinear(span, range);
  };
  const linear: Linear = Object.assign(scale, { range: () => range, ticks, tickFormat, nice });
  return linear;
}
