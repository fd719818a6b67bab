import { demand } from '../domain-error.ts';
import { demandAmount, EXTREMES } from '../extremes.ts';

/**
 * Wet density from weighing a measure of the blended mix, kg/m³: (full − tare) / vessel.
 *
 * `tare` and `full` in kg, `vessel` in m³. As the scale reads it, in air, like every other mass
 * of the balance. No range is published.
 *
 * @throws {DomainError} when the full measure is not heavier than the empty one, or has no volume.
 * @source astm-c138
 */
export function wetDensity(reading: {
  readonly tare: number;
  readonly full: number;
  readonly vessel: number;
}): number {
  const { tare, full, vessel } = reading;
  demand('tare', tare, 'mass', { min: 0, max: EXTREMES.mass.max });
  demand('full', full, 'mass', { min: tare, max: EXTREMES.mass.max, aboveMin: true });
  demandAmount('vessel', vessel, 'volume');
  return (full - tare) / vessel;
}

/**
 * Yield of a batch, m³: the mass that went in over the density it was weighed at. No range: a
 * definition.
 *
 * @throws {DomainError} for no mass or no density.
 * @source astm-c138
 */
export function yieldVolume(batch: { readonly mass: number; readonly density: number }): number {
  demandAmount('mass', batch.mass, 'mass');
  demandAmount('density', batch.density, 'density');
  return batch.mass / batch.density;
}

/**
 * Gravimetric air content, a share of the volume: (T − D) / T.
 *
 * `airFreeDensity` T is what the parts would weigh with no air, `density` D what was weighed,
 * kg/m³. A reading error can make it slightly negative, which is returned as it is. No range: a
 * definition.
 *
 * @throws {DomainError} for a density that is not positive.
 * @source astm-c138
 */
export function airContent(mix: {
  readonly airFreeDensity: number;
  readonly density: number;
}): number {
  demandAmount('airFreeDensity', mix.airFreeDensity, 'density');
  demandAmount('density', mix.density, 'density');
  return (mix.airFreeDensity - mix.density) / mix.airFreeDensity;
}
