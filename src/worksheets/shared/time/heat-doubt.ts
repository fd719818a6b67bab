import { PEAK_LIMIT, tooHotToCure } from '../../../core/curing/limits.ts';
import { ICE_POINT } from '../../../core/quantity/constants.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Judgement } from '../../../islands/worksheet.ts';

/**
 * No mix or curing part is meant to be warmer than this, K: 40 °C, with a margin for the rounding
 * of 104 °F. A higher figure may be in °F, typed as °C. A choice.
 */
export const HOT = ICE_POINT + 40 + 1e-6;

const CHECK = 'Check the figure and its unit, °C or °F; if it is right,';

/** Several doubts as one text; undefined if there are none. */
export const oneText = (...doubts: readonly (string | undefined)[]): string | undefined =>
  doubts.filter(Boolean).join(' ') || undefined;

/**
 * The judgement of the warmest temperature of a cure, K; undefined if it is acceptable. `what`
 * begins the sentence.
 */
export function heatDoubt(warmest: number, say: Say, what = 'It'): Judgement | undefined {
  if (warmest <= HOT) return undefined;
  const [t, limit] = [warmest, PEAK_LIMIT].map((kelvin) =>
    say(kelvin, 'temperature', { plain: true }),
  );
  return tooHotToCure(warmest)
    ? {
        verdict: 'stop',
        say: `${what} gets as warm as ${t}: at or past ${limit}, the usual limit inside (common practice, no source). ${CHECK} cool the part.`,
      }
    : {
        verdict: 'look',
        say: `${what} gets as warm as ${t}. ${CHECK} shade the part and keep it wet.`,
      };
}
