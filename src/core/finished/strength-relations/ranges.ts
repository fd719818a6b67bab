import { POUND_PER_CUBIC_FOOT, PSI } from '../../quantity/constants.ts';
import { between, MOST_OF_ALL, MPA, type StrengthRelation } from './relation.ts';

/** Typical strength by dry density, sanded above about 600 kg/m³. */
export const bcaTable: StrengthRelation = {
  key: 'bca-table',
  against: 'oven-dry',
  range: { min: 400, max: 1600 },
  at: between([
    [400, 0.5 * MPA, 1 * MPA],
    [600, 1 * MPA, 1.5 * MPA],
    [800, 1.5 * MPA, 2 * MPA],
    [1000, 2.5 * MPA, 3 * MPA],
    [1200, 4.5 * MPA, 5.5 * MPA],
    [1400, 6 * MPA, 8 * MPA],
    [1600, 7.5 * MPA, 10 * MPA],
  ]),
  standing: 'from memory',
  source: 'bca-1994',
  where: 'table of properties',
};

const NEAT_CEMENT = [
  [20, 70, 125],
  [25, 125, 225],
  [30, 225, 350],
  [35, 350, 450],
] as const;

/**
 * Typical strength of neat-cement cellular concrete, in bands of 5 lb/ft³; on a boundary the upper
 * one holds.
 */
export const aci523NeatCement: StrengthRelation = {
  key: 'aci-523-1r-neat-cement',
  against: 'oven-dry',
  range: { min: 20 * POUND_PER_CUBIC_FOOT, max: 40 * POUND_PER_CUBIC_FOOT },
  at: (density) => {
    const [, low, high] =
      NEAT_CEMENT.findLast(([from]) => density >= from * POUND_PER_CUBIC_FOOT) ?? NEAT_CEMENT[0];
    return { low: low * PSI, high: high * PSI };
  },
  standing: 'from memory',
  source: 'aci-523-1r',
  where: 'table of typical strength',
};

/** Sanded mixes of one study: 10–39 MPa over its range of densities, not resolved further. */
export const kado2018: StrengthRelation = {
  key: 'kado-2018',
  against: 'wet',
  range: { min: 1500, max: 1800 },
  at: () => ({ low: 10 * MPA, high: MOST_OF_ALL }),
  standing: 'published',
  source: 'kado-2018',
  where: 'abstract (it does not say which density; taken as cast)',
};
