/** Fewer bars, cubes or cores leave much to chance. Common practice, no source. */
export const FEW = 4;

/** One bar says nothing of scatter; half of it is carried on as a guess. Common practice, no source. */
export const ONE_BAR_SHARE = 0.5;

interface Bars {
  readonly bars: number | undefined;
  readonly mean: number;
  readonly low: number;
}

/** Whether a low end lies further below its mean than that of one bar is guessed to. */
export const scatterWidely = ({ mean, low }: Omit<Bars, 'bars'>) => low < ONE_BAR_SHARE * mean;

/** Why the low end of several bars is not to be relied on yet, and what to do; undefined where it is. */
export function barsDoubt(of: Bars): string | undefined {
  const { bars = 1 } = of;
  if (bars < FEW) return `${bars} bars are few and may agree by chance: break another or two`;
  return scatterWidely(of)
    ? 'the bars scatter widely, their low end under half of their mean: look at the broken faces, and break more'
    : undefined;
}
