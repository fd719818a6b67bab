import { demand } from '../domain-error.ts';
import type { Note } from '../note.ts';
import { demandPositive } from './bounds.ts';
import { MOST_GROWTH, REFERENCE_AGE, strengthShare } from './strength-growth.ts';
import { HOUR } from './units.ts';

/** Youngest result taken, s: before it nothing has set. Common practice, no source. @source common-practice */
const YOUNGEST = HOUR;

export interface StrengthResult {
  /** Temperature-adjusted age of the cube or core, s. */
  readonly age: number;
  /** Its strength, Pa. */
  readonly strength: number;
}

export interface StrengthFit {
  /** Pa */
  readonly strength28: number;
  /** Growth coefficient s, found or kept from the cement. */
  readonly coefficient: number;
  /** Spread of the results about the curve, as a relative standard deviation; undefined for an exact fit through as many results as unknowns. */
  readonly spread: number | undefined;
  readonly notes: readonly Note[];
}

/**
 * A growth curve through the reader's own results, in place of the density band.
 *
 * `results` with age s and strength Pa; `coefficient` s of the cement, kept when the results share one
 * age. Least squares on ln f = ln f28 + s·(1 − √(28 d/t)). Results that do not grow with age keep the
 * cement's coefficient and carry the note 'no-growth', and those steeper than any cement 'too-steep'. Good between the ages tested; beyond them it
 * carries the model's own doubt. No range is published.
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
  const slope = sxx > 1e-6 ? sum(x.map((xi, i) => (xi - xm) * y[i]!)) / sxx : undefined;
  const grows = slope !== undefined && slope > 0;
  const found = grows && slope <= MOST_GROWTH;
  const s = found ? slope : coefficient;
  const strength28 = Math.exp(ym - s * xm);
  const unknowns = found ? 2 : 1;
  const free = results.length - unknowns;
  const misses = results.map(({ age, strength }) =>
    Math.log(strength / (strength28 * strengthShare({ age, coefficient: s }))),
  );
  return {
    strength28,
    coefficient: s,
    spread: free > 0 ? Math.sqrt(sum(misses.map((m) => m * m)) / free) : undefined,
    notes: [
      ...(slope === undefined ? [{ code: 'one-age', of: 'results' }] : []),
      ...(grows && !found ? [{ code: 'too-steep', of: 'results' }] : []),
      ...(slope !== undefined && !grows ? [{ code: 'no-growth', of: 'results' }] : []),
    ],
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}

function mean(values: readonly number[]): number {
  return sum(values) / values.length;
}
