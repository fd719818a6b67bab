/**
 * Linear interpolation at x between points (xs, ys), in the unit of ys. The xs must rise, and there
 * must be as many ys as xs, at least one. Outside the points the first or the last value is
 * returned; callers that do not accept such an x refuse it first. At a point the result is exactly
 * its y. Range: that of the points.
 * @source none: straight lines
 */
export function interpolate(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number {
  const after = firstAfter(xs, x);
  if (after === 0) return ys[0]!;
  if (after === xs.length) return ys[after - 1]!;
  const x0 = xs[after - 1]!;
  const share = (x - x0) / (xs[after]! - x0);
  return ys[after - 1]! + share * (ys[after]! - ys[after - 1]!);
}

/**
 * Index of the first of the rising xs that is greater than x; the number of xs if none is.
 * @source definition
 */
export function firstAfter(xs: ArrayLike<number>, x: number): number {
  let low = 0;
  let high = xs.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (xs[middle]! > x) high = middle;
    else low = middle + 1;
  }
  return low;
}
