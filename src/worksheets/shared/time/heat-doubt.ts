import { PEAK_LIMIT, tooHotToCure } from '../../../core/curing/limits.ts';
import { ICE_POINT } from '../../../core/quantity/constants.ts';
import type { Say } from '../../../islands/engine/say.ts';
import type { Judgement } from '../../../islands/worksheet.ts';

/**
 * Nobody means a mix to be warmer than this, K, nor a part that cures, and a figure in °F typed as °C looks like it: 40 °C,
 * with room for the last digit of 104 °F. A choice.
 */
export const HOT = ICE_POINT + 40 + 1e-6;

const CHECK = 'Check the figure and its unit, °C or °F; if it is right,';

/** Doubts as one text, or undefined where there is none. */
export const oneText = (...doubts: readonly (string | undefined)[]): string | undefined =>
  doubts.filter(Boolean).join(' ') || undefined;

/** What the warmest of a cure makes doubtful, whatever is reckoned from it; undefined where nothing is. `what` is so warm. */
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
