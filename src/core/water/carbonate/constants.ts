import type { Analytic, Constant } from './log-k.ts';

/** Calcite = Ca²⁺ + CO₃²⁻; −8.480 ± 0.020 at 25 °C. @source plummer-busenberg-1982 abstract */
export const CALCITE: Analytic = [-171.9065, -0.077993, 2839.319, 71.595, 0];
/** Aragonite = Ca²⁺ + CO₃²⁻; −8.336 ± 0.020. @source plummer-busenberg-1982 abstract */
export const ARAGONITE: Analytic = [-171.9773, -0.077993, 2903.293, 71.595, 0];
/** Vaterite = Ca²⁺ + CO₃²⁻; −7.913 ± 0.020. @source plummer-busenberg-1982 abstract */
export const VATERITE: Analytic = [-172.1295, -0.077993, 3074.688, 71.595, 0];
/** CO₂(g) = CO₂(aq), K_H in mol/(kg·atm). @source plummer-busenberg-1982 abstract */
export const HENRY: Analytic = [108.3865, 0.01985076, -6919.53, -40.45154, 669365];
/** CO₂(aq) + H₂O = H⁺ + HCO₃⁻, K₁. @source plummer-busenberg-1982 abstract */
export const FIRST_DISSOCIATION: Analytic = [-356.3094, -0.06091964, 21834.37, 126.8339, -1684915];
/** HCO₃⁻ = H⁺ + CO₃²⁻, K₂. @source plummer-busenberg-1982 abstract */
export const SECOND_DISSOCIATION: Analytic = [-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9];
/** Ca²⁺ + HCO₃⁻ = CaHCO₃⁺; 1.11 ± 0.07. @source plummer-busenberg-1982 abstract */
export const CALCIUM_BICARBONATE: Analytic = [1209.12, 0.31294, -34765.05, -478.782, 0];
/** Ca²⁺ + CO₃²⁻ = CaCO₃(aq); 3.22 ± 0.14. @source plummer-busenberg-1982 abstract */
export const CALCIUM_CARBONATE_PAIR: Analytic = [-1228.732, -0.299444, 35512.75, 485.818, 0];

/** Mg²⁺ + CO₃²⁻ = MgCO₃(aq). @source wateq4f */
export const MAGNESIUM_CARBONATE_PAIR: Analytic = [0.991, 0.00667, 0, 0, 0];
/** Mg²⁺ + HCO₃⁻ = MgHCO₃⁺. @source wateq4f */
export const MAGNESIUM_BICARBONATE: Analytic = [-59.215, 0, 2537.455, 20.92298, 0];
/** Ca²⁺ + SO₄²⁻ = CaSO₄(aq). @source wateq4f */
export const CALCIUM_SULFATE_PAIR: Constant = { at25: 2.3, enthalpy: 1.65 };
/** Mg²⁺ + SO₄²⁻ = MgSO₄(aq). @source wateq4f */
export const MAGNESIUM_SULFATE_PAIR: Constant = { at25: 2.37, enthalpy: 4.55 };
/** Na⁺ + SO₄²⁻ = NaSO₄⁻. @source wateq4f */
export const SODIUM_SULFATE_PAIR: Constant = { at25: 0.7, enthalpy: 1.12 };
/** Na⁺ + CO₃²⁻ = NaCO₃⁻. @source wateq4f */
export const SODIUM_CARBONATE_PAIR: Constant = { at25: 1.27, enthalpy: 8.91 };
/** Na⁺ + HCO₃⁻ = NaHCO₃(aq); no enthalpy is given. @source wateq4f */
export const SODIUM_BICARBONATE: Constant = { at25: -0.25 };
/** Ca²⁺ + H₂O = CaOH⁺ + H⁺; no enthalpy is given. @source wateq4f */
export const CALCIUM_HYDROXIDE_PAIR: Constant = { at25: -12.78 };
/** Mg²⁺ + H₂O = MgOH⁺ + H⁺. @source wateq4f */
export const MAGNESIUM_HYDROXIDE_PAIR: Constant = { at25: -11.44, enthalpy: 15.952 };
/** H⁺ + SO₄²⁻ = HSO₄⁻. From memory; the reference program's waters bear it out. @source wateq4f (from memory) */
export const BISULFATE: Analytic = [-56.889, 0.006473, 2307.9, 19.8858, 0];

/** Gypsum = Ca²⁺ + SO₄²⁻ + 2 H₂O; −4.58. From memory. @source wateq4f (from memory) */
export const GYPSUM: Analytic = [68.2401, 0, -3221.51, -25.0627, 0];
/** CaMg(CO₃)₂, ordered dolomite; −17.09. From memory. @source wateq4f (from memory) */
export const DOLOMITE: Constant = { at25: -17.09, enthalpy: -9.436 };
/** Mg(OH)₂ + 2 H⁺ = Mg²⁺ + 2 H₂O; 16.84. From memory. @source wateq4f (from memory) */
export const BRUCITE: Constant = { at25: 16.84, enthalpy: -27.1 };
