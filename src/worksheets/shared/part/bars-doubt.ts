import type { Band } from './part-strength.ts';

/** Fewer bars, cubes or cores than this may agree by chance. Common practice, no source. */
export const FEW = 4;

/**
 * The low end assumed for a single bar, as a share of its strength: one bar shows no scatter. A
 * guess. Common practice, no source.
 */
export const ONE_BAR_SHARE = 0.5;

/**
 * Results about one curve scatter too much if their high end is over this many times the low. A
 * choice.
 */
const APART = 2;

/** The first thing to do if tests scatter. */
export const FACES = 'look at the broken faces for hollows and cold joints, and';

interface Bars {
  readonly bars: number | undefined;
  readonly mean: number;
  readonly low: number;
}

/**
 * Whether bars of one age scatter widely: their low end is below half of their mean, the guess for
 * a single bar. The reader may have typed the two the wrong way round.
 */
export const scatterWidely = ({ mean, low }: Omit<Bars, 'bars'>) =>
  Math.min(mean, low) < ONE_BAR_SHARE * Math.max(mean, low);

/** Whether cubes or cores of several ages scatter widely about their growth curve. */
export const lieApart = ({ low, high }: { readonly low: number; readonly high: number }) =>
  high > APART * low;

/**
 * The band of strength of the next bar, Pa, even if its ends were typed the wrong way round. For a
 * single bar the low end is never above the guess.
 */
export function barsBand({ bars = 1, mean, low }: Bars): Band {
  const [least, most] = [Math.min(low, mean), Math.max(low, mean)];
  return { low: bars < 2 ? Math.min(least, ONE_BAR_SHARE * most) : least, high: most };
}

/** Why the low end of the bars is not reliable yet, and what to do; undefined if it is. */
export function barsDoubt(of: Bars): string | undefined {
  const { bars = 1 } = of;
  if (bars < FEW) return `${bars} bars are few and may agree by chance: break another or two`;
  return scatterWidely(of)
    ? `the bars scatter widely, their low end under half of their mean: ${FACES} break more`
    : undefined;
}
