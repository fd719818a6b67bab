import { demand } from '../domain-error.ts';
import type { Kind } from '../quantity/kinds.ts';
import { studentT, USUAL_CONFIDENCE } from './student-t.ts';

export interface Repeated {
  readonly mean: number;
  /** Standard deviation of one reading; undefined for a single one, which shows no scatter. */
  readonly deviation: number | undefined;
  /** Standard uncertainty of the mean, deviation/√N. */
  readonly uncertainty: number | undefined;
  /** Half width of the confidence interval of the true mean. */
  readonly plusMinus: number | undefined;
}

/**
 * What do repeated readings of one thing show together?
 *
 * Mean; s² = Σ(x − mean)²/(N − 1); uncertainty s/√N; ± t s/√N with Student's t for N − 1. Only
 * scatter is seen: a scale that reads high reads high each time.
 *
 * @param values at least one, in SI
 * @param kind of the values, for a refusal to name
 * @param confidence share, default `USUAL_CONFIDENCE`
 * @returns in the unit of the values. No range is published: independent readings of normal
 *   scatter.
 * @throws {DomainError} no values, one that is not finite, confidence outside 0–1
 * @source jcgm-100 4.2, Type A evaluation; the t of Annex G
 */
export function repeated({
  values,
  kind,
  confidence = USUAL_CONFIDENCE,
}: {
  readonly values: readonly number[];
  readonly kind: Kind;
  readonly confidence?: number;
}): Repeated {
  const count = values.length;
  demand('values', count, 'count', { min: 1 });
  for (const value of values) demand('values', value, kind, {});
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  if (count === 1)
    return { mean, deviation: undefined, uncertainty: undefined, plusMinus: undefined };
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const deviation = Math.sqrt(squares / (count - 1));
  const uncertainty = deviation / Math.sqrt(count);
  const plusMinus = studentT({ freedom: count - 1, confidence }) * uncertainty;
  return { mean, deviation, uncertainty, plusMinus };
}
