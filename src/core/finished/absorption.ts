import { demand } from '../domain-error.ts';
import type { PublishedRange } from './published-range.ts';

const BLOCKS = {
  source: 'is-2185-4',
  standing: 'from memory',
  where: 'Table 1',
  of: 'block-limit',
  low: 0,
} as const;

/**
 * Water absorption by mass of the dry piece, as shares. Two tests read, their % taken as by mass;
 * the block limits from memory.
 * @source kado-2018
 * @source is-2185-4
 */
export const ABSORPTION_BY_MASS: readonly PublishedRange[] = [
  {
    id: 'kado-1500',
    source: 'kado-2018',
    where: 'abstract',
    standing: 'published',
    density: { min: 1500, max: 1500 },
    low: 0.113,
    high: 0.113,
    of: 'water-cured',
  },
  {
    id: 'kado-1800',
    source: 'kado-2018',
    where: 'abstract',
    standing: 'published',
    density: { min: 1800, max: 1800 },
    low: 0.02,
    high: 0.02,
    of: 'air-cured',
  },
  { ...BLOCKS, id: 'blocks-800', density: { min: 800, max: 1000 }, high: 0.125 },
  { ...BLOCKS, id: 'blocks-1200', density: { min: 1200, max: 1400 }, high: 0.1 },
  { ...BLOCKS, id: 'blocks-1600', density: { min: 1600, max: 1800 }, high: 0.075 },
];

/** The most a test batch of 641 kg/m³ may take up, by volume. @source astm-c869 */
export const C869_ABSORPTION_LIMIT = 0.25;

/**
 * A moisture by mass as a share of the piece's own volume: u · dry density / water density. No
 * range: arithmetic.
 * @param of byMass kg/kg of dry mass, 0 or more; dryDensity and waterDensity kg/m³
 * @throws {DomainError} outside those
 * @source common-practice
 */
export function moistureByVolume(of: {
  readonly byMass: number;
  readonly dryDensity: number;
  readonly waterDensity: number;
}): number {
  demand('byMass', of.byMass, 'ratio', { min: 0 });
  demand('dryDensity', of.dryDensity, 'density', { min: 0, aboveMin: true });
  demand('waterDensity', of.waterDensity, 'density', { min: 0, aboveMin: true });
  return (of.byMass * of.dryDensity) / of.waterDensity;
}
