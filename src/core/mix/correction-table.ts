import { demand } from '../domain-error.ts';
import { demandAmount, EXTREMES } from '../extremes.ts';
import { type Correction, correctMix } from './correct.ts';

/** The correction for a reading; `density`: the corresponding wet density, kg/m³. */
export interface CorrectionRow extends Correction {
  /** The scale reading with the measure on it, kg. */
  readonly reading: number;
}

/**
 * The sheet for the bench: what the measure weighs → what to add.
 *
 * `tare` (kg) and `vessel` (m³) of the measure; `densities` the wet densities to print, kg/m³;
 * the rest as `correctMix` takes it. reading = tare + density × vessel. The mass in the mixer is
 * what went in, so it does not change with the reading. Range as `correctMix`.
 *
 * @throws {DomainError} as `correctMix` does, and for a measure of no volume.
 * @source astm-c138
 */
export function correctionTable(sheet: {
  readonly tare: number;
  readonly vessel: number;
  readonly densities: readonly number[];
  readonly massInHand: number;
  readonly targetDensity: number;
  readonly foamDensity: number;
  readonly baseDensity: number;
  readonly tolerance: number;
}): readonly CorrectionRow[] {
  const { tare, vessel, densities, ...mix } = sheet;
  demand('tare', tare, 'mass', { min: 0, max: EXTREMES.mass.max });
  demandAmount('vessel', vessel, 'volume');
  return densities.map((density) => {
    const fix = correctMix({ ...mix, measuredDensity: density });
    return { ...fix, density, reading: tare + density * vessel };
  });
}
