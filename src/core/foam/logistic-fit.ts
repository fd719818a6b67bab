import { levenbergMarquardt } from 'ml-levenberg-marquardt';

/** The curve as a logistic in x = ln t: v = 1/(1 + exp(−n (x − u))), u = ln τ. */
export interface LogisticFit {
  readonly u: number;
  readonly n: number;
  /** Sum of squared residuals. */
  readonly squares: number;
  /** (JᵀJ)⁻¹ for (u, n): times the variance of a reading it is the covariance of the constants. */
  readonly inverse: { readonly uu: number; readonly un: number; readonly nn: number };
}

/** The exponents the fit may try. A fit that ends at either end has not found one. */
const EXPONENTS = { min: 0.02, max: 60 } as const;

/** The library has no test for rest, so it runs in short rounds and we look after each. */
const ROUND = 12;
const ROUNDS = 25;

/**
 * Which logistic comes nearest to the readings? Least squares on v itself, every reading as sure as
 * any other; v = 1/(1 + exp(−n (x − u))).
 *
 * @param x logarithm of time over any unit of it
 * @param v share drained at each x
 * @returns the fit, or undefined when no single curve is a minimum: the search ran to the end of
 *   the exponents, or did not come to rest. No range is published. Throws nothing of its own.
 * @source gavin-lm
 */
export function fitLogistic(x: readonly number[], v: readonly number[]): LogisticFit | undefined {
  let constants: readonly [number, number] = start(x, v);
  for (let round = 0; round < ROUNDS; round++) {
    const { parameterValues } = levenbergMarquardt({ x, y: v }, model, {
      initialValues: constants,
      minValues: [-100, EXPONENTS.min],
      maxValues: [100, EXPONENTS.max],
      jacobianFunction: gradient,
      damping: 1e-3,
      errorTolerance: 1e-16,
      maxIterations: ROUND,
    });
    constants = [parameterValues[0]!, parameterValues[1]!];
    const fit = atRest(x, v, constants);
    if (fit) return fit;
  }
  return undefined;
}

const model =
  ([u = 0, n = 0]: readonly number[]) =>
  (x: number) =>
    1 / (1 + Math.exp(-n * (x - u)));

function gradient(constants: readonly number[]): (x: number) => number[] {
  const [u = 0, n = 0] = constants;
  return (x) => {
    const value = model(constants)(x);
    const bell = value * (1 - value);
    return [-n * bell, (x - u) * bell];
  };
}

/** The fit, if the search has come to rest at a minimum inside the exponents. */
function atRest(
  x: readonly number[],
  v: readonly number[],
  constants: readonly [number, number],
): LogisticFit | undefined {
  const [u, n] = constants;
  let [squares, uu, un, nn, slopeU, slopeN] = [0, 0, 0, 0, 0, 0];
  for (const [i, at] of x.entries()) {
    const [du = 0, dn = 0] = gradient(constants)(at);
    const left = v[i]! - model(constants)(at);
    squares += left ** 2;
    slopeU += du * left;
    slopeN += dn * left;
    uu += du * du;
    un += du * dn;
    nn += dn * dn;
  }
  // At a minimum the residuals lie across every column of J; those of exact readings lie nowhere.
  const still = (slope: number, size: number) =>
    Math.abs(slope) <= Math.sqrt(size) * (1e-5 * Math.sqrt(squares) + 1e-7);
  if (!still(slopeU, uu) || !still(slopeN, nn)) return undefined;
  if (n < EXPONENTS.min * 1.01 || n > EXPONENTS.max * 0.99) return undefined;
  const determinant = uu * nn - un ** 2;
  if (!(determinant > 1e-12 * uu * nn)) return undefined;
  const inverse = { uu: nn / determinant, un: -un / determinant, nn: uu / determinant };
  return { u, n, squares, inverse };
}

/** A straight line through the log-odds of the readings, away from 0 and 1 where these run off. */
function start(x: readonly number[], v: readonly number[]): [number, number] {
  const odds = v.map((share) => {
    const inside = Math.min(0.98, Math.max(0.02, share));
    return Math.log(inside / (1 - inside));
  });
  const meanX = mean(x);
  const meanOdds = mean(odds);
  let [over, under] = [0, 0];
  for (const [i, at] of x.entries()) {
    over += (at - meanX) * (odds[i]! - meanOdds);
    under += (at - meanX) ** 2;
  }
  const n = Math.min(10, Math.max(0.2, over / under));
  return [meanX - meanOdds / n, n];
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
