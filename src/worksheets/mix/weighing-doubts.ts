import { FOAMED_BASE } from '../../core/mix/water-cement-limits.ts';
import type { Say } from '../../islands/engine/say.ts';
import { noBaseMixWords } from '../shared/mix/no-base-mix.ts';

/** A weighing that no blend comes to. */
export const noSuchMix = (density: number, say: Say): string =>
  `${say(density, 'density')} cannot be a mix of this base mix and this foam. Weigh again: the bucket, its empty weight and its volume.`;

/**
 * Above this multiple of the load, what is in the mixer is not explained by an earlier correction,
 * but is a slip. A choice, no source.
 */
const MOST_GROWN = 1.5;

/** The doubt about the mass in the mixer, kg, compared with the load's ingredients; undefined for none. */
export const grownWords = (mass: number, load: number, say: Say): string | undefined =>
  mass > MOST_GROWN * load
    ? `Look at the mix in the mixer: ${say(mass, 'mass')}, where the load is made of ${say(load, 'mass')}. Is one of them in another unit?`
    : undefined;

/**
 * The doubt about the cement and the total water of a load, kg. The foam’s share of that water does
 * not belong to the base mix. Densities in kg/m³.
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
