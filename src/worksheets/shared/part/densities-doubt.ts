import { WET_FOAM } from '../../../core/foam/wet-foam.ts';
import { leastOvenDryDensity } from '../../../core/mix/least-dry.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { saidApart } from '../words/said-apart.ts';

/**
 * Why no mix can have both this wet and this dry density, kg/m³; undefined if one can. The mix that
 * dries to least is taken with a w/c of 2 and wet foam (common practice, no source).
 */
export function densitiesDoubt(wetDensity: number, dry: number, say: Say): string | undefined {
  const least = leastOvenDryDensity({ wetDensity, foamDensity: WET_FOAM });
  return dry < least
    ? `Check the wet and the dry density: no mix dries from ${say(wetDensity, 'density')} to less than ${saidApart(least, 'density', [dry], say)}.`
    : undefined;
}
