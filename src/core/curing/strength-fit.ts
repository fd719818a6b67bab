import { demand } from '../domain-error.ts';
import type { Note } from '../note.ts';
import { HOUR } from '../quantity/constants.ts';
import { studentT } from '../uncertainty/student-t.ts';
import { demandPositive } from './bounds.ts';
import { type Band, MOST_GROWTH, REFERENCE_AGE } from './strength-growth.ts';

/**
 * Youngest result taken, s: before it nothing has set. Common practice, no source.
 * @source common-practice
 */
const YOUNGEST = HOUR;

/**
 * If no degree of freedom is left to show scatter: a guess that the next result lies between half
 * and twice the value. Common practice, no source.
 * @source common-practice
 */
const GUESSED = Math.log(2);

/**
 * However well a few results agree, the next may lie this far off, as a relative standard
 * deviation: a guess. Common practice, no source.
 * @source common-practice
 */
export const LEAST_SPREAD = 0.03;

/** Agreement closer than this, as a natural logarithm, is rounding error. */
const ROUNDING = 1e-9;

/** Widest band, as a natural logarithm: beyond it nothing is known anyway. A choice. */
const WIDEST = 10;

export interface StrengthResult {
  /** Temperature-adjusted age of the cube or core, s. */
  readonly age: number;
  /** Its strength, Pa. */
  readonly strength: number;
}

export interface StrengthFit {
  /** Pa */
  readonly strength28: number;
  /** Growth coefficient s, fitted or that of the cement. */
  readonly coefficient: number;
  /**
   * Spread of the results about the curve, as a relative standard deviation; undefined for an exact
   * fit through as many results as unknowns.
   */
  readonly spread: number | undefined;
  /** How many there are. */
  readonly count: number;
  /** Mean of their 1 − √(28 d/t), and of the logarithm of their strength in Pa. */
  readonly middle: readonly [x: number, y: number];
  /**
   * Sum of squares of their distance from that mean in age; undefined if the growth is the
   * cement’s.
   */
  readonly reach: number | undefined;
  /**
   * By how much one more result may miss a known curve, as a natural logarithm: Student’s t times
   * the spread, or the least; ln 2/√2 if none is free to show one.
   */
  readonly miss: number;
  readonly notes: readonly Note[];
}

/**
 * A growth curve through the reader's own results, in place of the density band.
 *
 * `results` with age s and strength Pa; `coefficient` s of the cement. Least squares on ln f = ln
 * f28 + s·(1 − √(28 d/t)).
 *
 * The cement's coefficient is used in three cases. First, if the ± of the fitted slope
 * (t·spread/√Σ(x − mean x)²) exceeds MOST_GROWTH, more than any cement grows: results so close in
 * age that even the least spread gives that (note 'one-age'), or else too scattered ('scattered').
 * Second, if the results do not grow with age ('no-growth'). Third, if they are steeper than any
 * cement ('too-steep').
 *
 * The fewer the results and the further from them, the wider strengthAbout is; it uses a spread of
 * at least 3 %. No range is published.
 * @throws {DomainError} for no results, an age below an hour, a strength not above zero, or a
 * coefficient outside 0…2.
 * @source en-1992-1-1 equation 3.2 for the shape
 */
export function fitStrength(of: {
  readonly results: readonly StrengthResult[];
  readonly coefficient: number;
}): StrengthFit {
  const { results, coefficient } = of;
  demand('results', results.length, 'count', { min: 1 });
  for (const { age, strength } of results) {
    demand('age', age, 'time', { min: YOUNGEST });
    demandPositive('strength', strength, 'stress');
  }
  demand('coefficient', coefficient, 'ratio', { min: 0, max: MOST_GROWTH });
  const x = results.map(({ age }) => 1 - Math.sqrt(REFERENCE_AGE / age));
  const y = results.map(({ strength }) => Math.log(strength));
  const [xm, ym] = [mean(x), mean(y)];
  const sxx = sum(x.map((xi) => (xi - xm) ** 2));
  const slope = sum(x.map((xi, i) => (xi - xm) * y[i]!)) / sxx;
  const scatter = (s: number, unknowns: number) =>
    scatterOf(
      x.map((xi, i) => y[i]! - ym - s * (xi - xm)),
      unknowns,
    );
  const own = scatter(slope, 2);
  const known = (miss: number) => miss / Math.sqrt(sxx) <= MOST_GROWTH;
  const tells = known(own.miss);
  const grows = tells && slope > 0;
  const found = grows && slope <= MOST_GROWTH;
  const s = found ? slope : coefficient;
  const { spread, miss } = found ? own : scatter(coefficient, 1);
  return {
    strength28: Math.exp(ym - s * xm),
    coefficient: s,
    spread,
    count: results.length,
    middle: [xm, ym],
    reach: found ? sxx : undefined,
    miss,
    notes: [
      ...(!tells ? [{ code: known(own.least) ? 'scattered' : 'one-age', of: 'results' }] : []),
      ...(grows && !found ? [{ code: 'too-steep', of: 'results' }] : []),
      ...(tells && !grows ? [{ code: 'no-growth', of: 'results' }] : []),
    ],
  };
}

/**
 * Where one more result should lie at an age, Pa: above the low end 19 times in 20, and below the
 * high end as often.
 *
 * The curve of `fit` at `age` s times e^±(t·spread·√(1 + 1/n + (x − mean x)²/Σ(x − mean x)²)), x =
 * 1 − √(28 d/t). It widens beyond the ages tested, but neither end falls with age: an older part is
 * no weaker than a younger one's low end, and a younger no stronger than an older one's high end.
 * Results of one age, or with no growth or too steep a growth, are extrapolated with each of the
 * cement's `coefficients` s. With no degree of freedom to show a spread, the width is a guess: at
 * one result, or at either of two, half of it to twice. No band is wider than e^±10, a choice. No
 * range is published: results of normal scatter about the shape.
 * @throws {DomainError} for an age not above zero.
 * @source student-t
 * @source en-1992-1-1 equation 3.2 for the shape
 */
export function strengthAbout(of: {
  readonly fit: StrengthFit;
  readonly coefficients: readonly number[];
  readonly age: number;
}): Band {
  const { fit, age } = of;
  const { count, middle, reach, miss } = fit;
  demandPositive('age', age, 'time');
  const off = 1 - Math.sqrt(REFERENCE_AGE / age) - middle[0];
  const turn = reach ? turning({ miss, count, reach, coefficient: fit.coefficient }) : Infinity;
  const end = (side: -1 | 1) => {
    const at = side * Math.max(side * off, -turn);
    const width = miss * Math.sqrt(1 + 1 / count + (reach ? at ** 2 / reach : 0));
    const grown = (reach ? [fit.coefficient] : of.coefficients).map((s) => side * s * at);
    return Math.exp(middle[1] + side * (Math.max(...grown) + Math.min(WIDEST, width)));
  };
  return { low: end(-1), high: end(1) };
}

/**
 * The distance from the mean x, on either side, at which the band widens as fast as the curve
 * grows: beyond it an end would fall.
 */
function turning(of: {
  readonly miss: number;
  readonly count: number;
  readonly reach: number;
  readonly coefficient: number;
}): number {
  const { miss, count, reach, coefficient } = of;
  const steeper = miss ** 2 - coefficient ** 2 * reach;
  return steeper > 0 ? coefficient * reach * Math.sqrt((1 + 1 / count) / steeper) : Infinity;
}

/**
 * The spread of results that miss their curve by these amounts, as a natural logarithm; how far one
 * more may miss; and whether they agree.
 */
function scatterOf(misses: readonly number[], unknowns: number) {
  const free = misses.length - unknowns;
  const guess = GUESSED / Math.SQRT2;
  if (free <= 0) return { spread: undefined, miss: guess, least: guess };
  const apart = Math.sqrt(sum(misses.map((m) => m * m)) / free);
  const spread = apart < ROUNDING ? 0 : apart;
  // One-sided 95 % is two-sided 90 %.
  const t = studentT({ freedom: free, confidence: 0.9 });
  return { spread, miss: t * Math.max(LEAST_SPREAD, spread), least: t * LEAST_SPREAD };
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}

function mean(values: readonly number[]): number {
  return sum(values) / values.length;
}
