/**
 * Number of intervals of u from 0 to 1. With 1024 the error of the degree is at most 1e-8, a
 * millionth of a kelvin, for β up to 10.
 */
const STRETCHES = 1024;

/**
 * The intervals used. Near u = 0 (for a small β) and near u = 1 the curvature is unbounded, and no
 * cubic follows the curve.
 */
const FIRST = 16;
const KEPT = 1000;

/**
 * The curve exp[−(τ/te)^β] as a table of cubic Hermite pieces in u = te/(te + τ), for runs that
 * evaluate it a hundred thousand times. It depends on `beta`, a pure number, but not on τ. Each
 * interval has four coefficients, of 1, x, x² and x³, with x from 0 to 1 across it. For ages below
 * τ/63 and above 42 τ the curve itself must be evaluated. No range: an interpolation.
 * @source schindler-folliard-2005 for the curve, from memory
 */
export function degreeTable({ beta }: { readonly beta: number }): Float64Array {
  const table = new Float64Array(4 * KEPT);
  let [value, slope] = [0, 0];
  for (let i = 1; i <= KEPT; i++) {
    const u = i / STRETCHES;
    const exponent = ((1 - u) / u) ** beta;
    const nextValue = Math.exp(-exponent);
    // dα/du = α·β·((1 − u)/u)^β ÷ (u·(1 − u)), here per interval.
    const nextSlope = (nextValue * beta * exponent) / (u * (1 - u) * STRETCHES);
    const at = 4 * (i - 1);
    table[at] = value;
    table[at + 1] = slope;
    table[at + 2] = 3 * (nextValue - value) - 2 * slope - nextSlope;
    table[at + 3] = 2 * (value - nextValue) + slope + nextSlope;
    [value, slope] = [nextValue, nextSlope];
  }
  return table;
}

/**
 * Degree of hydration by the table, as a share of the ultimate, 0…1. `age` te and `tau` s; `beta`
 * as the curve. No range: an interpolation.
 * @source schindler-folliard-2005 for the curve, from memory
 */
export function degreeFromTable(
  table: Float64Array,
  age: number,
  tau: number,
  beta: number,
): number {
  const place = (STRETCHES * age) / (age + tau);
  const stretch = Math.floor(place);
  if (stretch < FIRST || stretch >= KEPT) return Math.exp(-((tau / age) ** beta));
  const x = place - stretch;
  const at = 4 * stretch;
  return table[at]! + x * (table[at + 1]! + x * (table[at + 2]! + x * table[at + 3]!));
}
