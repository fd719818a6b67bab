import { demand } from '../domain-error.ts';
import { EXTREMES } from '../extremes.ts';
import { waterDensity } from '../water/density.ts';
import { AIR_DENSITY } from './density.ts';

/**
 * The volume of a vessel from weighing it full of water.
 *
 * `empty` and `filled` in kg, `temperature` of the water in K. Formula: V = (filled − empty) /
 * ρ(T), as in the calibration of a measure in ASTM C29 and C138. That rule ignores the buoyancy of
 * the water in air: the true volume is larger by ρair / (ρ − ρair), 0.12 %, less 0.015 % for the
 * brass or steel weights the scale was calibrated with. `buoyancy` gives the first figure so that a
 * reader who cares can add it. Range 0–100 °C.
 *
 * Results: `volume` m³, `water` kg as read, `waterDensity` kg/m³, `buoyancy` share.
 *
 * @throws {DomainError} when the full vessel is not heavier than the empty one, or off 0–100 °C.
 * @source navedtra-14070, tanaka-2001
 */
export function vesselVolume(reading: {
  readonly empty: number;
  readonly filled: number;
  readonly temperature: number;
  readonly airDensity?: number;
}): {
  readonly volume: number;
  readonly water: number;
  readonly waterDensity: number;
  readonly buoyancy: number;
} {
  const { empty, filled, temperature, airDensity = AIR_DENSITY } = reading;
  demand('empty', empty, 'mass', { min: 0, max: EXTREMES.mass.max });
  demand('filled', filled, 'mass', { min: empty, max: EXTREMES.mass.max, aboveMin: true });
  demand('airDensity', airDensity, 'density', { min: 0, max: 2 });
  const density = waterDensity(temperature);
  const water = filled - empty;
  const buoyancy = airDensity / (density - airDensity);
  return { volume: water / density, water, waterDensity: density, buoyancy };
}
