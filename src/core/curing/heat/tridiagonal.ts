/** The tridiagonal matrix of an implicit half step, factored once and used many times. */
export interface Tridiagonal {
  /** The entries beside the diagonal, from each row to the next. */
  readonly off: Float64Array;
  /** The reciprocal of each pivot. */
  readonly pivots: Float64Array;
  /** Each upper entry divided by its pivot. */
  readonly upper: Float64Array;
}

/**
 * Factors the matrix of the cells: store + half·(both conductances) on the diagonal, −half·between
 * beside it. `store` of each cell, J/(m²·K); `half` step, s; conductances `between` each cell and
 * the next and at the `near` and `far` face, W/(m²·K). Thomas's algorithm; the matrix is diagonally
 * dominant, so it needs no pivoting. No range: linear algebra.
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
 * Solves for `into`, given the right-hand side `rhs`, which is overwritten. Lengths and units as
 * the matrix. No range: linear algebra.
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
