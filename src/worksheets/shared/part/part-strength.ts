import { flexuralFromCompressive } from '../../../core/finished/flexural.ts';
import { strengthBand } from '../../../core/finished/strength-band.ts';

export interface Band {
  readonly low: number;
  readonly high: number;
}

/**
 * Shown beside a strength guessed from density. Its low end is what specifications require; some
 * measured points lie far below it (`wong-2026`).
 */
export const WEAKER = 'Weaker mixes have been measured, of another binder: break a bar to be sure.';

/**
 * The flexural strength to expect at 28 days, Pa: the published compressive band for the density
 * times the band of flexural-to-compressive ratios. Undefined if nothing is published. If only
 * minima are, the largest of them is the high end.
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
