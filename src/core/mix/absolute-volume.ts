import { demand } from '../domain-error.ts';
import { demandAmount, EXTREMES } from '../extremes.ts';

/** A material by mass and particle density: kg, kg/m³. */
export interface Part {
  readonly mass: number;
  readonly density: number;
}

/**
 * The volume a material takes in a mix, m³: mass over particle density, without the voids between
 * its grains. No range: arithmetic.
 *
 * @throws {DomainError} for a negative mass or a density that is not positive.
 * @source navedtra-14071 p. 17-7
 */
export function absoluteVolume(part: Part): number {
  demand('mass', part.mass, 'mass', { min: 0, max: EXTREMES.mass.max });
  demandAmount('density', part.density, 'density');
  return part.mass / part.density;
}

/**
 * The volume left for the last material after the others and the air, and the mass of the last that
 * fills it: m³ and kg.
 *
 * left = volume − Σ mass / density − volume × `air`; mass = left × `density`. `air` is a share. No
 * range: arithmetic.
 *
 * @throws {DomainError} when the others already fill the volume ('no-room').
 * @source navedtra-14071 p. 17-7, aci-211-1 6.3
 */
export function lastPart(mix: {
  readonly volume: number;
  readonly parts: readonly Part[];
  readonly air: number;
  readonly density: number;
}): { readonly volume: number; readonly mass: number } {
  const { volume, parts, air, density } = mix;
  demand('air', air, 'ratio', { min: 0, max: 1 });
  demandAmount('density', density, 'density');
  const taken = parts.reduce((sum, part) => sum + absoluteVolume(part), volume * air);
  demand('volume', volume, 'volume', { min: taken }, 'no-room');
  return { volume: volume - taken, mass: (volume - taken) * density };
}
