import { demand } from '../domain-error.ts';
import { contributions, type FirstOrder, type Model } from './first-order.ts';

/**
 * How do uncertainties propagate if the readings are correlated? `firstOrder` with u²(y) = Σᵢ Σⱼ cᵢ
 * cⱼ rᵢⱼ uᵢ uⱼ.
 *
 * `correlation` holds the coefficients rᵢⱼ. Arguments and range otherwise as `firstOrder`.
 * @throws {DomainError} as `firstOrder`, and when a coefficient lies outside −1…1.
 * @throws {RangeError} as `firstOrder`, and when `correlation` is not symmetric with ones on its
 *   diagonal.
 * @source jcgm-100 5.2.2, equation (13)
 */
export function firstOrderCorrelated(
  f: Model,
  x: readonly number[],
  u: readonly number[],
  correlation: readonly (readonly number[])[],
): FirstOrder {
  checkCorrelation(correlation, x.length);
  const { value, signed } = contributions(f, x, u);
  let variance = 0;
  for (const [i, a] of signed.entries())
    for (const [j, b] of signed.entries()) variance += a * b * correlation[i]![j]!;
  // Rounding may make the variance slightly negative when fully correlated terms cancel.
  return { value, u: Math.sqrt(Math.max(0, variance)), parts: signed.map(Math.abs) };
}

function checkCorrelation(correlation: readonly (readonly number[])[], size: number): void {
  if (correlation.length !== size || correlation.some((row) => row.length !== size))
    throw new RangeError(`the correlation matrix is not ${size} by ${size}`);
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) {
      const r = correlation[i]![j]!;
      demand('correlation', r, 'count', { min: -1, max: 1 });
      if (i === j && r !== 1) throw new RangeError('an input correlates with itself by 1');
      if (r !== correlation[j]![i]) throw new RangeError('the correlation matrix is not symmetric');
    }
}
