import { FOAMED_BASE } from '../../core/mix/water-cement-limits.ts';
import type { Say } from '../../islands/engine/say.ts';
import { noBaseMixWords } from '../shared/mix/no-base-mix.ts';

/** A weighing that no blend comes to. */
export const noSuchMix = (density: number, say: Say): string =>
  `${say(density, 'density')} cannot be a mix of this base mix and this foam. Weigh again: the bucket, its empty weight and its volume.`;

/** More in the mixer than went into it by this much is no correction made before, but a slip. A line of our own, no source. */
const MOST_GROWN = 1.5;

/** What is strange about how much is in the mixer, kg, beside what the load is made of; undefined for nothing. */
export const grownWords = (mass: number, load: number, say: Say): string | undefined =>
  mass > MOST_GROWN * load
    ? `Look at the mix in the mixer: ${say(mass, 'mass')}, where the load is made of ${say(load, 'mass')}. Is one of them in another unit?`
    : undefined;

/**
 * What is strange about the cement and all water of a load, kg; the foam’s share of that water is none of the base
 * mix’s. Densities in kg/m³.
 */
export function waterDoubt(
  load: {
    readonly cement: number;
    readonly water: number;
    readonly sandCement: number;
    readonly target: number;
    readonly foamDensity: number;
    readonly baseDensity: number;
  },
  say: Say,
): string | undefined {
  const { cement, water, sandCement, target, foamDensity, baseDensity } = load;
  const ofMass = ((baseDensity - target) * foamDensity) / ((baseDensity - foamDensity) * target);
  const all = water / cement;
  const base = all - ofMass * (1 + sandCement + all);
  return all < FOAMED_BASE.min || base > FOAMED_BASE.max ? noBaseMixWords(all, say) : undefined;
}
