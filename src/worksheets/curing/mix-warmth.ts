import { COLDEST_CURE, tooColdToCure } from '../../core/curing/limits.ts';
import { ICE_POINT } from '../../core/quantity/constants.ts';
import type { Say } from '../../islands/engine/say.ts';
import type { Judgement } from '../../islands/worksheet.ts';
import { HOT } from '../shared/time/heat-doubt.ts';
import { saidApart } from '../shared/words/said-apart.ts';

/** Coolest and warmest mix to aim at, K. Common practice, no source. */
export const MIX = { cold: ICE_POINT + 10, hot: ICE_POINT + 30 } as const;
/** The last digit of a reading in °F. */
const DIGIT = 1e-6;

const tooCold = (kelvin: number) => kelvin < MIX.cold - DIGIT;
const tooHot = (kelvin: number) => kelvin > MIX.hot + DIGIT;

/** Whether a mix is cooler or warmer than one aims at. */
export const outsideMix = (kelvin: number) => tooCold(kelvin) || tooHot(kelvin);

/**
 * The judgement of an unusual temperature of a mix, K, for every worksheet that uses one; undefined
 * for a usual one. `read`: what to check.
 */
export function mixWarmth(
  kelvin: number,
  say: Say,
  read = 'the figure and its unit, °C or °F',
): Judgement | undefined {
  const t = saidApart(kelvin, 'temperature', [COLDEST_CURE, MIX.cold, MIX.hot, HOT], say);
  const least = say(COLDEST_CURE, 'temperature', { plain: true });
  if (tooColdToCure(kelvin))
    return { verdict: 'stop', say: `${t} is too cold to cast: below ${least} it hardly sets.` };
  if (kelvin > HOT)
    return {
      verdict: 'stop',
      say: `${t} is too hot to cast: it may set in lumps before it is placed. Check ${read}.`,
    };
  if (tooCold(kelvin))
    return {
      verdict: 'look',
      say: `${t} is cold: it sets late, and the foam has to last so much longer.`,
    };
  if (tooHot(kelvin))
    return { verdict: 'look', say: `${t} is hot: it stiffens early and dries fast.` };
  return undefined;
}
