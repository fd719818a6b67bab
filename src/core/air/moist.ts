import { demand } from '../domain-error.ts';
import { ICE_POINT, STANDARD_ATMOSPHERE } from '../quantity/constants.ts';
import { dewPoint, SATURATION_RANGE, saturationPressure } from './saturation.ts';

/** Mass of a water molecule over that of mean dry air. @source ashrae-2017 equation 20 */
const WATER_TO_AIR = 0.621945;

/** Gas constant of dry air, J/(kg·K). @source ashrae-2017 equation 1 */
export const DRY_AIR_GAS_CONSTANT = 287.042;

/** Standard pressure at sea level, Pa. @source ashrae-2017 equation 3 */
export const SEA_LEVEL_PRESSURE = STANDARD_ATMOSPHERE;

/**
 * Standard air pressure at a height, Pa: 101325·(1 − 2.25577e-5·h)^5.2559.
 * `altitude` in m above sea level; valid −5000…11000 m (the standard atmosphere).
 * @throws {DomainError} outside that range.
 * @source ashrae-2017 chapter 1, equation 3
 */
export function standardPressure({ altitude }: { readonly altitude: number }): number {
  demand('altitude', altitude, 'length', { min: -5000, max: 11000 });
  return SEA_LEVEL_PRESSURE * (1 - 2.25577e-5 * altitude) ** 5.2559;
}

export interface Air {
  /** K */
  readonly temperature: number;
  /** 0…1 */
  readonly relativeHumidity: number;
  /** Pa */
  readonly pressure?: number;
}

/**
 * Vapour pressure of air, Pa: relativeHumidity × saturation pressure.
 * `temperature` K, valid −100…200 °C; `relativeHumidity` 0…1.
 * @throws {DomainError} for a humidity outside 0…1 or a temperature outside the fit.
 * @source ashrae-2017 chapter 1, equation 22
 */
export function vapourPressure({ temperature, relativeHumidity }: Air): number {
  demand('relativeHumidity', relativeHumidity, 'ratio', { min: 0, max: 1 });
  return relativeHumidity * saturationPressure({ temperature });
}

/**
 * Water per mass of dry air, kg/kg: 0.621945·e/(p − e). `vapourPressure` e and `pressure` p in Pa.
 * An ideal-gas relation: no enhancement factor, 0.5 % low against the printed table at room
 * temperature. No range is published.
 * @throws {DomainError} when e is negative or not below p.
 * @source ashrae-2017 chapter 1, equation 20
 */
export function humidityRatio(of: {
  readonly vapourPressure: number;
  readonly pressure: number;
}): number {
  demand('pressure', of.pressure, 'pressure', { min: 0, aboveMin: true });
  demand('vapourPressure', of.vapourPressure, 'pressure', {
    min: 0,
    max: of.pressure,
    belowMax: true,
  });
  return (WATER_TO_AIR * of.vapourPressure) / (of.pressure - of.vapourPressure);
}

/**
 * Enthalpy of moist air per mass of dry air, J/kg: 1006·t + W·(2.501e6 + 1860·t), t in °C.
 * `temperature` K, `humidityRatio` kg/kg. No range is published; kept to that of the saturation fit
 * it goes with, −100…200 °C.
 * @throws {DomainError} for a negative humidity ratio, or a temperature outside that range.
 * @source ashrae-2017 chapter 1, equation 30
 */
export function moistEnthalpy(of: {
  readonly temperature: number;
  readonly humidityRatio: number;
}): number {
  demand('temperature', of.temperature, 'temperature', SATURATION_RANGE);
  demand('humidityRatio', of.humidityRatio, 'ratio', { min: 0 });
  const t = of.temperature - ICE_POINT;
  return 1006 * t + of.humidityRatio * (2.501e6 + 1860 * t);
}

/**
 * Mass of moist air in a cubic metre, kg/m³: p·(1 + W)/(R·T·(1 + W/0.621945)).
 * `temperature` K, `humidityRatio` kg/kg, `pressure` Pa. Ideal gas; no range is published.
 * @throws {DomainError} for a negative humidity ratio, or a temperature or pressure not above zero.
 * @source ashrae-2017 chapter 1, equations 26 and 27
 */
export function moistAirDensity(of: {
  readonly temperature: number;
  readonly humidityRatio: number;
  readonly pressure: number;
}): number {
  const { temperature, humidityRatio: w, pressure } = of;
  demand('temperature', temperature, 'temperature', { min: 0, aboveMin: true });
  demand('humidityRatio', w, 'ratio', { min: 0 });
  demand('pressure', pressure, 'pressure', { min: 0, aboveMin: true });
  return (pressure * (1 + w)) / (DRY_AIR_GAS_CONSTANT * temperature * (1 + w / WATER_TO_AIR));
}

/**
 * Humidity ratio of air from its wet- and dry-bulb temperatures, kg/kg.
 * Temperatures K, `pressure` Pa (standard at sea level if absent).
 * Over water W = [(2501 − 2.326·t*)·Ws − 1.006·(t − t*)]/(2501 + 1.86·t − 4.186·t*); over ice the
 * companion form. Valid −100…200 °C.
 * @throws {DomainError} for a wet bulb above the dry bulb, or below that of air without any water
 * ('drier-than-dry-air'); as `humidityRatio` and `saturationPressure`.
 * @source ashrae-2017 chapter 1, equations 33 and 35
 */
export function humidityRatioFromWetBulb(of: {
  readonly temperature: number;
  readonly wetBulb: number;
  readonly pressure?: number;
}): number {
  const { temperature, pressure = SEA_LEVEL_PRESSURE } = of;
  demand('wetBulb', of.wetBulb, 'temperature', { max: temperature });
  const ratio = psychrometer(temperature, of.wetBulb, pressure);
  if (ratio >= 0) return ratio;
  const min = wetBulb({ temperature, pressure, relativeHumidity: 0 }) - SEARCH_END;
  demand('wetBulb', of.wetBulb, 'temperature', { min, max: temperature }, 'drier-than-dry-air');
  return 0;
}

/** The relation itself, kg/kg: below 0 where no air has such a wet bulb. */
function psychrometer(temperature: number, wetBulb: number, pressure: number): number {
  const t = temperature - ICE_POINT;
  const w = wetBulb - ICE_POINT;
  const saturated = humidityRatio({
    vapourPressure: saturationPressure({ temperature: wetBulb }),
    pressure,
  });
  return w >= 0
    ? ((2501 - 2.326 * w) * saturated - 1.006 * (t - w)) / (2501 + 1.86 * t - 4.186 * w)
    : ((2830 - 0.24 * w) * saturated - 1.006 * (t - w)) / (2830 + 1.86 * t - 2.1 * w);
}

/** Tolerance of the search for a wet bulb, K. */
const SEARCH_END = 1e-9;

/**
 * Wet-bulb temperature of air, K: the lowest that a wet surface in shade and wind can reach. Air as
 * in `Air`. Found by bisection on the relation above; valid −100…200 °C.
 * @throws {DomainError} for a humidity outside 0…1, or air that cannot hold its vapour at its
 *   pressure.
 * @source ashrae-2017 chapter 1, equations 33 and 35
 */
export function wetBulb(air: Air): number {
  const { temperature, pressure = SEA_LEVEL_PRESSURE } = air;
  const wanted = humidityRatio({ vapourPressure: vapourPressure(air), pressure });
  let low: number = SATURATION_RANGE.min;
  // A wet surface cannot be hotter than the boiling point.
  let high = Math.min(temperature, dewPoint({ vapourPressure: pressure * (1 - 1e-9) }));
  while (high - low > SEARCH_END) {
    const middle = (low + high) / 2;
    if (psychrometer(temperature, middle, pressure) > wanted) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
