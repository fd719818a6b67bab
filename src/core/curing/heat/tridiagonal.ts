/** A tridiagonal matrix of the implicit half step, eliminated once and used many times. */
export interface Tridiagonal {
  /** Beside the diagonal, from each row to the next. */
  readonly off: Float64Array;
  /** One over each pivot. */
  readonly pivots: Float64Array;
  /** Upper entry over its pivot. */
  readonly upper: Float64Array;
}

/**
 * Eliminates the matrix of the cells: store + half·(links) on the diagonal, −half·between beside it.
 * `store` J/(m²·K) of each, `half` s, `between` each and the next, `near` and `far` W/(m²·K). Thomas's algorithm;
 * the matrix is diagonally dominant, so it needs no pivoting. No range: linear algebra.
 * @source thomas-1949 from memory
 */
export function factor({
  store,
  half,
  between,
  near,
  far,
}: {
  readonly store: Float64Array;
  readonly half: number;
  readonly between: Float64Array;
  readonly near: number;
  readonly far: number;
}): Tridiagonal {
  const n = store.length;
  const off = between.map((link) => -half * link);
  const pivots = new Float64Array(n);
  const upper = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const left = i === 0 ? near : between[i - 1]!;
    const right = i === n - 1 ? far : between[i]!;
    const diagonal = store[i]! + half * (left + right);
    pivots[i] = 1 / (diagonal - (i === 0 ? 0 : off[i - 1]! * upper[i - 1]!));
    upper[i] = i === n - 1 ? 0 : off[i]! * pivots[i]!;
  }
  return { off, pivots, upper };
}

/**
 * Solves for `into`, given the right side `rhs` (overwritten). Lengths and units as the matrix. No range: linear
 * algebra.
 * @source thomas-1949 from memory
 */
export function solve(matrix: Tridiagonal, rhs: Float64Array, into: Float64Array): void {
  const { off, pivots, upper } = matrix;
  const n = rhs.length;
  let carried = 0;
  for (let i = 0; i < n; i++) {
    carried = (rhs[i]! - (i === 0 ? 0 : off[i - 1]! * carried)) * pivots[i]!;
    rhs[i] = carried;
  }
  let value = 0;
  for (let i = n - 1; i >= 0; i--) {
    value = rhs[i]! - upper[i]! * value;
    into[i] = value;
  }
}
