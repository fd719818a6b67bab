import { SEA_LEVEL_PRESSURE } from '../air/moist.ts';
import { demand } from '../domain-error.ts';
import { STANDARD_GRAVITY as GRAVITY } from '../quantity/constants.ts';

export interface Lift {
  /** Wet density as weighed, under the atmosphere alone, kg/m³. */
  readonly density: number;
  /** Share of the mix that is gas, as weighed. */
  readonly gas: number;
  /** Depth of the lift, m. */
  readonly depth: number;
  /** Pressure of the air above, Pa. */
  readonly atmosphere?: number;
}

export interface LiftProfile {
  /** kg/m³ at the bottom, and the mean over the depth. */
  readonly bottom: number;
  readonly mean: number;
  /** Gauge pressure at the bottom, Pa. */
  readonly pressure: number;
  /** How much denser the bottom is than the density weighed, as a share. */
  readonly gain: number;
  /** How much more must be poured than the weighed density suggests, as a share of the depth. */
  readonly sinks: number;
  /** From the surface down: depth m, density kg/m³. */
  readonly profile: readonly { readonly depth: number; readonly density: number }[];
}

/** Number of points of the profile. */
const POINTS = 25;

/**
 * How much a lift compresses under its own weight while it is wet: its bubbles shrink as the
 * pressure grows with depth, and the mix below gets denser.
 *
 * Gas at constant temperature (p V constant) in an incompressible paste: with P = p/p₀, ρ = ρ₀/(1 −
 * φ + φ/P), and dp/dz = ρ g integrates to (1 − φ)(P − 1) + φ ln P = ρ₀ g z/p₀, which has one root P
 * ≥ 1 for each z. With φ = 0 it is a plain liquid; with φ = 1 the isothermal atmosphere, P = exp(ρ₀
 * g z/p₀).
 *
 * It leaves out the pressure of surface tension in the bubbles (some hundred Pa) and every bubble
 * that breaks, drains or rises, which in practice limit a lift long before this does. No range is
 * published.
 *
 * @param gas share of the volume, 0–1; @param atmosphere default 101,325 Pa
 * @throws {DomainError} for a density or depth or atmosphere not above 0, a share outside 0–1
 * @source gas-in-paste
 */
export function liftProfile(lift: Lift): LiftProfile {
  const { density, gas, depth, atmosphere = SEA_LEVEL_PRESSURE } = lift;
  demand('density', density, 'density', { min: 0, aboveMin: true });
  demand('gas', gas, 'ratio', { min: 0, max: 1 });
  demand('depth', depth, 'length', { min: 0, max: 1000, aboveMin: true });
  demand('atmosphere', atmosphere, 'pressure', { min: 0, aboveMin: true });
  const at = (z: number) => {
    const p = pressureRatio((density * GRAVITY * z) / atmosphere, gas);
    return { p, density: density / (1 - gas + gas / p) };
  };
  const below = at(depth);
  const pressure = (below.p - 1) * atmosphere;
  const mean = pressure / (GRAVITY * depth);
  return {
    bottom: below.density,
    mean,
    pressure,
    gain: below.density / density - 1,
    sinks: mean / density - 1,
    profile: Array.from({ length: POINTS }, (_, i) => {
      const z = (depth * i) / (POINTS - 1);
      return { depth: z, density: at(z).density };
    }),
  };
}

/** The root P ≥ 1 of (1 − φ)(P − 1) + φ ln P = h. Newton's method on a concave curve. */
function pressureRatio(h: number, gas: number): number {
  if (gas === 1) return Math.exp(h);
  // 1 + h is at most the root, since ln P ≤ P − 1; on a concave curve the steps then increase
  // towards it.
  let p = 1 + h;
  for (let i = 0; i < 100; i++) {
    const step = ((1 - gas) * (p - 1) + gas * Math.log(p) - h) / (1 - gas + gas / p);
    p -= step;
    if (Math.abs(step) <= 1e-14 * p) break;
  }
  return p;
}

/**
 * Depth of a lift in geotechnical work, m: 0.6–1.2 (2–4 ft), the next lift when it bears a
 * footstep.
 * @source lift-height-practice (from memory)
 */
export const PRACTICE_LIFT = { min: 0.6, max: 1.2 } as const;

/**
 * A mix lighter than this, kg/m³, should not exceed this depth, m, until one has been seen to
 * stand. Common practice, no source.
 * @source common-practice
 */
export const LIGHT_LIFT = { below: 500, depth: 0.3 } as const;

/**
 * The deepest lift whose bottom stays within a share of the weighed density, m, in closed form: at
 * the bottom 1 − φ + φ/P = 1/(1 + g), so P = φ/(1/(1 + g) − 1 + φ), and the depth follows. Range as
 * `liftProfile`.
 *
 * @param gain the greatest share by which the bottom may be denser, above 0
 * @returns depth in m; Infinity when even gas pressed to nothing stays below it
 * @throws {DomainError} as `liftProfile`; a gain not above 0
 * @source gas-in-paste
 */
export function deepestLift(lift: Omit<Lift, 'depth'> & { readonly gain: number }): number {
  const { density, gas, gain, atmosphere = SEA_LEVEL_PRESSURE } = lift;
  demand('density', density, 'density', { min: 0, aboveMin: true });
  demand('gas', gas, 'ratio', { min: 0, max: 1 });
  demand('gain', gain, 'ratio', { min: 0, aboveMin: true });
  demand('atmosphere', atmosphere, 'pressure', { min: 0, aboveMin: true });
  const left = 1 / (1 + gain) - 1 + gas;
  if (left <= 0) return Number.POSITIVE_INFINITY;
  const p = gas / left;
  return (((1 - gas) * (p - 1) + gas * Math.log(p)) * atmosphere) / (density * GRAVITY);
}
