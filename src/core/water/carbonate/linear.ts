/** The inner product of two lists of the same length. */
export function dot(a: readonly number[], b: readonly number[]): number {
  let s = 0;
  for (let i = 0; i < a.length; i++) s += a[i]! * b[i]!;
  return s;
}

/**
 * Solves h x = g for a symmetric positive definite h (row after row), scaled by its diagonal and
 * factored after Cholesky.
 */
export function solveSymmetric(h: Float64Array, g: Float64Array): Float64Array {
  const n = g.length;
  const scale = new Float64Array(n);
  const l = new Float64Array(n * n);
  const x = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    scale[i] = 1 / Math.sqrt(h[i * n + i]!);
    x[i] = g[i]! * scale[i]!;
  }
  for (let j = 0; j < n; j++) {
    for (let i = j; i < n; i++) {
      let value = h[i * n + j]! * scale[i]! * scale[j]!;
      for (let k = 0; k < j; k++) value -= l[i * n + k]! * l[j * n + k]!;
      // Rounding may leave a pivot a hair below zero.
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
