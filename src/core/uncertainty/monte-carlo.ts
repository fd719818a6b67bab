import { demand } from '../domain-error.ts';
import type { Distribution } from './distributions.ts';
import { normalFrom, randomFrom } from './random.ts';

/** Reads the inputs of one trial and writes its results, both by index. */
type TrialModel = (x: Float64Array, y: Float64Array) => void;

export interface Simulation {
  /** For each result, its values over the possible trials, in the order of the trials. */
  readonly values: readonly (readonly number[])[];
  /** The number of trials left out because a result was not a number: impossible readings. */
  readonly impossible: number;
}

interface Common {
  readonly model: TrialModel;
  /** The number of results the model writes. */
  readonly results: number;
  readonly trials: number;
  readonly seed: number;
}

/**
 * Minimum and maximum number of trials: with fewer an interval means little, with more a page
 * stalls.
 */
const TRIALS = { min: 100, max: 5_000_000 } as const;

/**
 * The distributions of the results when every reading has a random error: propagation of
 * distributions by Monte Carlo, for independent inputs of any distribution.
 *
 * The same seed gives the same draws, so a result changes only because a reading did. No range is
 * published; the number of trials is limited by `TRIALS`.
 *
 * @param inputs one distribution for each reading
 * @throws {DomainError} for a number of trials outside `TRIALS`
 * @source jcgm-101 clause 7
 */
export function simulate({
  inputs,
  ...how
}: Common & { readonly inputs: readonly Distribution[] }): Simulation {
  const even = randomFrom(how.seed);
  const normal = normalFrom(even);
  return run(how, inputs.length, (x) => {
    for (let i = 0; i < inputs.length; i++) x[i] = inputs[i]!(even, normal);
  });
}

/**
 * The same for normal readings that may be correlated: x = mean + L z, with L from the Cholesky
 * factor of the covariances rᵢⱼ uᵢ uⱼ and z independent standard normals. Range as `simulate`.
 *
 * @param mean and u of each reading, same unit; `factor` from `correlationFactor`, absent when the
 *   readings are independent
 * @throws {DomainError} for a negative uncertainty or a number of trials outside `TRIALS`
 * @throws {RangeError} when the lists differ in length
 * @source jcgm-101 6.4.8, clause 7
 */
export function simulateNormal({
  mean,
  u,
  factor,
  ...how
}: Common & {
  readonly mean: readonly number[];
  readonly u: readonly number[];
  readonly factor?: readonly (readonly number[])[] | undefined;
}): Simulation {
  const size = mean.length;
  if (u.length !== size) throw new RangeError(`${size} readings, ${u.length} uncertainties`);
  for (const ui of u) demand('uncertainty', ui, 'count', { min: 0 });
  demand('trials', how.trials, 'count', TRIALS);
  const draws = standardNormals(how.seed, size * how.trials);
  // Most readings are uncorrelated, so only the non-zero terms are summed in each trial.
  const terms = mean.flatMap((_, i) =>
    (factor?.[i] ?? []).flatMap((share, j) =>
      j < i && share !== 0 && u[i]! > 0 ? [{ i, j, by: share * u[i]! }] : [],
    ),
  );
  // Readings without uncertainty are the same in every trial.
  const moved = Int32Array.from(u.flatMap((ui, i) => (ui > 0 ? [i] : [])));
  const own = Float64Array.from(u, (ui, i) => ui * (factor?.[i]?.[i] ?? 1));
  const middle = Float64Array.from(mean);
  let from = 0;
  return run(how, size, (x) => {
    if (from === 0) x.set(middle);
    for (let k = 0; k < moved.length; k++) {
      const i = moved[k]!;
      x[i] = middle[i]! + own[i]! * draws[from + i]!;
    }
    for (let k = 0; k < terms.length; k++) {
      const term = terms[k]!;
      x[term.i]! += term.by * draws[from + term.j]!;
    }
    from += size;
  });
}

/** Cache of the last draws: a reader who changes one reading needs the same ones again. */
let kept: { readonly seed: number; readonly draws: Float64Array } | undefined;

function standardNormals(seed: number, count: number): Float64Array {
  if (kept?.seed === seed && kept.draws.length >= count) return kept.draws;
  const normal = normalFrom(randomFrom(seed));
  const draws = new Float64Array(count);
  for (let i = 0; i < count; i++) draws[i] = normal();
  kept = { seed, draws };
  return draws;
}

function run({ model, results, trials }: Common, size: number, draw: (x: Float64Array) => void) {
  demand('trials', trials, 'count', TRIALS);
  const x = new Float64Array(size);
  const y = new Float64Array(results);
  // Plain arrays: a typed array would be allocated at each key press, which costs more than the
  // sums. They are filled with NaN so that the engine stores doubles from the start.
  const found = Array.from({ length: results }, () => Array<number>(trials).fill(Number.NaN));
  let kept = 0;
  for (let trial = 0; trial < trials; trial++) {
    draw(x);
    model(x, y);
    let sound = true;
    for (let k = 0; k < results; k++) {
      found[k]![kept] = y[k]!;
      if (!Number.isFinite(y[k]!)) sound = false;
    }
    if (sound) kept++;
  }
  for (const all of found) all.length = kept;
  return { values: found, impossible: trials - kept };
}
