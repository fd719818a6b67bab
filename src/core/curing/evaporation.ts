import { saturationPressureUno } from '../air/saturation.ts';
import { demand } from '../domain-error.ts';
import { type Note, outsideRange } from '../note.ts';
import { HOUR, ICE_POINT } from '../quantity/constants.ts';
import { demandNotNegative, demandPositive } from './bounds.ts';
import { celsius, fahrenheit, MILE_PER_HOUR, POUND_PER_SQUARE_FOOT_HOUR } from './units.ts';

/** Loss at which to take care, kg/(m²·s): 0.5 kg/(m²·h). @source fhwa-curing-2006 chapter 5 */
export const CAUTION_RATE = 0.5 / HOUR;

/** Loss at which to act, kg/(m²·s): 1.0 kg/(m²·h). @source fhwa-curing-2006 chapter 5 */
export const ACTION_RATE = 1 / HOUR;

/**
 * The same limit as US practice writes it, 0.2 lb/(ft²·h), in kg/(m²·s). It is 0.976 kg/(m²·h),
 * not 1.0: the two limits are not one limit converted.
 * @source aci-305r from memory
 */
export const US_ACTION_RATE = 0.2 * POUND_PER_SQUARE_FOOT_HOUR;

/**
 * The share of both limits for mixes that bleed little, as foamed ones do: half or less.
 * @source aci-305r from memory
 */
export const LITTLE_BLEED_SHARE = 0.5;

/**
 * Relative error to expect of the nomograph and of the formulas fitted to it. @source hover-2020
 */
export const EVAPORATION_ACCURACY = 0.4;

/**
 * The chart's own span: 40–100 °F of air and concrete, up to 25 mph. @source aci-305r from memory
 */
const CHART_RANGE = {
  temperature: { min: ICE_POINT + 40 / 9, max: ICE_POINT + 340 / 9 },
  windSpeed: { min: 0, max: 25 * MILE_PER_HOUR },
} as const;

export interface Drying {
  /** Surface of the concrete, K. */
  readonly concreteTemperature: number;
  /** K */
  readonly airTemperature: number;
  /** 0…1 */
  readonly relativeHumidity: number;
  /** m/s, measured about half a metre above the surface. */
  readonly windSpeed: number;
}

/**
 * Water leaving fresh concrete by Uno, kg/(m²·s), exactly as in his US form. E = (Tc^2.5 −
 * r·Ta^2.5)(1 + 0.4·V)·1e-6 lb/(ft²·h), °F and mph, converted without rounding. Negative when
 * vapour condenses on the surface. For bleed water standing on the surface. Range of the chart it
 * was fitted to: see CHART_RANGE, which `evaporation` checks and this does not.
 * @throws {DomainError} for a temperature below 0 °F or above 100 °C, a humidity outside 0…1, a
 * negative wind.
 * @source uno-1998 US form, from memory
 */
export function evaporationUno(of: Drying): number {
  check(of);
  const tc = fahrenheit(of.concreteTemperature);
  const ta = fahrenheit(of.airTemperature);
  const v = of.windSpeed / MILE_PER_HOUR;
  const us = (tc ** 2.5 - of.relativeHumidity * ta ** 2.5) * (1 + 0.4 * v) * 1e-6;
  return us * POUND_PER_SQUARE_FOOT_HOUR;
}

/**
 * Uno's relation in its printed SI form, kg/(m²·s): 5·[(Tc + 18)^2.5 − r·(Ta + 18)^2.5]·(V +
 * 4)·1e-6 kg/(m²·h), °C and km/h. Its rounded constants make it 3–5 % lower than his US form, less
 * so if the air is warmer than the face, and higher if the loss is close to zero. Kept for
 * comparison. Range as evaporationUno.
 * @throws {DomainError} as evaporationUno.
 * @source uno-1998 SI form, from memory
 */
export function evaporationUnoPrintedSi(of: Drying): number {
  check(of);
  const tc = celsius(of.concreteTemperature) + 18;
  const ta = celsius(of.airTemperature) + 18;
  const v = of.windSpeed * 3.6;
  return (5 * (tc ** 2.5 - of.relativeHumidity * ta ** 2.5) * (v + 4) * 1e-6) / HOUR;
}

/**
 * Water leaving fresh concrete by Menzel, kg/(m²·s): 0.315·(ec − r·ea)·(0.253 + 0.060·V) kg/(m²·h),
 * vapour pressures in kPa, wind in km/h. Negative when vapour condenses. No range is published, and
 * none is checked here; `evaporation` notes when the same air is outside the chart (CHART_RANGE).
 * @throws {DomainError} as evaporationUno.
 * @source menzel-1954 from memory
 */
export function evaporationMenzel(of: Drying): number {
  check(of);
  const concrete = saturationPressureUno({ temperature: of.concreteTemperature }) / 1000;
  const air = saturationPressureUno({ temperature: of.airTemperature }) / 1000;
  const v = of.windSpeed * 3.6;
  return (0.315 * (concrete - of.relativeHumidity * air) * (0.253 + 0.06 * v)) / HOUR;
}

export interface Evaporation {
  /** Best estimate, kg/(m²·s); never below 0. */
  readonly rate: number;
  /** The estimate less and plus 40 %, kg/(m²·s). */
  readonly low: number;
  readonly high: number;
  /** By Menzel, kg/(m²·s); never below 0. */
  readonly menzel: number;
  /**
   * By the limits of 0.5 and 1.0 kg/(m²·h), or their share for mixes that bleed little, from the
   * unrounded rate.
   */
  readonly state: 'calm' | 'caution' | 'act';
  readonly notes: readonly Note[];
}

/**
 * How fast this weather dries fresh concrete, kg/(m²·s), with its band and the verdict of the
 * limits. Weather as Drying. `limitShare` is the share of the limits to apply: 1 if absent,
 * LITTLE_BLEED_SHARE for foamed mixes. Uses evaporationUno, and gives evaporationMenzel beside it;
 * condensation gives 0, and by Uno a 'condensation' note. Outside the range of the chart
 * (CHART_RANGE) notes say so.
 * @throws {DomainError} as evaporationUno.
 * @source uno-1998 from memory
 * @source menzel-1954 from memory
 * @source hover-2020 for the ±40 %
 * @source fhwa-curing-2006 chapter 5 for the limits
 */
export function evaporation(of: Drying & { readonly limitShare?: number }): Evaporation {
  const signed = evaporationUno(of);
  const rate = Math.max(signed, 0);
  return {
    rate,
    low: rate * (1 - EVAPORATION_ACCURACY),
    high: rate * (1 + EVAPORATION_ACCURACY),
    menzel: Math.max(evaporationMenzel(of), 0),
    state: evaporationState(rate, of.limitShare),
    notes: [
      ...(signed < 0 ? [{ code: 'condensation', of: 'rate' }] : []),
      ...outsideRange('concreteTemperature', of.concreteTemperature, CHART_RANGE.temperature),
      ...outsideRange('airTemperature', of.airTemperature, CHART_RANGE.temperature),
      ...outsideRange('windSpeed', of.windSpeed, CHART_RANGE.windSpeed),
    ],
  };
}

/**
 * The verdict of the limits of 0.5 and 1.0 kg/(m²·h) on a loss. `rate` kg/(m²·s); `limitShare`: the
 * share of both that applies, 1 for all. No range: a comparison.
 * @source fhwa-curing-2006 chapter 5
 */
export function evaporationState(rate: number, limitShare = 1): Evaporation['state'] {
  if (rate >= ACTION_RATE * limitShare) return 'act';
  return rate >= CAUTION_RATE * limitShare ? 'caution' : 'calm';
}

/**
 * Water one slab loses, kg: rate × area × duration. `rate` kg/(m²·s), `area` of the open face m²,
 * `duration` s. Holds while bleed water covers the face; later the loss is slower. No range is
 * published.
 * @throws {DomainError} for a negative rate or duration, or an area not above zero.
 * @source common-practice
 */
export function waterLost(of: {
  readonly rate: number;
  readonly area: number;
  readonly duration: number;
}): number {
  demandNotNegative('rate', of.rate, 'massFlux');
  demandPositive('area', of.area, 'area');
  demandNotNegative('duration', of.duration, 'time');
  return of.rate * of.area * of.duration;
}

/** From 0 °F, where Uno's powers end, to the boiling point. */
const DRYING_RANGE = { min: ICE_POINT - 160 / 9, max: ICE_POINT + 100 } as const;

function check(of: Drying): void {
  demand('concreteTemperature', of.concreteTemperature, 'temperature', DRYING_RANGE);
  demand('airTemperature', of.airTemperature, 'temperature', DRYING_RANGE);
  demand('relativeHumidity', of.relativeHumidity, 'ratio', { min: 0, max: 1 });
  demandNotNegative('windSpeed', of.windSpeed, 'speed');
}
