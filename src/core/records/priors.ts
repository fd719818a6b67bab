import { DAY } from '../quantity/constants.ts';
import type { Learned, Prior } from './learn.ts';

/**
 * Each assumed value counts as one batch, its spread as three, so that the reader's own soon
 * outweigh them.
 * @source common-practice
 */
const COUNTS_AS = { weight: 1, freedom: 3 } as const;

/**
 * What is assumed before the maker has records, SI. Wide on purpose.
 * - `survival`: share of the foam's gas that is still in the mix when its bucket is weighed
 * - `drift`: change of the foam's density in ten minutes of standing, a share
 * - `settling`: how far the top sinks, a share of the depth filled
 * - `stripAge`: age at 20 °C at which a part came out clean, s; 24 to 72 h are usual
 * - `strength`: crushing strength at 28 days over the middle of the published band
 * - `landing`: wet density, as first weighed, over planned, less 1
 * @source common-practice; the strip age from foamed-demould-practice
 */
export const PRIORS = {
  survival: { mean: 0.95, spread: 0.05, ...COUNTS_AS },
  drift: { mean: -0.05, spread: 0.1, ...COUNTS_AS },
  settling: { mean: 0.03, spread: 0.02, ...COUNTS_AS },
  stripAge: { mean: 2 * DAY, spread: Math.log(1.5), log: true, ...COUNTS_AS },
  strength: { mean: 1, spread: Math.log(2), log: true, ...COUNTS_AS },
  landing: { mean: 0, spread: 0.05, ...COUNTS_AS },
} as const satisfies Record<string, Prior>;

export type Lesson = keyof typeof PRIORS;

/**
 * Physical limits of a quantity, SI: no more gas survives than the foam brought, settling is
 * neither negative nor more than the depth filled, no density falls to zero.
 * @source none: definitions of the shares
 */
const POSSIBLE: Readonly<Partial<Record<Lesson, { readonly min: number; readonly max: number }>>> =
  {
    survival: { min: 0, max: 1 },
    settling: { min: 0, max: 1 },
    drift: { min: -1, max: Infinity },
    landing: { min: -1, max: Infinity },
  };

/**
 * A learned value limited to what is possible: estimate and intervals are clamped; the spread and
 * Student's t are left as they are.
 * @returns `ends`: which ends of the interval of the next batch were drawn in
 * @source none: a share held between the ends its definition sets
 */
export function withinPossible(
  lesson: Lesson,
  learned: Learned,
): Learned & { readonly ends: { readonly low: boolean; readonly high: boolean } } {
  const { min, max } = POSSIBLE[lesson] ?? { min: -Infinity, max: Infinity };
  const into = (x: number) => Math.min(max, Math.max(min, x));
  const interval = ({ low, high }: { readonly low: number; readonly high: number }) => ({
    low: into(low),
    high: into(high),
  });
  return {
    ...learned,
    estimate: into(learned.estimate),
    own: interval(learned.own),
    next: interval(learned.next),
    ends: { low: learned.next.low < min, high: learned.next.high > max },
  };
}
