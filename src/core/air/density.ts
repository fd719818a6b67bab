import { demand } from '../domain-error.ts';
import { type Note, outsideRange } from '../note.ts';
import { ICE_POINT } from '../quantity/constants.ts';
import { DRY_AIR_GAS_CONSTANT, SEA_LEVEL_PRESSURE } from './moist.ts';

/**
 * Ratio of the heat capacities of air, the value every formula below is quoted with.
 * @source common-practice
 */
export const AIR_GAMMA = 1.4;
/** A state of dry air: what turns a volume of it into a mass. */
export interface AirState {
  /** Absolute pressure, Pa. */
  readonly pressure: number;
  /** Temperature, K. */
  readonly temperature: number;
}

/** Free air as compressors are rated: 20 °C, 1 bar absolute, dry. @source iso-1217 */
export const FREE_AIR: AirState = { pressure: 100_000, temperature: 293.15 };
/** The normal cubic metre: 0 °C, 1.01325 bar absolute, dry. @source din-1343 */
export const NORMAL_AIR: AirState = { pressure: SEA_LEVEL_PRESSURE, temperature: ICE_POINT };

/**
 * How heavy is dry air at a state? ρ = p/(R T).
 *
 * @param pressure absolute, Pa
 * @param temperature K
 * @param gasConstant J/(kg·K), default `DRY_AIR_GAS_CONSTANT`
 * @returns density, kg/m³. An ideal gas. Range, from memory:
 *   below 10 bar at room temperature it is good to 0.1 %.
 * @throws {DomainError} a pressure, temperature or gas constant that is not positive
 * @source compressed-air-states
 */
export function dryAirDensity({
  pressure,
  temperature,
  gasConstant = DRY_AIR_GAS_CONSTANT,
}: AirState & { readonly gasConstant?: number }): number {
  checkState({ pressure, temperature });
  demand('gasConstant', gasConstant, 'specificHeat', { min: 0, aboveMin: true });
  return pressure / (gasConstant * temperature);
}

export interface RoomAirDensity {
  /** Density, kg/m³. */
  readonly density: number;
  readonly notes: readonly Note[];
}

/**
 * How heavy is the air of the workshop, moisture and all? The balance-maker's shortcut; `moist.ts`
 * has the longer way for any air.
 *
 * ρ = [0.34844 p − h (0.252 t − 2.0582)]/(273.15 + t), p in hPa, t in °C, h as a fraction.
 *
 * @param pressure absolute, Pa
 * @param temperature K
 * @param humidity relative humidity, 0–1
 * @returns density, kg/m³. The range is from memory: 940–1080 hPa, 10–30 °C, humidity below 0.8.
 * @throws {DomainError} humidity outside 0–1, a pressure or temperature that is not positive
 * @source spieweck-bettin balance manual, Appendix H
 */
export function roomAirDensity({
  pressure,
  temperature,
  humidity,
}: AirState & { readonly humidity: number }): RoomAirDensity {
  checkState({ pressure, temperature });
  demand('humidity', humidity, 'ratio', { min: 0, max: 1 });
  const t = temperature - ICE_POINT;
  return {
    density: ((0.34844 * pressure) / 100 - humidity * (0.252 * t - 2.0582)) / temperature,
    notes: [
      ...outsideRange('pressure', pressure, { min: 94_000, max: 108_000 }),
      ...outsideRange('temperature', temperature, { min: 283.15, max: 303.15 }),
      ...outsideRange('humidity', humidity, { max: 0.8 }),
    ],
  };
}

/**
 * What volume does air take up at another state? V₂ = V₁ (p₁/p₂)(T₂/T₁), for flows as for volumes.
 *
 * @param volume at state `from`, m³ (or m³/s)
 * @param from absolute pressure in Pa and temperature in K
 * @param to absolute pressure in Pa and temperature in K
 * @returns volume at state `to`, m³ (or m³/s). An ideal gas; moisture is not included.
 *   No range is published.
 * @throws {DomainError} a negative volume, a pressure or temperature that is not positive
 * @source compressed-air-states
 */
export function airVolume({
  volume,
  from,
  to,
}: {
  readonly volume: number;
  readonly from: AirState;
  readonly to: AirState;
}): number {
  demand('volume', volume, 'volume', { min: 0 });
  checkState(from);
  checkState(to);
  return (volume * from.pressure * to.temperature) / (to.pressure * from.temperature);
}

/** Refuses an impossible state of a gas. */
function checkState({ pressure, temperature }: AirState): void {
  demand('pressure', pressure, 'pressure', { min: 0, aboveMin: true });
  demand('temperature', temperature, 'temperature', { min: 0, aboveMin: true });
}
