import { DomainError, demand } from '../domain-error.ts';

/**
 * A remaining variance below this share of 1 is zero: two fully correlated readings. Dividing by
 * its root would turn rounding error into a contradiction.
 */
const NOTHING = 1e-10;
/** Tolerance on a coefficient in that case. */
const NEAR = 1e-4;

/**
 * The triangular factor L of a correlation matrix, L Lᵀ = R, which turns independent normals into
 * correlated ones. No range: algebra.
 *
 * @param correlation rᵢⱼ, symmetric, ones on the diagonal
 * @returns L, row by row, zeros above the diagonal
 * @throws {DomainError} 'cannot-all-hold' when no set of readings can have these coefficients at
 *   once (the matrix is not positive semidefinite); a coefficient outside −1…1
 * @source jcgm-101 6.4.8.4 (Cholesky factor, from memory)
 */
export function correlationFactor(correlation: readonly (readonly number[])[]): number[][] {
  const size = correlation.length;
  const factor = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      const r = correlation[i]![j] ?? Number.NaN;
      demand('correlation', r, 'count', { min: -1, max: 1 });
      let rest = r;
      for (let k = 0; k < j; k++) rest -= factor[i]![k]! * factor[j]![k]!;
      if (i === j) {
        if (rest < -NOTHING) throw contradiction(rest);
        factor[i]![i] = Math.sqrt(Math.max(0, rest));
      } else if (factor[j]![j]! > Math.sqrt(NOTHING)) {
        factor[i]![j] = rest / factor[j]![j]!;
      } else if (Math.abs(rest) > NEAR) {
        throw contradiction(-Math.abs(rest));
      }
    }
  }
  return factor;
}

const contradiction = (value: number) =>
  new DomainError({
    quantity: 'correlation',
    value,
    kind: 'count',
    allowed: { min: 0 },
    because: 'cannot-all-hold',
  });
