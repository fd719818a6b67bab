import { demand } from '../domain-error.ts';
import { demandNotNegative, demandPositive } from './bounds.ts';
import { DAY } from './units.ts';

/** Strength classes of common cement. */
export type CementClass = '32.5N' | '32.5R' | '42.5N' | '42.5R' | '52.5N' | '52.5R';

/** Growth coefficient s by strength class of cement. @source fib-mc2010 Table 5.1-9 */
export const GROWTH_COEFFICIENT: Readonly<Record<CementClass, number>> = {
  '32.5N': 0.38,
  '32.5R': 0.25,
  '42.5N': 0.25,
  '42.5R': 0.2,
  '52.5N': 0.2,
  '52.5R': 0.2,
};

/** Mean strength above which s is 0.20 for every cement, Pa. @source fib-mc2010 equation 5.1-51 */
const HIGH_STRENGTH = 60e6;

/**
 * Growth coefficient s: by cement class, and 0.20 when the mean 28-day strength is above 60 MPa.
 * `meanStrength` Pa may be absent. Range: normal-weight concrete; not validated for foamed concrete.
 * @throws {DomainError} for a strength not above zero.
 * @source fib-mc2010 Table 5.1-9
 */
export function growthCoefficient(of: {
  readonly cement: CementClass;
  readonly meanStrength?: number;
}): number {
  if (of.meanStrength !== undefined) demandPositive('meanStrength', of.meanStrength, 'stress');
  return (of.meanStrength ?? 0) > HIGH_STRENGTH ? 0.2 : GROWTH_COEFFICIENT[of.cement];
}

/** Age the model code measures growth against, s: 28 days. @source en-1992-1-1 equation 3.2 */
export const REFERENCE_AGE = 28 * DAY;

/** Steepest growth coefficient taken for one: the code's own end at 0.38. Common practice, no source. @source common-practice */
export const MOST_GROWTH = 2;

/** Growth coefficients s, each of a curve that may be the true one. */
export type Coefficients = readonly [number, ...number[]];

export interface Growth {
  /** Temperature-adjusted age, s. */
  readonly age: number;
  /** Growth coefficient s. */
  readonly coefficient: number;
}

/**
 * Share of 28-day strength at an age: exp[s·(1 − √(28 d/t))]; 0 at age 0.
 * `age` s, temperature-adjusted; `coefficient` s. Range: normal-weight concrete kept at 20 °C as the
 * code tests it; not validated for foamed concrete.
 * @throws {DomainError} for a negative age, or a coefficient outside 0…2 (MOST_GROWTH).
 * @source en-1992-1-1 equations 3.1 and 3.2
 * @source fib-mc2010 equation 5.1-51
 */
export function strengthShare({ age, coefficient }: Growth): number {
  demandNotNegative('age', age, 'time');
  demand('coefficient', coefficient, 'ratio', { min: 0, max: MOST_GROWTH });
  // Younger than a nanosecond is age 0; the root would overflow.
  return age < 1e-9 ? 0 : Math.exp(coefficient * (1 - Math.sqrt(REFERENCE_AGE / age)));
}

/**
 * Share of 28-day modulus at an age: the root of the strength share. Arguments and range as
 * strengthShare.
 * @throws {DomainError} as strengthShare.
 * @source fib-mc2010 equation 5.1-57
 */
export function modulusShare(of: Growth): number {
  return Math.sqrt(strengthShare(of));
}

/**
 * Share of 28-day tensile strength at an age: the strength share itself before 28 days, its power
 * of 2/3 from then on. Arguments and range as strengthShare.
 * @throws {DomainError} as strengthShare.
 * @source en-1992-1-1 equation 3.4
 */
export function tensionShare(of: Growth): number {
  const share = strengthShare(of);
  return of.age < REFERENCE_AGE ? share : share ** (2 / 3);
}

/**
 * Age at which a share of the 28-day strength is reached, s: 28 d/(1 − ln(share)/s)²; undefined when
 * the curve never gets there (it levels out at e^s). `share` above 0. Range as strengthShare.
 * @throws {DomainError} for a share not above zero, or a coefficient not above zero or above 2
 * (MOST_GROWTH).
 * @source en-1992-1-1 equation 3.2, solved for the age
 */
export function ageForShare(of: {
  readonly share: number;
  readonly coefficient: number;
}): number | undefined {
  const { share, coefficient } = of;
  demandPositive('share', share, 'ratio');
  demand('coefficient', coefficient, 'ratio', { min: 0, aboveMin: true, max: MOST_GROWTH });
  const root = 1 - Math.log(share) / coefficient;
  return root > 0 ? REFERENCE_AGE / root ** 2 : undefined;
}

/**
 * Of growth curves that may each be the true one, the lowest at an age, as a share of 28-day strength.
 * `coefficients` s of each; arguments and range as strengthShare.
 * @throws {DomainError} as strengthShare.
 * @source none: the least of several
 */
export function leastShare(of: {
  readonly age: number;
  readonly coefficients: Coefficients;
}): number {
  return Math.min(
    ...of.coefficients.map((coefficient) => strengthShare({ age: of.age, coefficient })),
  );
}

/**
 * Age from which on the lowest of such curves has a share of 28-day strength, s; undefined when one of
 * them never gets there. Range as ageForShare.
 * @throws {DomainError} as ageForShare.
 * @source none: the greatest of several
 */
export function ageForLeastShare(of: {
  readonly share: number;
  readonly coefficients: Coefficients;
}): number | undefined {
  const ages = of.coefficients.map(
    (coefficient) => ageForShare({ share: of.share, coefficient }) ?? Infinity,
  );
  const last = Math.max(...ages);
  return last < Infinity ? last : undefined;
}

export interface Band {
  /** Pa */
  readonly low: number;
  /** Pa */
  readonly high: number;
}

/**
 * Strength at an age as a band, Pa: the 28-day band times the strength share.
 * `at28Days` Pa. A density-only band already spans more than a factor of two; growth is not
 * validated for foamed concrete. No range is published for it.
 * @throws {DomainError} for a band upside down or negative, or as strengthShare.
 * @source en-1992-1-1 equation 3.1
 */
export function strengthBand(of: Growth & { readonly at28Days: Band }): Band {
  const { low, high } = of.at28Days;
  demandNotNegative('low', low, 'stress');
  demand('high', high, 'stress', { min: low });
  const share = strengthShare(of);
  return { low: low * share, high: high * share };
}
