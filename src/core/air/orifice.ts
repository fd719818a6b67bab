import { demand } from '../domain-error.ts';
import { AIR_GAMMA, dryAirDensity, FREE_AIR } from './density.ts';
import { DRY_AIR_GAS_CONSTANT } from './moist.ts';

/**
 * Discharge coefficient of a sharp-edged hole at small pressure drop.
 * @source common-practice (from memory: 0.60–0.62)
 */
export const SHARP_EDGED = 0.61;
/**
 * The same when the downstream pressure is close to zero. Between the two it rises steadily, choked
 * or not: the jet contracts behind the edge, and less so the lower the pressure there.
 * @source perry-1949, cunningham-1951 (from memory: 0.84–0.85)
 */
export const SHARP_CHOKED = 0.85;
/**
 * Discharge coefficient of a well-rounded nozzle. @source common-practice (from memory: 0.95–0.99)
 */
export const ROUNDED = 0.97;

/** A gas by its two constants; air if they are omitted. */
export interface Gas {
  /** Ratio of heat capacities, default `AIR_GAMMA`. */
  readonly gamma?: number;
  /** Gas constant, J/(kg·K), default `DRY_AIR_GAS_CONSTANT`. */
  readonly gasConstant?: number;
}

/**
 * Below what ratio of outlet to inlet pressure does the flow choke? (2/(γ + 1))^(γ/(γ − 1)); 0.528
 * for air. A lower outlet pressure then draws no more gas.
 *
 * @param gamma ratio of heat capacities, above 1, default `AIR_GAMMA`
 * @returns the ratio of absolute pressures. No range is published: an ideal gas, a short passage.
 * @throws {DomainError} gamma not above 1
 * @source orifice-tutorial p2/p1 ≤ 0.528
 */
export function criticalRatio({ gamma = AIR_GAMMA }: { readonly gamma?: number } = {}): number {
  demand('gamma', gamma, 'ratio', { min: 1, aboveMin: true });
  return (2 / (gamma + 1)) ** (gamma / (gamma - 1));
}

interface ThroatState {
  /** Absolute pressure in the throat, Pa. */
  readonly pressure: number;
  /** Temperature in the throat, K: a choked throat is cold, and moisture freezes in it. */
  readonly temperature: number;
}

export interface OrificeFlow {
  /** Mass of gas a second, kg/s. Over `dryAirDensity` of the free state it is free air, m³/s. */
  readonly massFlow: number;
  readonly choked: boolean;
  readonly throat: ThroatState;
}

/**
 * How much air goes through an orifice, a jet or a needle valve?
 *
 * Choked, p₂/p₁ at or below (2/(γ + 1))^(γ/(γ − 1)): ṁ = Cd A p₁/√T₁ √[(γ/R) (2/(γ + 1))^((γ +
 * 1)/(γ − 1))]. Not choked, with r = p₂/p₁: ṁ = Cd A p₁/√(R T₁) √[2γ/(γ − 1) (r^(2/γ) − r^((γ +
 * 1)/γ))].
 *
 * One Cd is used for all pressures, as is right for a rounded entry. That of a sharp edge rises
 * from `SHARP_EDGED` to `SHARP_CHOKED`, so its flow depends on the pressure behind it even when
 * choked. A needle valve is an orifice of unknown Cd A: find it once from `effectiveArea`.
 * @param upstream absolute pressure before it, Pa
 * @param downstream absolute pressure after it, Pa
 * @param temperature of the gas before it, K
 * @param area of the opening, m²
 * @param dischargeCoefficient what share of the ideal flow passes, 0–1: see `SHARP_EDGED`,
 *   `SHARP_CHOKED`, `ROUNDED`
 * @param gas its γ and R, air when left out
 * @returns mass flow in kg/s, whether it is choked, and the state in the throat. Range: an ideal
 *   gas from a vessel much wider than the opening; no range is published.
 * @throws {DomainError} downstream above upstream; pressure, temperature, area not positive; a
 *   coefficient outside 0–1
 * @source compressible-flow-wiki choked mass flow
 * @source api-520 subcritical form, F2
 */
export function orificeFlow(passage: {
  readonly upstream: number;
  readonly downstream: number;
  readonly temperature: number;
  readonly area: number;
  readonly dischargeCoefficient: number;
  readonly gas?: Gas;
}): OrificeFlow {
  const { upstream, downstream, temperature, area, dischargeCoefficient } = passage;
  const { gamma = AIR_GAMMA, gasConstant = DRY_AIR_GAS_CONSTANT } = passage.gas ?? {};
  const above = { min: 0, aboveMin: true };
  demand('upstream', upstream, 'pressure', above);
  demand('downstream', downstream, 'pressure', { min: 0, max: upstream });
  demand('temperature', temperature, 'temperature', above);
  demand('area', area, 'area', above);
  demand('dischargeCoefficient', dischargeCoefficient, 'ratio', { ...above, max: 1 });
  demand('gasConstant', gasConstant, 'specificHeat', above);
  const critical = criticalRatio({ gamma });
  const choked = downstream / upstream <= critical;
  // At the critical ratio the two formulas agree, so the throat's own ratio serves for both.
  const ratio = choked ? critical : downstream / upstream;
  const speed = ((2 * gamma) / (gamma - 1)) * (ratio ** (2 / gamma) - ratio ** (1 + 1 / gamma));
  const ideal = (area * upstream * Math.sqrt(speed)) / Math.sqrt(gasConstant * temperature);
  return {
    massFlow: dischargeCoefficient * ideal,
    choked,
    throat: {
      pressure: ratio * upstream,
      temperature: temperature * ratio ** ((gamma - 1) / gamma),
    },
  };
}

/**
 * How large is the opening, from a flow that was measured? Cd A = ṁ/(ṁ of 1 m² at Cd 1). Range as
 * `orificeFlow`.
 *
 * @param massFlow measured, kg/s
 * @param upstream absolute pressure before it, Pa
 * @param downstream absolute pressure after it, Pa, below upstream
 * @param temperature of the gas before it, K
 * @param gas its γ and R, air when left out
 * @returns discharge coefficient times area, m². Over a known Cd it is the area itself.
 * @throws {DomainError} a negative flow (named in m³/s of free air), downstream not below upstream,
 *   or as `orificeFlow`
 * @source compressible-flow-wiki choked mass flow
 */
export function effectiveArea({
  massFlow,
  ...passage
}: {
  readonly massFlow: number;
  readonly upstream: number;
  readonly downstream: number;
  readonly temperature: number;
  readonly gas?: Gas;
}): number {
  // No kind of quantity for mass flow exists, so refuse it as the corresponding flow of free air.
  demand('massFlow', massFlow / dryAirDensity(FREE_AIR), 'flow', { min: 0 });
  const { upstream, downstream } = passage;
  demand('downstream', downstream, 'pressure', { min: 0, max: upstream, belowMax: true });
  return massFlow / orificeFlow({ ...passage, area: 1, dischargeCoefficient: 1 }).massFlow;
}
