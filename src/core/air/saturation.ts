import { demand } from '../domain-error.ts';
import { ICE_POINT } from '../quantity/constants.ts';

/** Coldest and hottest temperature of the Hyland–Wexler fits, K. @source ashrae-2017 */
export const SATURATION_RANGE = { min: 173.15, max: 473.15 } as const;

/**
 * Pressure of water vapour in balance with water (or, below 0 °C, with ice), Pa.
 *
 * `temperature` in K. ln p = C8/T + C9 + C10·T + C11·T² + C12·T³ + C13·ln T over water and the
 * seven-term form over ice. Valid −100…200 °C.
 * @throws {DomainError} outside that range: the fit means nothing there.
 * @source ashrae-2017 chapter 1, equations 5 and 6 (coefficients from memory; checked against the
 * printed table and an independent program)
 */
export function saturationPressure({ temperature }: { readonly temperature: number }): number {
  demand('temperature', temperature, 'temperature', SATURATION_RANGE);
  return Math.exp(logSaturationPressure(temperature));
}

function logSaturationPressure(t: number): number {
  // At the ice point both fits agree to 0.02 %; water is taken there.
  return t < ICE_POINT
    ? -5674.5359 / t +
        6.3925247 +
        t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - 9.484024e-13 * t))) +
        4.1635019 * Math.log(t)
    : -5800.2206 / t +
        1.3914993 +
        t * (-4.8640239e-2 + t * (4.1764768e-5 - 1.4452093e-8 * t)) +
        6.5459673 * Math.log(t);
}

/**
 * Saturation pressure by Tetens as FAO uses it, Pa: 610.8·exp(17.27·t/(t + 237.3)), t in °C.
 * `temperature` in K. No range is published with the formula; water only.
 * @throws {DomainError} at or below −237.3 °C, where it has no meaning.
 * @source fao-56 equation 11
 */
export function saturationPressureTetens(of: { readonly temperature: number }): number {
  return magnusForm(of.temperature, 610.8, 17.27, 237.3);
}

/**
 * Saturation pressure by the Magnus form of the WMO, Pa: 611.2·exp(17.62·t/(t + 243.12)), t in °C.
 * `temperature` in K. Over water. Range −45…60 °C, from memory; not checked here.
 * @throws {DomainError} at or below −243.12 °C.
 * @source wmo-8 Annex 4.B
 */
export function saturationPressureMagnus(of: { readonly temperature: number }): number {
  return magnusForm(of.temperature, 611.2, 17.62, 243.12);
}

/**
 * The vapour pressure Uno and Menzel's formula use, Pa: 610·exp(17.3·t/(t + 237.3)), t in °C.
 * `temperature` in K. No range is published.
 * @throws {DomainError} at or below −237.3 °C.
 * @source uno-1998 from memory
 */
export function saturationPressureUno(of: { readonly temperature: number }): number {
  return magnusForm(of.temperature, 610, 17.3, 237.3);
}

function magnusForm(kelvin: number, p0: number, a: number, b: number): number {
  demand('temperature', kelvin, 'temperature', { min: ICE_POINT - b, aboveMin: true });
  const t = kelvin - ICE_POINT;
  return p0 * Math.exp((a * t) / (t + b));
}

/**
 * Temperature at which air of this vapour pressure is saturated, K.
 *
 * `vapourPressure` in Pa. Solves saturationPressure(T) = vapourPressure by bisection; valid where
 * that fit is.
 * @throws {DomainError} for a pressure outside the fit, 1.4 mPa to 1.55 MPa.
 * @source ashrae-2017 chapter 1, equations 5 and 6, inverted
 */
export function dewPoint({ vapourPressure }: { readonly vapourPressure: number }): number {
  let { min: low, max: high } = SATURATION_RANGE as { min: number; max: number };
  demand('vapourPressure', vapourPressure, 'pressure', {
    min: saturationPressure({ temperature: low }),
    max: saturationPressure({ temperature: high }),
  });
  const wanted = Math.log(vapourPressure);
  while (high - low > 1e-10 * high) {
    const middle = (low + high) / 2;
    if (logSaturationPressure(middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
