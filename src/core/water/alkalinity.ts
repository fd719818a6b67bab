import { demand } from '../domain-error.ts';
import * as MOLAR_MASS from './molar-masses.ts';

/**
 * Alkalinity from the ions of a report, eq/m³.
 *
 * `bicarbonate` and `carbonate` in kg/m³: HCO₃/61 + 2 CO₃/60. With `pH` the hydroxide is added and
 * the hydrogen ion subtracted as concentrations, 10^(pH − 14) and 10^−pH mol/L, at 25 °C and
 * without activities, as textbooks do; above pH 9 that matters. No range is published: any water.
 *
 * @throws {DomainError} for a negative concentration or a pH outside 0–14.
 * @source davis-2010 Example 6-1
 */
export function alkalinityFromIons(ions: {
  readonly bicarbonate: number;
  readonly carbonate: number;
  readonly pH?: number;
}): number {
  demand('bicarbonate', ions.bicarbonate, 'concentration', { min: 0 });
  demand('carbonate', ions.carbonate, 'concentration', { min: 0 });
  const carbonates =
    ions.bicarbonate / MOLAR_MASS.bicarbonate + (2 * ions.carbonate) / MOLAR_MASS.carbonate;
  if (ions.pH === undefined) return carbonates;
  demand('pH', ions.pH, 'count', { min: 0, max: 14 });
  return carbonates + 1000 * (10 ** (ions.pH - 14) - 10 ** -ions.pH);
}
