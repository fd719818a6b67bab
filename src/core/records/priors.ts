import { DAY } from '../curing/units.ts';
import type { Prior } from './learn.ts';

/** Each assumed value counts as one batch, its spread as three: soon outvoted. @source common-practice */
const COUNTS_AS = { weight: 1, freedom: 3 } as const;

/**
 * What is assumed before the maker has records, SI. Wide on purpose.
 * - `survival`: share of the foam's gas that is still in the mix when its bucket is weighed
 * - `drift`: change of the foam's density in ten minutes of standing, a share
 * - `settling`: how far the top sinks, a share of the depth filled
 * - `stripAge`: age at 20 °C at which a part came out clean, s; 24 to 72 h are usual
 * - `strength`: crushing strength at 28 days over the middle of the published band
 * - `landing`: wet density weighed over planned, less 1
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
