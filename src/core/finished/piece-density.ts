import { demand } from '../domain-error.ts';
import { fromReadings, type Reading } from './readings.ts';

export interface PieceDensity {
  /** kg/m³ */
  readonly density: number;
  /** Standard uncertainty, kg/m³. */
  readonly uncertainty: number;
  /** m³ */
  readonly volume: number;
  /** The share of the variance that each reading contributes, 0–1. */
  readonly shares: Readonly<Record<string, number>>;
}

/**
 * Density of the thin wrapping film, kg/m³, if none is stated: polyethylene. From memory.
 * @source polyethylene-density
 */
const FILM_DENSITY = 920;

/**
 * Density of a block from its sides: mass/(length · width · height), kg/m³, with its ±. No range:
 * arithmetic.
 * @param block readings with standard uncertainties: mass kg, sides m, each above 0
 * @throws {DomainError} for a reading not above 0 or a negative uncertainty
 * @source common-practice
 */
export function blockDensity(
  block: Readonly<Record<'mass' | 'length' | 'width' | 'height', Reading>>,
): PieceDensity {
  demandReadings(block);
  return piece(block, (r) => r.length * r.width * r.height);
}

/**
 * Density of a cylinder: mass/(π/4 · diameter² · height), kg/m³, with its ±. No range: arithmetic.
 * @param cylinder readings with standard uncertainties: mass kg, diameter and height m, each above
 *   0
 * @throws {DomainError} for a reading not above 0 or a negative uncertainty
 * @source common-practice
 */
export function cylinderDensity(
  cylinder: Readonly<Record<'mass' | 'diameter' | 'height', Reading>>,
): PieceDensity {
  demandReadings(cylinder);
  return piece(cylinder, (r) => (Math.PI / 4) * r.diameter ** 2 * r.height);
}

/** Readings common to both ways of weighing in water, kg. */
interface Wrapped {
  /** The piece alone, in air. */
  readonly mass: Reading;
  /** The piece wrapped in film, in air. */
  readonly wrapped: Reading;
}

/** The densities of the water and the film, kg/m³. */
interface Baths {
  readonly waterDensity: number;
  readonly filmDensity?: number;
}

/**
 * Density of a wrapped piece pushed under in a vessel of water that stands on the scale: the scale
 * gains the mass of water displaced. V = gain/ρw − (wrapped − mass)/ρ_film. The submerged rod
 * counts as part of the piece, so it must be thin; the piece touches nothing. No range: Archimedes'
 * principle.
 * @param readings kg with standard uncertainties; gain: reading under water less reading before
 * @throws {DomainError} for a reading not above 0, a wrapped mass below the bare, a water or film
 *   density not above 0, a gain no larger than the film's
 * @source archimedes
 */
export function densityByGain(
  readings: Wrapped & { readonly gain: Reading },
  baths: Baths,
): PieceDensity {
  return inWater(readings, baths, (r) => r.gain);
}

/**
 * Density of a wrapped piece hung below the scale with a sinker, since foamed concrete floats:
 * V = (wrapped + sinker under water − both under water)/ρw − (wrapped − mass)/ρ_film. No range:
 * Archimedes' principle.
 * @param readings kg with standard uncertainties; sinker and both: what the scale shows under water
 * @throws {DomainError} as `densityByGain`
 * @source archimedes
 */
export function densityByHanging(
  readings: Wrapped & { readonly sinker: Reading; readonly both: Reading },
  baths: Baths,
): PieceDensity {
  return inWater(readings, baths, (r) => r.wrapped + r.sinker - r.both);
}

function inWater<K extends string>(
  readings: Wrapped & Readonly<Record<K, Reading>>,
  { waterDensity, filmDensity = FILM_DENSITY }: Baths,
  displaced: (r: Readonly<Record<K | keyof Wrapped, number>>) => number,
): PieceDensity {
  const all = readings as Readonly<Record<K | keyof Wrapped, Reading>>;
  demandReadings(all);
  demand(
    'wrapped',
    readings.wrapped.value,
    'mass',
    { min: readings.mass.value },
    'film-weighs-less-than-nought',
  );
  demand('waterDensity', waterDensity, 'density', { min: 0, aboveMin: true });
  demand('filmDensity', filmDensity, 'density', { min: 0, aboveMin: true });
  return piece(all, (r) => displaced(r) / waterDensity - (r.wrapped - r.mass) / filmDensity);
}

function piece<K extends string>(
  readings: Readonly<Record<K | 'mass', Reading>>,
  volumeOf: (r: Readonly<Record<K | 'mass', number>>) => number,
): PieceDensity {
  const { value: volume } = fromReadings(readings, volumeOf);
  demand('volume', volume, 'volume', { min: 0, aboveMin: true }, 'no-volume');
  const { value, uncertainty, shares } = fromReadings(readings, (r) => r.mass / volumeOf(r));
  return { density: value, uncertainty, volume, shares };
}

const LENGTHS: readonly string[] = ['length', 'width', 'height', 'diameter'];

function demandReadings(readings: Readonly<Record<string, Reading>>): void {
  for (const [name, { value, uncertainty }] of Object.entries(readings)) {
    const kind = LENGTHS.includes(name) ? 'length' : 'mass';
    demand(name, value, kind, { min: 0, aboveMin: true });
    demand(name, uncertainty, kind, { min: 0 }, 'negative-uncertainty');
  }
}
