import { demand, demandWhole } from '../../domain-error.ts';
import { demandPositive } from '../bounds.ts';

/** The number of terms of a series: at Fo 1e-4 the last one is below 1e-12. */
const TERMS = 200;

/**
 * Share of the temperature step reached in a slab whose two faces jump to a new temperature, 0…1.
 *
 * 1 − Σ 4/((2n+1)π)·sin((2n+1)πs/2)·exp(−((2n+1)π/2)²·Fo). `fourier` Fo = a·t/L², L half the
 * thickness; `fromFace` s, distance from a face over L, 0…2. Exact but for being cut off after 200
 * terms, so the range is Fo from 1e-4 up.
 * @throws {DomainError} for Fo below 1e-4 or a place outside the slab.
 * @source code-aster-ttll01
 */
export function slabSeriesHeld(of: {
  readonly fourier: number;
  readonly fromFace: number;
}): number {
  demand('fourier', of.fourier, 'ratio', { min: 1e-4 });
  demand('fromFace', of.fromFace, 'ratio', { min: 0, max: 2 });
  let sum = 0;
  for (let n = TERMS - 1; n >= 0; n--) {
    const k = ((2 * n + 1) * Math.PI) / 2;
    sum += (2 / k) * Math.sin(k * of.fromFace) * Math.exp(-k * k * of.fourier);
  }
  return 1 - sum;
}

/**
 * The first `count` roots of ξ·tan ξ = Bi in rising order, one in each (nπ, nπ + π/2). `biot` Bi
 * above 0. Exact to rounding error, over the whole range of Bi.
 * @throws {DomainError} for a Biot number not above zero, or a count that is not whole or below 1.
 * @source code-aster-ttll100
 */
export function biotRoots(of: { readonly biot: number; readonly count: number }): number[] {
  demandPositive('biot', of.biot, 'ratio');
  demandWhole('count', of.count, { min: 1 });
  return Array.from({ length: of.count }, (_, n) => {
    let low = n * Math.PI;
    let high = low + Math.PI / 2;
    while (high - low > Number.EPSILON * high) {
      const middle = (low + high) / 2;
      // ξ·sin ξ − Bi·cos ξ has no pole; its sign on this stretch alternates with n.
      const f = middle * Math.sin(middle) - of.biot * Math.cos(middle);
      if (f * (n % 2 === 0 ? 1 : -1) < 0) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  });
}

/**
 * Weight of a root ξ in the series, both pure numbers: 4·sin ξ/(2ξ + sin 2ξ). No range: arithmetic.
 * @source code-aster-ttll100
 */
export function biotWeight(root: number): number {
  return (4 * Math.sin(root)) / (2 * root + Math.sin(2 * root));
}

/**
 * Share of the initial temperature difference left in a slab cooling to air on both faces, 0…1: Σ
 * An·exp(−ξn²·Fo)·cos(ξn·s). `biot` h·L/λ and `fourier` a·t/L² with L half the thickness;
 * `fromMiddle` s, distance from the middle over L, 0…1. Exact but for being cut off after 200
 * terms: range Fo from 1e-4 up.
 * @throws {DomainError} for a Biot number not above zero, Fo below 1e-4 or a place outside the
 *   slab.
 * @source code-aster-ttll100
 */
export function slabSeriesConvective(of: {
  readonly biot: number;
  readonly fourier: number;
  readonly fromMiddle: number;
}): number {
  demand('fourier', of.fourier, 'ratio', { min: 1e-4 });
  demand('fromMiddle', of.fromMiddle, 'ratio', { min: 0, max: 1 });
  return biotRoots({ biot: of.biot, count: TERMS }).reduceRight(
    (sum, root) =>
      sum + biotWeight(root) * Math.exp(-root * root * of.fourier) * Math.cos(root * of.fromMiddle),
    0,
  );
}
