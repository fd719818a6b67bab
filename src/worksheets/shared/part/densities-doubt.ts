import { WET_FOAM } from '../../../core/foam/wet-foam.ts';
import { leastOvenDryDensity } from '../../../core/mix/least-dry.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { saidApart } from '../words/said-apart.ts';

/** Why a wet and a dry density, kg/m³, are of no one mix; undefined where they may be. Least dries of w/c 2 and wet foam; the foam is a choice: common practice, no source. */
export function densitiesDoubt(wetDensity: number, dry: number, say: Say): string | undefined {
  const least = leastOvenDryDensity({ wetDensity, foamDensity: WET_FOAM });
  return dry < least
    ? `Check the wet and the dry density: no mix dries from ${say(wetDensity, 'density')} to less than ${saidApart(least, 'density', [dry], say)}.`
    : undefined;
}
