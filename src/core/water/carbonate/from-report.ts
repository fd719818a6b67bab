import { demand } from '../../domain-error.ts';
import { waterDensity } from '../density.ts';
import * as MOLAR_MASS from '../molar-masses.ts';
import type { Solutes } from './water.ts';

/** A water report: ions in kg/m³ of water as sampled (1 mg/L is 0.001 kg/m³). */
export interface Report {
  /** K. */
  readonly temperature: number;
  readonly calcium?: number | undefined;
  readonly magnesium?: number | undefined;
  readonly sodium?: number | undefined;
  readonly potassium?: number | undefined;
  readonly sulfate?: number | undefined;
  readonly chloride?: number | undefined;
  readonly nitrate?: number | undefined;
}

/**
 * kg of water in a cubic metre of the sample.
 *
 * The salts of a tap water add mass but also displace water, so the density of pure water is used.
 * At 2 g/L that is 0.05 % too much (if 1 g of salt takes up a quarter of a millilitre). With a
 * measured `density` of the sample (kg/m³) and its `dissolved` salts (kg/m³), their difference is
 * exact.
 *
 * @throws {DomainError} outside 0–100 °C, or when more is dissolved than the sample weighs.
 * @source definition
 */
export function waterPerVolume(sample: {
  readonly temperature: number;
  readonly density?: number | undefined;
  readonly dissolved?: number | undefined;
}): number {
  const { temperature, density, dissolved = 0 } = sample;
  if (density === undefined) return waterDensity(temperature);
  demand('density', density, 'density', { min: 500, max: 2000 });
  demand('dissolved', dissolved, 'concentration', { min: 0, max: density, belowMax: true });
  return density - dissolved;
}

/**
 * The ions of a report as the carbonate solver takes them, mol per kg of water.
 *
 * `perVolume` is the kg of water in a m³ of sample (`waterPerVolume`). If the report omits
 * chloride, it is used to balance the charges. Potassium counts as an other cation, nitrate as an
 * other anion: neither forms ion pairs here.
 *
 * @throws {DomainError} for a negative concentration.
 * @source definition
 */
export function solutesFromReport(report: Report, perVolume = waterPerVolume(report)): Solutes {
  const molal = (name: keyof Report, molarMass: number): number => {
    const given = report[name] ?? 0;
    demand(name, given, 'concentration', { min: 0 });
    return given / molarMass / perVolume;
  };
  return {
    temperature: report.temperature,
    calcium: molal('calcium', MOLAR_MASS.calcium),
    magnesium: molal('magnesium', MOLAR_MASS.magnesium),
    sodium: molal('sodium', MOLAR_MASS.sodium),
    sulfate: molal('sulfate', MOLAR_MASS.sulfate),
    chloride: report.chloride === undefined ? undefined : molal('chloride', MOLAR_MASS.chloride),
    otherCations: molal('potassium', MOLAR_MASS.potassium),
    otherAnions: molal('nitrate', MOLAR_MASS.nitrate),
  };
}
