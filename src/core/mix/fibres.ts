import { demand } from '../domain-error.ts';

export type FibreKind =
  | 'ar-glass'
  | 'plain-glass'
  | 'polypropylene'
  | 'pva'
  | 'basalt'
  | 'nylon'
  | 'steel';

export interface FibreFacts {
  /** kg/m³ */
  readonly density: number;
  /** A key of content/sources. */
  readonly source: string;
  /**
   * The highest dose reported for a trial in foamed concrete, by volume; undefined if none was
   * found.
   */
  readonly tried?: number;
  /** The same in ordinary concrete, which has no bubbles to break. */
  readonly triedInOrdinary?: number;
}

/** Fibre by kind. Doses tried are not doses recommended. */
export const FIBRES: Readonly<Record<FibreKind, FibreFacts>> = {
  'ar-glass': { density: 2680, source: 'en-15422', triedInOrdinary: 0.015 },
  'plain-glass': { density: 2570, source: 'plain-glass' },
  polypropylene: { density: 900, source: 'ijcsm-2015', tried: 0.005 },
  pva: { density: 1300, source: 'aci-544-1r' },
  basalt: { density: 2700, source: 'aci-544-1r' },
  nylon: { density: 1140, source: 'aci-544-1r' },
  steel: { density: 7800, source: 'ijcsm-2015' },
};

/**
 * The dose that is accepted for a fibre without a reported dose in foam: that of the one that has
 * one. A choice.
 * @source common-practice
 */
const UNTRIED = 0.005;

/**
 * The largest dose of a kind, as a share of the mix's volume, that is accepted without a doubt: the
 * highest reported in foamed concrete, or our own limit. No range is published.
 * @source hamad-2015 (doses tried), common-practice
 */
export const triedUpTo = (kind: FibreKind): number => FIBRES[kind].tried ?? UNTRIED;

/**
 * Minimum zirconia content of glass called alkali-resistant, by mass.
 * @source en-15422 (from memory)
 */
export const ALKALI_RESISTANT_ZIRCONIA = 0.16;

/**
 * A larger share of the volume than this is not a dose of fibre. A choice.
 * @source common-practice
 */
const MOST_SHARE = 0.1;

/**
 * The mass of a dose of fibre by volume, kg: share × density × volume of the finished mix. For the
 * doses tried, see `triedUpTo`.
 *
 * @param share of the finished mix's volume, 0–0.1; @param volume of it, m³; @param density default
 *   the kind's own, kg/m³
 * @throws {DomainError} outside those limits; a density no fibre has
 * @source definition; hamad-2015, uow-2021 (doses tried)
 */
export function fibreMass(dose: {
  readonly kind: FibreKind;
  readonly share: number;
  readonly volume: number;
  readonly density?: number;
}): { readonly mass: number; readonly volume: number } {
  const { kind, share, volume, density = FIBRES[kind].density } = dose;
  demand('fibreShare', share, 'ratio', { min: 0, max: MOST_SHARE });
  demand('volume', volume, 'volume', { min: 0, aboveMin: true });
  demand('fibreDensity', density, 'density', { min: 500, max: 9000 });
  return { mass: share * density * volume, volume: share * volume };
}

/**
 * The dose by volume of a mass of fibre in a batch.
 *
 * @param mass kg; @param volume of the finished mix, m³; @param density default the kind's own
 * @returns 0–0.1
 * @throws {DomainError} for a negative mass, no volume, a density no fibre has; 'over-a-tenth' for
 *   a mass that takes more than a tenth of the volume
 * @source definition
 */
export function fibreShare(dose: {
  readonly kind: FibreKind;
  readonly mass: number;
  readonly volume: number;
  readonly density?: number;
}): number {
  const { kind, mass, volume, density = FIBRES[kind].density } = dose;
  demand('volume', volume, 'volume', { min: 0, aboveMin: true });
  demand('fibreDensity', density, 'density', { min: 500, max: 9000 });
  const most = MOST_SHARE * density * volume;
  demand(
    'fibreMass',
    mass,
    'mass',
    { min: 0, max: most },
    mass > most ? 'over-a-tenth' : undefined,
  );
  return Math.min(MOST_SHARE, mass / density / volume);
}

/**
 * The number of fibres in a dose, from length and thickness of one.
 *
 * n = share/(π d² l/4). The more and the more slender they are, the sooner they tangle; no limit
 * was found in print for mixes without stone.
 *
 * @param length and diameter of one fibre, m
 * @returns fibres in a cubic metre of mix, and length over diameter
 * @throws {DomainError} for a measure not above 0, a share outside 0–0.1
 * @source definition
 */
export function fibreCount(dose: {
  readonly share: number;
  readonly length: number;
  readonly diameter: number;
}): { readonly perVolume: number; readonly slenderness: number } {
  demand('fibreShare', dose.share, 'ratio', { min: 0, max: MOST_SHARE });
  demand('fibreLength', dose.length, 'length', { min: 0, aboveMin: true });
  demand('fibreDiameter', dose.diameter, 'length', { min: 0, aboveMin: true });
  return {
    perVolume: dose.share / ((Math.PI / 4) * dose.diameter ** 2 * dose.length),
    slenderness: dose.length / dose.diameter,
  };
}
