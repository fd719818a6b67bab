import { demand, demandWhole } from '../domain-error.ts';
import { studentT } from '../uncertainty/student-t.ts';
import { pullIn } from './robust.ts';

/** What is assumed of a maker's batches before any has been seen. */
export interface Prior {
  /** The value assumed, SI. */
  readonly mean: number;
  /** Standard deviation between batches, SI; a ratio when `log`. */
  readonly spread: number;
  /** The number of batches the assumed value counts as. */
  readonly weight: number;
  /** The number of batches the assumed spread counts as, a whole number. */
  readonly freedom: number;
  /** The quantity varies by factors, not by amounts: `spread` is then that of its logarithm. */
  readonly log?: boolean;
}

export interface Learned {
  readonly count: number;
  /** The expected value, SI. */
  readonly estimate: number;
  /** Standard uncertainty of the next batch, SI; when `log`, half the width of its factors. */
  readonly plusMinus: number;
  /** 95 % interval of the maker's own long-run value. */
  readonly own: { readonly low: number; readonly high: number };
  /** 95 % interval of the next batch. */
  readonly next: { readonly low: number; readonly high: number };
  /** Indices of the outliers that were pulled in. */
  readonly moved: readonly number[];
  /**
   * The next batch as Student's t: centre, scale, degrees of freedom; of the logarithm when `log`.
   */
  readonly t: { readonly mean: number; readonly scale: number; readonly freedom: number };
}

/**
 * The smallest deviation, as a share of the assumed spread, that makes an outlier.
 * @source common-practice
 */
const LEAST_SPREAD = 0.25;

/**
 * What do some batches say about the next, starting from an assumption?
 *
 * Outliers are pulled in (`pullIn`). Then the assumed mean m₀ counts as κ₀ batches and the assumed
 * spread s₀ as ν₀: κ = κ₀ + n, ν = ν₀ + n, m = (κ₀ m₀ + Σx)/κ, ν s² = ν₀ s₀² + Σ(x − x̄)² + (κ₀
 * n/κ)(x̄ − m₀)². The maker's mean is Student's t about m with scale s/√κ, the next batch with
 * scale s √(1 + 1/κ), both with ν degrees of freedom. Few batches: mostly the assumed value, wide
 * intervals; many: the maker's own. With `log` all of it is in logarithms. The ± is d =
 * scale·√(ν/(ν − 2)); with `log` e^m·sinh d, half of the interval from e^(m − d) to e^(m + d). No
 * range is published.
 *
 * @param values one a batch, SI, independent and about normal (or lognormal); may be empty
 * @throws {DomainError} a value that is not finite (not positive when `log`), a weight or spread
 *   not positive, a freedom below 3 or not whole
 * @source gelman-bda 3.3 (normal data, conjugate prior, from memory)
 */
export function learn({
  values,
  prior,
}: {
  readonly values: readonly number[];
  readonly prior: Prior;
}): Learned {
  const { weight, freedom, spread, log = false } = prior;
  const positive = { min: 0, aboveMin: true };
  demand('weight', weight, 'count', positive);
  demand('spread', spread, 'count', positive);
  demandWhole('freedom', freedom, { min: 3 });
  for (const value of [prior.mean, ...values])
    demand('values', value, 'count', log ? positive : {});
  const into = log ? Math.log : (x: number) => x;
  const back = log ? Math.exp : (x: number) => x;

  const pulled = pullIn(values.map(into), LEAST_SPREAD * spread);
  const x = pulled.values;
  const n = x.length;
  const prior0 = into(prior.mean);
  const mean = n > 0 ? x.reduce((sum, xi) => sum + xi, 0) / n : prior0;
  const squares = x.reduce((sum, xi) => sum + (xi - mean) ** 2, 0);
  const kappa = weight + n;
  const nu = freedom + n;
  const centre = prior0 + (n / kappa) * (mean - prior0);
  const s = Math.sqrt(
    (freedom * spread ** 2 + squares + ((weight * n) / kappa) * (mean - prior0) ** 2) / nu,
  );
  const scale = s * Math.sqrt(1 + 1 / kappa);
  const reach = studentT({ freedom: nu, confidence: 0.95 });
  const interval = (half: number) => ({ low: back(centre - half), high: back(centre + half) });
  const deviation = scale * Math.sqrt(nu / (nu - 2));
  return {
    count: n,
    estimate: back(centre),
    plusMinus: log ? back(centre) * Math.sinh(deviation) : deviation,
    own: interval((reach * s) / Math.sqrt(kappa)),
    next: interval(reach * scale),
    moved: pulled.moved,
    t: { mean: centre, scale, freedom: nu },
  };
}
