import { demand } from '../domain-error.ts';
import { ICE_POINT } from '../quantity/constants.ts';

/** Temperatures the equations cover, K. Tanaka 0–40 °C (read); Kell 0–150 °C (from memory). */
const TANAKA_2001_RANGE = { min: ICE_POINT, max: ICE_POINT + 40 } as const;
const KELL_1975_RANGE = { min: ICE_POINT, max: ICE_POINT + 150 } as const;

/**
 * Density of air-free pure water at atmospheric pressure, kg/m³, from its temperature in K
 * (ITS-90).
 *
 * ρ = 999.974950 [1 − (t − 3.983035)² (t + 301.797) / (522528.9 (t + 69.34881))], t in °C.
 * Valid 0–40 °C to better than 0.001 kg/m³. Dissolved salts of a hard tap water add about
 * 0.8 kg/m³ per g/L, which this leaves out.
 *
 * @throws {DomainError} outside 0–40 °C: the fit is not continued past its table.
 * @source tanaka-2001
 */
export function waterDensityTanaka2001(temperature: number): number {
  demand('temperature', temperature, 'temperature', TANAKA_2001_RANGE);
  const t = temperature - ICE_POINT;
  return 999.97495 * (1 - ((t - 3.983035) ** 2 * (t + 301.797)) / (522528.9 * (t + 69.34881)));
}

/**
 * The same after Kell, kg/m³, from a temperature in K.
 *
 * ρ = (999.83952 + 16.945176 t − 7.9870401·10⁻³ t² − 46.170461·10⁻⁶ t³ + 105.56302·10⁻⁹ t⁴
 * − 280.54253·10⁻¹² t⁵) / (1 + 16.879850·10⁻³ t), t in °C (IPTS-68). 0–150 °C (range from memory).
 * One printing has 16.897850 in the denominator, two digits swapped: it gives 997.94 at 20 °C.
 *
 * @throws {DomainError} outside 0–150 °C.
 * @source kell-1975 as eq. 1 of jones-harris-1992
 */
export function waterDensityKell1975(temperature: number): number {
  demand('temperature', temperature, 'temperature', KELL_1975_RANGE);
  const t = temperature - ICE_POINT;
  const top =
    999.83952 +
    t *
      (16.945176 +
        t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
  return top / (1 + 16.87985e-3 * t);
}

/**
 * The density of water used in the handbook, kg/m³, from a temperature in K, range 0–100 °C: Tanaka
 * from 0 to 40 °C, where benches are, and Kell for hotter water up to boiling. The two differ by
 * less than 0.003 kg/m³ at 20 °C and 0.001 at 40 °C, where one takes over from the other.
 *
 * @throws {DomainError} below 0 or above 100 °C, where it is not liquid at atmospheric pressure.
 * @source tanaka-2001, kell-1975
 */
export function waterDensity(temperature: number): number {
  demand('temperature', temperature, 'temperature', { min: ICE_POINT, max: ICE_POINT + 100 });
  return temperature <= TANAKA_2001_RANGE.max
    ? waterDensityTanaka2001(temperature)
    : waterDensityKell1975(temperature);
}
