import { demand } from '../domain-error.ts';
import { DAY } from '../quantity/constants.ts';
import { demandNotNegative, demandPositive } from './bounds.ts';

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
 * `meanStrength` Pa may be absent. Range: normal-weight concrete; not validated for foamed
 * concrete.
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

/**
 * The steepest growth coefficient accepted; the code's own range ends at 0.38. Common practice, no
 * source.
 * @source common-practice
 */
export const MOST_GROWTH = 2;

/** Growth coefficients s, any of which may be the true one. */
export type Coefficients = readonly [number, ...number[]];

export interface Growth {
  /** Temperature-adjusted age, s. */
  readonly age: number;
  /** Growth coefficient s. */
  readonly coefficient: number;
}

/**
 * Share of 28-day strength at an age: exp[s·(1 − √(28 d/t))]; 0 at age 0. Relative to the strength
 * at another age t₀: exp[s·(√(28 d/t₀) − √(28 d/t))]. `age` s, temperature-adjusted; `coefficient`
 * s; `from` t₀ in s, 28 days if absent. Range: normal-weight concrete kept at 20 °C as the code
 * tests it; not validated for foamed concrete.
 * @throws {DomainError} for a negative age, a coefficient outside 0…2 (MOST_GROWTH), or a `from`
 *   not above 0.
 * @source en-1992-1-1 equations 3.1 and 3.2
 * @source fib-mc2010 equation 5.1-51
 */
export function strengthShare(of: Growth & { readonly from?: number | undefined }): number {
  const { age, coefficient, from = REFERENCE_AGE } = of;
  demandNotNegative('age', age, 'time');
  demandPositive('from', from, 'time');
  demand('coefficient', coefficient, 'ratio', { min: 0, max: MOST_GROWTH });
  const root = (time: number) => Math.sqrt(REFERENCE_AGE / time);
  // Younger than a nanosecond is age 0; the root would overflow.
  return age < 1e-9 ? 0 : Math.exp(coefficient * (root(from) - root(age)));
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
 * Age at which a share of the 28-day strength is reached, s: 28 d/(1 − ln(share)/s)²; undefined
 * when the curve never gets there (it levels out at e^s). `share` above 0. Range as strengthShare.
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

/** The ages a strength grows between, s. */
export interface Growing {
  readonly age: number;
  /** The age at which it is known; 28 days if absent. */
  readonly from?: number;
}

const shares = (of: Growing & { readonly coefficients: Coefficients }) =>
  of.coefficients.map((coefficient) => strengthShare({ age: of.age, from: of.from, coefficient }));

/**
 * The lowest, at an age, of growth curves that may each be the true one, as a share of the strength
 * at 28 days or at `from`. `coefficients` s of each; arguments and range as strengthShare. Before
 * `from` it is that of the largest coefficient, after it that of the smallest; those between are
 * never the lowest.
 * @throws {DomainError} as strengthShare.
 * @source none: the least of several
 */
export function leastShare(of: Growing & { readonly coefficients: Coefficients }): number {
  return Math.min(...shares(of));
}

/**
 * The age from which the lowest of such curves has a share of 28-day strength, s; undefined if one
 * of them never gets there. Range as ageForShare.
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
 * A strength band at another age, Pa: its low end times the lowest of the curves at the ages of
 * `least`, and its high end times the highest at those of `most`. `known` Pa; the ages s and
 * `coefficients` s as leastShare. A band from density alone already spans more than a factor of
 * two; growth is not validated for foamed concrete. No range is published for it.
 * @throws {DomainError} for a band upside down or negative, or as strengthShare.
 * @source en-1992-1-1 equation 3.1
 */
export function grownBand(of: {
  readonly known: Band;
  readonly least: Growing;
  readonly most: Growing;
  readonly coefficients: Coefficients;
}): Band {
  const { known, least, most, coefficients } = of;
  demandNotNegative('low', known.low, 'stress');
  demand('high', known.high, 'stress', { min: known.low });
  return {
    low: known.low * leastShare({ ...least, coefficients }),
    high: known.high * Math.max(...shares({ ...most, coefficients })),
  };
}
