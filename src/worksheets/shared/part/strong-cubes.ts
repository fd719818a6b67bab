import { MOST_OF_ALL } from '../../../core/finished/strength-relations/relation.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { saidApart } from '../words/said-apart.ts';

/** The first thing to do if a strength exceeds every published one. */
export const CHECK = 'Check the force, the sides and their units before you rely on';

/** Why the strength of cubes or cores, Pa, is not credible at any density; undefined if it is. */
export function strongCubes(strength: number, say: Say): string | undefined {
  if (strength <= MOST_OF_ALL) return undefined;
  const mpa = (pa: number, apart: number) =>
    saidApart(pa, 'stress', [apart], say, { significant: 2 });
  return `${CHECK} that strength: ${mpa(strength, MOST_OF_ALL)} is above ${mpa(MOST_OF_ALL, strength)}, the most that is published of any foamed concrete here.`;
}
