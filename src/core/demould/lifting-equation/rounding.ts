/**
 * Rounds to two decimals, halves up, allowing for binary rounding error: 0.985 becomes 0.99 as in
 * the tables. No range: rounding.
 * @source niosh-lifting-1994 p. 29
 */
export function toTwoDecimals(x: number): number {
  return Math.round(x * 100 + 1e-7) / 100;
}
