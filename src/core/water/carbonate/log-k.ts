import { CALORIE, GAS_CONSTANT } from '../../quantity/constants.ts';

/** Gas constant, kcal/(mol·K). @source codata-2018 (from memory) */
const GAS_CONSTANT_KCAL = GAS_CONSTANT / (1000 * CALORIE);

/** The temperature at which the two-parameter constants are stated, K. */
const REFERENCE = 298.15;

/** The five coefficients of log₁₀ K = A₁ + A₂T + A₃/T + A₄ log₁₀T + A₅/T². */
export type Analytic = readonly [number, number, number, number, number];

/** A constant stated at 25 °C, with the enthalpy of the reaction in kcal/mol where one is known. */
interface Stated {
  readonly at25: number;
  readonly enthalpy?: number;
}

export type Constant = Analytic | Stated;

/**
 * log₁₀ of an equilibrium constant at a temperature in K.
 *
 * Five coefficients: log K = A₁ + A₂T + A₃/T + A₄ log₁₀T + A₅/T². Stated at 25 °C: van 't Hoff,
 * log K = log K₂₅ − ΔH/(R ln 10)·(1/T − 1/298.15); without an enthalpy the value at 25 °C is kept.
 * Range: that of the constant's own source; the carbonate constants cover 0–90 °C (from memory).
 *
 * @source plummer-busenberg-1982, wateq4f
 */
export function logK(constant: Constant, temperature: number): number {
  const T = temperature;
  if ('at25' in constant) {
    const slope = (constant.enthalpy ?? 0) / (GAS_CONSTANT_KCAL * Math.LN10);
    return constant.at25 - slope * (1 / T - 1 / REFERENCE);
  }
  const [a1, a2, a3, a4, a5] = constant;
  return a1 + a2 * T + a3 / T + a4 * Math.log10(T) + a5 / (T * T);
}

/** H₂O = H⁺ + OH⁻; −14.000 at 25 °C. @source wateq4f */
export const WATER: Analytic = [-283.971, -0.05069842, 13323, 102.24447, -1119669];
