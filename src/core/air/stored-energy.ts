import { demand } from '../domain-error.ts';
import { AIR_GAMMA } from './density.ts';

/** Ambient pressure used by the pressure-test standard, Pa. @source asme-pcc-2 Appendix 501-II */
export const PCC2_AMBIENT = 101_000;
/** Energy of a kilogram of TNT in that standard, J. @source asme-pcc-2 eq. II-3 */
export const TNT_ENERGY = 4_266_920;
/** Another figure in use for the same, J. @source uc-berkeley-stored-energy */
export const TNT_ENERGY_BERKELEY = 4_620_000;
/**
 * Stored energy above which a vessel is called highly hazardous there, J.
 * @source uc-berkeley-stored-energy
 */
export const HIGH_HAZARD_ENERGY = 100_000;
/** Scaled distance at which people are unhurt, m/kg^(1/3). @source asme-pcc-2 eq. III-1 */
const SCALED_DISTANCE = 20;
/**
 * Gauge pressure × volume above which a simple vessel must meet the European essential safety
 * requirements, J (50 bar·L, read second-hand).
 * @source spvd-2014-29
 */
export const ESSENTIAL_REQUIREMENTS = 5000;

export interface StoredEnergy {
  /** Energy of an adiabatic expansion in a burst, as in the pressure-test standard, J. */
  readonly isentropic: number;
  /**
   * Work of an isothermal expansion beyond displacing the ambient air, J. Below some 5.7 bar gauge
   * it is less than the isentropic energy, which includes that displacement.
   */
  readonly isothermal: number;
  /** Energy to raise the pressure at constant volume, J: the highest of the three up to 25 bar. */
  readonly brode: number;
  /** Mass of TNT of the isentropic energy, kg. */
  readonly tnt: number;
  /** Gauge pressure times volume, J; 100 J is 1 bar·L, the measure pressure-equipment law uses. */
  readonly pressureVolume: number;
}

/**
 * How much energy is released at once if the vessel bursts?
 *
 * Isentropic, γ 1.4: E = 2.5 p V [1 − (pₐ/p)^0.286]. Isothermal: E = p V [ln(p/pₐ) − 1 + pₐ/p].
 * Brode: E = (p − pₐ) V/(γ − 1). TNT: isentropic/4 266 920 J/kg.
 * @param vessel volume, m³
 * @param pressure absolute, Pa: gauge plus ambient
 * @param ambient absolute, Pa, default `PCC2_AMBIENT`
 * @returns energies in J, TNT in kg. Air only; no range is published. The exponent is the
 *   standard's rounding of 2/7, 0.1 % of the energy.
 * @throws {DomainError} a vessel or ambient pressure not positive, a pressure below ambient
 * @source asme-pcc-2 eq. II-2, II-3
 * @source stored-energy-forum isothermal availability
 * @source crowl-2003 eq. B-1
 */
export function storedEnergy({
  vessel,
  pressure,
  ambient = PCC2_AMBIENT,
}: {
  readonly vessel: number;
  readonly pressure: number;
  readonly ambient?: number;
}): StoredEnergy {
  demand('vessel', vessel, 'volume', { min: 0, aboveMin: true });
  demand('ambient', ambient, 'pressure', { min: 0, aboveMin: true });
  demand('pressure', pressure, 'pressure', { min: ambient });
  const isentropic = 2.5 * pressure * vessel * (1 - (ambient / pressure) ** 0.286);
  return {
    isentropic,
    isothermal: pressure * vessel * (Math.log(pressure / ambient) - 1 + ambient / pressure),
    brode: ((pressure - ambient) * vessel) / (AIR_GAMMA - 1),
    tnt: isentropic / TNT_ENERGY,
    pressureVolume: (pressure - ambient) * vessel,
  };
}

export interface TestDistance {
  /** The larger of the two below, m; undefined above 271 MJ, where the standard gives no floor. */
  readonly distance: number | undefined;
  /** Rs (2 TNT)^(1/3), m. */
  readonly scaled: number;
  /** 30 m to 135.5 MJ, 60 m to 271 MJ; undefined above. */
  readonly floor: number | undefined;
}

/**
 * How far away must people be when a vessel is pressure-tested with air?
 *
 * R = Rs (2 TNT)^(1/3) with Rs = 20 m/kg^(1/3), and at least 30 m up to 135.5 MJ or 60 m up to 271
 * MJ. It is a distance for testing, not for using a vessel that has been tested.
 * @param isentropic stored energy, J, from `storedEnergy`
 * @returns distances, m. Range: to 271 MJ.
 * @throws {DomainError} a negative energy
 * @source asme-pcc-2 eq. III-1 and its floors
 */
export function testDistance({ isentropic }: { readonly isentropic: number }): TestDistance {
  demand('isentropic', isentropic, 'energy', { min: 0 });
  const scaled = SCALED_DISTANCE * ((2 * isentropic) / TNT_ENERGY) ** (1 / 3);
  const floor = isentropic <= 135.5e6 ? 30 : isentropic <= 271e6 ? 60 : undefined;
  return { scaled, floor, distance: floor === undefined ? undefined : Math.max(scaled, floor) };
}
