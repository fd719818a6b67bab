/** The inner product of two arrays of equal length. @source none: linear algebra */
export function dot(a: readonly number[], b: readonly number[]): number {
  let s = 0;
  for (let i = 0; i < a.length; i++) s += a[i]! * b[i]!;
  return s;
}

/** Work arrays of `solveSymmetric`, allocated once for many solves of the same size. */
export interface Room {
  readonly scale: number[];
  readonly factor: number[];
  readonly x: number[];
}

/**
 * An array for n numbers. A plain one: a water is solved a hundred times at a key press, and typed
 * arrays take longer to allocate than to fill. It begins with NaN so that the engine stores doubles
 * from the start.
 *
 * @source none: bookkeeping
 */
export const room = (n: number): number[] => Array<number>(n).fill(Number.NaN);

/** Work arrays for n unknowns. @source none: bookkeeping */
export const roomFor = (n: number): Room => ({
  scale: room(n),
  factor: room(n * n),
  x: room(n),
});

/**
 * Solves h x = g for a symmetric positive definite h, stored by rows: scaled by its diagonal and
 * factored by Cholesky's method. The x returned is a work array, overwritten by the next solve.
 *
 * @source none: linear algebra
 */
export function solveSymmetric(
  h: readonly number[],
  g: readonly number[],
  { scale, factor: l, x }: Room,
): readonly number[] {
  const n = g.length;
  for (let i = 0; i < n; i++) {
    scale[i] = 1 / Math.sqrt(h[i * n + i]!);
    x[i] = g[i]! * scale[i]!;
  }
  for (let j = 0; j < n; j++) {
    for (let i = j; i < n; i++) {
      let value = h[i * n + j]! * scale[i]! * scale[j]!;
      for (let k = 0; k < j; k++) value -= l[i * n + k]! * l[j * n + k]!;
      // Rounding error may leave a pivot slightly below zero.
      l[i * n + j] = i === j ? Math.sqrt(Math.max(value, 1e-14)) : value / l[j * n + j]!;
    }
  }
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) x[i]! -= l[i * n + k]! * x[k]!;
    x[i]! /= l[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i]! -= l[k * n + i]! * x[k]!;
    x[i]! /= l[i * n + i]!;
  }
  for (let i = 0; i < n; i++) x[i]! *= scale[i]!;
  return x;
}
