import type { Band } from './part-strength.ts';

/** Fewer bars, cubes or cores leave much to chance. Common practice, no source. */
export const FEW = 4;

/** One bar says nothing of scatter; half of it is carried on as a guess. Common practice, no source. */
export const ONE_BAR_SHARE = 0.5;

/** Results of one curve whose high end is more than this many times the low are too far apart. A choice. */
const APART = 2;

/** What tests that scatter ask for first. */
export const FACES = 'look at the broken faces for hollows and cold joints, and';

interface Bars {
  readonly bars: number | undefined;
  readonly mean: number;
  readonly low: number;
}

/**
 * Whether bars scatter widely. They are of one age, and their low end is carried on, so that end is held against half
 * of their mean, where the guess from one bar lies. Either may have been typed as the other.
 */
export const scatterWidely = ({ mean, low }: Omit<Bars, 'bars'>) =>
  Math.min(mean, low) < ONE_BAR_SHARE * Math.max(mean, low);

/** Whether cubes or cores do. They are of several ages and lie about a curve within a factor, both ends of which are shown. */
export const lieApart = ({ low, high }: { readonly low: number; readonly high: number }) =>
  high > APART * low;

/** What the next bar may bear, Pa, whichever end was typed as which. Of one bar only as much as the guess is sure, whatever was typed. */
export function barsBand({ bars = 1, mean, low }: Bars): Band {
  const [least, most] = [Math.min(low, mean), Math.max(low, mean)];
  return { low: bars < 2 ? Math.min(least, ONE_BAR_SHARE * most) : least, high: most };
}

/** Why the low end of several bars is not to be relied on yet, and what to do; undefined where it is. */
export function barsDoubt(of: Bars): string | undefined {
  const { bars = 1 } = of;
  if (bars < FEW) return `${bars} bars are few and may agree by chance: break another or two`;
  return scatterWidely(of)
    ? `the bars scatter widely, their low end under half of their mean: ${FACES} break more`
    : undefined;
}
