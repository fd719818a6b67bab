import { flexuralFromCompressive } from '../../../core/finished/flexural.ts';
import { strengthBand } from '../../../core/finished/strength-band.ts';

export interface Band {
  readonly low: number;
  readonly high: number;
}

/**
 * What stands beside a strength guessed from density: its low end is what specifications ask, and measured
 * points lie far below it (`wong-2026`).
 */
export const WEAKER = 'Weaker mixes have been measured, of another binder: break a bar to be sure.';

/**
 * What flexural strength published figures let one expect at 28 days, Pa: the compressive band of the
 * density times the band of ratios. Undefined where nothing is published. Where only minima are, the
 * largest of them stands for the high end.
 */
export function flexuralAt28Days(mix: {
  readonly wetDensity: number;
  readonly dryDensity: number;
}): Band | undefined {
  const band = strengthBand({ wetDensity: mix.wetDensity, ovenDryDensity: mix.dryDensity });
  if (!band.known) return undefined;
  const most = band.high ?? Math.max(...band.relations.map(({ low }) => low));
  return flexuralFromCompressive({ low: band.low, high: most });
}
