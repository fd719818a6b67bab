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
  /** The highest dose read of in a trial in foamed concrete, by volume; undefined where none was read. */
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

/** What is not doubted of a fibre of which no dose in foam was read: the dose tried of the one that was. A choice. @source common-practice */
const UNTRIED = 0.005;

/**
 * The most of a kind, as a share of the mix's volume, that is not doubted: the highest dose read of in foamed concrete, or a
 * line of our own. No range is published.
 * @source hamad-2015 (doses tried), common-practice
 */
export const triedUpTo = (kind: FibreKind): number => FIBRES[kind].tried ?? UNTRIED;

/** Least zirconia in glass that is called alkali-resistant, by mass. @source en-15422 (from memory) */
export const ALKALI_RESISTANT_ZIRCONIA = 0.16;

/** More fibre than this share of the volume is no dose. A choice. @source common-practice */
const MOST_SHARE = 0.1;

/**
 * How much fibre a dose by volume is, kg: share × density × volume of the finished mix. What was tried
 * of it: `triedUpTo`.
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
 * The dose by volume that a mass of fibre is in a batch.
 *
 * @param mass kg; @param volume of the finished mix, m³; @param density default the kind's own
 * @returns 0–0.1
 * @throws {DomainError} for a negative mass, no volume, a density no fibre has; 'over-a-tenth' for a mass that takes
 *   more than a tenth of the volume
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
 * How many fibres a dose is, from length and thickness of one.
 *
 * n = share/(π d² l/4). The more and the more slender, the sooner they tangle; no limit was found in
 * print for mixes without stone.
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
