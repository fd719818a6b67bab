import { demand } from '../domain-error.ts';
import { AIR_GAMMA } from './density.ts';
import { DRY_AIR_GAS_CONSTANT } from './moist.ts';
import { criticalRatio, type Gas } from './orifice.ts';

/** A receiver that empties through an opening. */
export interface BlowDown {
  /** Volume of the vessel, m³. */
  readonly vessel: number;
  /** Absolute pressure at the start, Pa. */
  readonly start: number;
  /** Absolute pressure outside, Pa. */
  readonly ambient: number;
  /** Temperature of the air at the start, K. */
  readonly temperature: number;
  /** Discharge coefficient times area of the opening, m². */
  readonly effectiveArea: number;
  /**
   * `isothermal`: slow, the walls keep the air warm. `adiabatic`: fast, the air cools as it
   * expands. A real vessel lies between.
   */
  readonly walls: 'isothermal' | 'adiabatic';
  readonly gas?: Gas;
}

/**
 * How long until the receiver has fallen to a pressure?
 *
 * While choked, with K = (2/(γ + 1))^((γ + 1)/(2(γ − 1))) and τ = V/(Cd A K √(γ R T₀)):
 * isothermal t = τ ln(p₀/p); adiabatic t = 2τ/(γ − 1) [(p₀/p)^((γ − 1)/(2γ)) − 1].
 * Below, with s² = (p/pₐ)^((γ − 1)/γ) − 1, dt = B (1 + s²)^q ds from s at p to s at the start,
 * B = V/(Cd A) √(2γ/((γ − 1) R T)): isothermal q = 1/(γ − 1) − ½, T = T₀ and a factor 1;
 * adiabatic q = 1/(γ − 1) − 1, a factor 1/γ, T the temperature the air would have at pₐ. The
 * integral is smooth to the very end and is summed by Simpson's rule.
 *
 * @param to absolute pressure to fall to, Pa, from `ambient` to `start`
 * @returns time, s. Finite even to `ambient`. Range: an ideal gas, a still vessel; none is
 *   published.
 * @throws {DomainError} `to` outside ambient to start; volume, temperature, area not positive
 * @source compressible-flow-wiki choked mass flow, integrated over the vessel's mass balance
 */
export function timeToFall({ to, ...blow }: BlowDown & { readonly to: number }): number {
  const { start, ambient, gas } = blow;
  check(blow);
  demand('to', to, 'pressure', { min: ambient, max: start });
  const unchokes = ambient / criticalRatio(gas);
  const choked = Math.max(0, chokedTime(blow, Math.max(to, unchokes)));
  if (to >= unchokes) return choked;
  return choked + unchokedTime(blow, Math.min(start, unchokes), to);
}

/**
 * What is the pressure after some seconds? The inverse of `timeToFall`, by bisection.
 *
 * @param time since the opening, s
 * @returns absolute pressure, Pa: `ambient` once empty. Range as `timeToFall`.
 * @throws {DomainError} a negative time, or as `timeToFall`
 * @source compressible-flow-wiki choked mass flow, integrated over the vessel's mass balance
 */
export function pressureAfter({ time, ...blow }: BlowDown & { readonly time: number }): number {
  demand('time', time, 'time', { min: 0 });
  let low = blow.ambient;
  let high = blow.start;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (timeToFall({ ...blow, to: middle }) > time) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Negative when the vessel starts below `to`. */
function chokedTime(blow: BlowDown, to: number): number {
  const { gamma, gasConstant } = constants(blow);
  const { vessel, effectiveArea, temperature, start, walls } = blow;
  const k = (2 / (gamma + 1)) ** ((gamma + 1) / (2 * (gamma - 1)));
  const tau = vessel / (effectiveArea * k * Math.sqrt(gamma * gasConstant * temperature));
  return walls === 'isothermal'
    ? tau * Math.log(start / to)
    : ((2 * tau) / (gamma - 1)) * ((start / to) ** ((gamma - 1) / (2 * gamma)) - 1);
}

function unchokedTime(blow: BlowDown, from: number, to: number): number {
  const { gamma, gasConstant } = constants(blow);
  const { vessel, effectiveArea, temperature, start, ambient, walls } = blow;
  const isothermal = walls === 'isothermal';
  const atAmbient = temperature * (isothermal ? 1 : (ambient / start) ** ((gamma - 1) / gamma));
  const power = 1 / (gamma - 1) - (isothermal ? 0.5 : 1);
  const s = (pressure: number) =>
    Math.sqrt(Math.max(0, (pressure / ambient) ** ((gamma - 1) / gamma) - 1));
  const scale =
    (vessel / effectiveArea) *
    Math.sqrt((2 * gamma) / ((gamma - 1) * gasConstant * atAmbient)) *
    (isothermal ? 1 : 1 / gamma);
  return scale * simpson((at) => (1 + at ** 2) ** power, s(to), s(from));
}

function simpson(f: (at: number) => number, from: number, to: number): number {
  const panels = 32;
  const step = (to - from) / panels;
  let sum = f(from) + f(to);
  for (let i = 1; i < panels; i++) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * step);
  return (sum * step) / 3;
}

function constants({ gas = {} }: BlowDown): Required<Gas> {
  return { gamma: AIR_GAMMA, gasConstant: DRY_AIR_GAS_CONSTANT, ...gas };
}

function check(blow: BlowDown): void {
  const above = { min: 0, aboveMin: true };
  demand('vessel', blow.vessel, 'volume', above);
  demand('ambient', blow.ambient, 'pressure', above);
  demand('start', blow.start, 'pressure', { min: blow.ambient });
  demand('temperature', blow.temperature, 'temperature', above);
  demand('effectiveArea', blow.effectiveArea, 'area', above);
  demand('gasConstant', constants(blow).gasConstant, 'specificHeat', above);
}
