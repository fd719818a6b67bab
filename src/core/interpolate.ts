/**
 * The value at x on the straight lines between points (xs, ys), in the unit of ys. The xs rise; there are as many of
 * either, one at least. Outside them the first or the last value holds: who allows no such x says so before. On a point
 * it is that point's own, to the last digit. Range: that of the points.
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

/** Index of the first of rising xs that is more than x; their number if none is. @source definition */
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
