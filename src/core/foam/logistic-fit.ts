/** The curve as a logistic in x = ln t: v = 1/(1 + exp(−n (x − u))), u = ln τ. */
export interface LogisticFit {
  readonly u: number;
  readonly n: number;
  /** Sum of squared residuals. */
  readonly squares: number;
  /** (JᵀJ)⁻¹ for (u, n): times the variance of a reading it is the covariance of the constants. */
  readonly inverse: { readonly uu: number; readonly un: number; readonly nn: number };
}

/** The range of accepted exponents. A fit that ends outside it has failed. */
const EXPONENTS = { min: 0.02, max: 60 } as const;

/** Maximum number of steps of a search. */
const STEPS = 300;
/** The initial damping, and its factors after a step that helped and one that did not. */
const DAMPING = { first: 1e-3, less: 1 / 9, more: 11, most: 1e16 } as const;

/**
 * Which logistic fits the readings best? Least squares on v itself, all readings weighted equally,
 * by Levenberg–Marquardt; v = 1/(1 + exp(−n (x − u))).
 *
 * @param x logarithm of time over any unit of it
 * @param v share drained at each x
 * @returns the fit, or undefined when no single curve is a minimum: the search ran out of the
 *   exponents, 0.02 to 60, or did not come to rest. No range is published. Throws nothing of its
 *   own.
 * @source gavin-lm
 */
export function fitLogistic(x: readonly number[], v: readonly number[]): LogisticFit | undefined {
  let here = about(x, v, start(x, v));
  let damping: number = DAMPING.first;
  for (let step = 0; step < STEPS && damping < DAMPING.most; step++) {
    const there = about(x, v, damped(here, damping));
    // Next to a jump the slope vanishes too, yet each step still removes most of the residual.
    if (isStill(here) && !(there.squares < here.squares / 2)) return fitAt(here);
    const helped = there.squares < here.squares;
    damping *= helped ? DAMPING.less : DAMPING.more;
    if (helped) here = there;
  }
  return undefined;
}

/**
 * How do the constants of a fit change if all readings change by the same small share s? du/ds and
 * dn/ds.
 *
 * At the minimum Jᵀr = 0 for every s, so d(u, n)/ds = (JᵀJ − Σ rᵢ ∇²vᵢ)⁻¹ Jᵀv, without a second
 * fit. The first argument is the result of `fitLogistic`, the others are its arguments. Exact to
 * first order. No range is published. Throws nothing.
 * @source none: the implicit derivative of least squares, worked out here
 */
export function moveTogether(
  { u, n }: LogisticFit,
  x: readonly number[],
  v: readonly number[],
): { readonly u: number; readonly n: number } {
  let [uu, un, nn, toU, toN] = [0, 0, 0, 0, 0];
  for (const [i, at] of x.entries()) {
    const value = 1 / (1 + Math.exp(-n * (at - u)));
    const bell = value * (1 - value);
    const left = v[i]! - value;
    const bend = left * bell * (1 - 2 * value);
    const [du, dn] = [-n * bell, (at - u) * bell];
    uu += du ** 2 - n ** 2 * bend;
    un += du * dn + left * bell + n * (at - u) * bend;
    nn += dn ** 2 - (at - u) ** 2 * bend;
    toU += du * v[i]!;
    toN += dn * v[i]!;
  }
  const determinant = uu * nn - un ** 2;
  return { u: (nn * toU - un * toN) / determinant, n: (uu * toN - un * toU) / determinant };
}

/** The fit of one curve to the readings: its constants, sum of squares, gradient Jᵀr and JᵀJ. */
interface About {
  readonly u: number;
  readonly n: number;
  readonly squares: number;
  readonly slope: { readonly u: number; readonly n: number };
  readonly uu: number;
  readonly un: number;
  readonly nn: number;
}

function about(
  x: readonly number[],
  v: readonly number[],
  [u, n]: readonly [number, number],
): About {
  const slope = { u: 0, n: 0 };
  let [squares, uu, un, nn] = [0, 0, 0, 0];
  for (const [i, at] of x.entries()) {
    const value = 1 / (1 + Math.exp(-n * (at - u)));
    const bell = value * (1 - value);
    const [du, dn] = [-n * bell, (at - u) * bell];
    const left = v[i]! - value;
    squares += left ** 2;
    slope.u += du * left;
    slope.n += dn * left;
    uu += du * du;
    un += du * dn;
    nn += dn * dn;
  }
  return { u, n, squares, slope, uu, un, nn };
}

/** One step from here: (JᵀJ + λ diag JᵀJ) step = Jᵀr. */
function damped({ u, n, slope, uu, un, nn }: About, damping: number): [number, number] {
  const [a, d] = [uu * (1 + damping), nn * (1 + damping)];
  const determinant = a * d - un ** 2;
  return [
    u + (d * slope.u - un * slope.n) / determinant,
    n + (a * slope.n - un * slope.u) / determinant,
  ];
}

/**
 * At a minimum the residuals are orthogonal to every column of J; those of exact readings vanish.
 */
function isStill({ squares, slope, uu, nn }: About): boolean {
  const small = (along: number, size: number) =>
    Math.abs(along) <= Math.sqrt(size) * (1e-5 * Math.sqrt(squares) + 1e-7);
  return small(slope.u, uu) && small(slope.n, nn);
}

/** The fit, if the minimum has an accepted exponent and determines both constants. */
function fitAt({ u, n, squares, uu, un, nn }: About): LogisticFit | undefined {
  if (n < EXPONENTS.min || n > EXPONENTS.max) return undefined;
  const determinant = uu * nn - un ** 2;
  if (!(determinant > 1e-12 * uu * nn)) return undefined;
  const inverse = { uu: nn / determinant, un: -un / determinant, nn: uu / determinant };
  return { u, n, squares, inverse };
}

/** A straight line through the log-odds of the readings, away from 0 and 1, where these diverge. */
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
