import { STANDARD_ATMOSPHERE } from '../../quantity/constants.ts';
import { type Equilibrated, equilibrateWithCalcite } from '../carbonate/equilibrate.ts';
import type { CarbonateWater } from '../carbonate/water.ts';

/**
 * Pressure of CO₂ in outdoor air, Pa: 10^−3.4 atmospheres, about 400 ppm. @source common-practice
 */
export const AIR_CARBON_DIOXIDE = STANDARD_ATMOSPHERE * 10 ** -3.4;
/**
 * Pressure of CO₂ that may remain over a pot in a hard boil, where steam drives the air away, Pa:
 * 10^−5 atmospheres. A choice, no source.
 * @source common-practice
 */
export const POT_CARBON_DIOXIDE = STANDARD_ATMOSPHERE * 1e-5;

/**
 * What boiling leaves in a water: it reduces carbonate hardness only, and not all of that.
 *
 * Boiling drives CO₂ off, so the water is assumed to reach equilibrium with air
 * (`carbonDioxidePressure`, Pa) and calcite at `water.temperature`, the temperature at which it
 * settles after cooling, range 0–50 °C. Evaporation is left out. Hardness in mol per kg of water.
 * How close a kettle gets is not known; short boiling leaves more. Nor is it a bound: over a hard
 * boil there is less CO₂ (`POT_CARBON_DIOXIDE`) and hot water holds less calcite, so water drawn
 * off hot may hold less.
 *
 * @throws {DomainError} and {NotConverged} as `equilibrateWithCalcite`.
 * @source plummer-busenberg-1982, wateq4f
 */
export function boil(kettle: {
  readonly water: CarbonateWater;
  readonly carbonDioxidePressure?: number;
}): { readonly water: Equilibrated; readonly hardness: number } {
  const { water, carbonDioxidePressure = AIR_CARBON_DIOXIDE } = kettle;
  const left = equilibrateWithCalcite(water, { carbonDioxidePressure });
  return { water: left, hardness: left.calcium + left.magnesium };
}
