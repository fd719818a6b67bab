import { FLEXURAL_RATIO } from '../../core/finished/flexural.ts';
import { mostPublished } from '../../core/finished/strength-band.ts';
import type { Say } from '../../islands/engine/say.ts';
import { DENSITY, KPA, MPA } from './amounts.ts';
import { saidApart } from './said-apart.ts';

const CHECK = 'Check the force, the sides and their units before you rely on';

/**
 * Why bars that bore so much, Pa, of a density, kg/m³, are not to be believed yet; undefined where they may be. How dry
 * they are is not known, so all that is published for that density, or a lighter one, counts, at the most of the ratios.
 */
export function strongBars(flexural: number, density: number, say: Say): string | undefined {
  const most = FLEXURAL_RATIO.foamed.high * (mostPublished(density) ?? Number.POSITIVE_INFINITY);
  if (flexural <= most) return undefined;
  const kpa = (pa: number, apart: number) =>
    saidApart(pa, 'stress', [apart], say, { units: KPA, significant: 3 });
  return `${CHECK} these bars: ${kpa(flexural, most)} is above ${kpa(most, flexural)}, the most that goes with what is published for ${say(density, 'density', { units: DENSITY, significant: 3 })} or lighter (0.35 of that, from memory).`;
}

/** The same of cubes or cores of any density. */
export function strongCubes(strength: number, say: Say): string | undefined {
  const most = mostPublished()!;
  if (strength <= most) return undefined;
  const mpa = (pa: number, apart: number) =>
    saidApart(pa, 'stress', [apart], say, { units: MPA, significant: 2 });
  return `${CHECK} that strength: ${mpa(strength, most)} is above ${mpa(most, strength)}, the most that is published of any foamed concrete here.`;
}
