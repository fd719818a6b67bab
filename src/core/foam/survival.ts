import { demand } from '../domain-error.ts';
import type { Note } from '../note.ts';

export interface JarReading {
  /** Time since foam and base mix were blended, s. */
  readonly time: number;
  /** Density of the blend in the jar, kg/m³, as the scale reads it. */
  readonly density: number;
}

export interface FoamSurvival {
  /**
   * Share of the foam's gas lost per second, 1/s, by the best-fit exponential; 0 if none is lost.
   */
  readonly rate: number;
  /** Share of the gas still in the blend at each reading after the first, in order of time. */
  readonly gasLeft: readonly { readonly time: number; readonly share: number }[];
  /**
   * The same rate for each pair of neighbouring readings, 1/s: constant, slowing or accelerating.
   */
  readonly between: readonly {
    readonly from: number;
    readonly to: number;
    readonly rate: number;
  }[];
  /**
   * `gas-gain`: the blend became lighter from one reading to the next, so the readings hide any
   * loss, or the mix itself produces gas.
   */
  readonly notes: readonly Note[];
}

/**
 * Does the foam survive the mix? Loss of gas from a jar of foam and base mix, weighed now and
 * later.
 *
 * Gas weighs nothing and nothing else leaves the jar, so the volume of gas in a kilogram of blend
 * is 1/ρ − 1/ρ∞, with ρ∞ the density of the blend without gas. The share left after t is that
 * volume over the first. The rate k of share = exp(−k t) is a least-squares fit to the logarithms,
 * through 1 at the first reading: k = −Σ t ln share/Σ t². Three readings at 0, 5 and 15 min are
 * usual here. No range is published; the jar stands still, the mixer does not.
 *
 * @param readings at least two, at different times, s and kg/m³
 * @param gaslessDensity density of base mix and solution blended without gas, kg/m³
 * @returns rate in 1/s, gas left and rates between readings
 * @throws {DomainError} fewer than two readings ('too-few-readings'), two at one time, a negative
 *   time, or a density not between 0 and the gasless density ('no-gas')
 * @source common-practice mass balance of a jar
 */
export function foamSurvival({
  readings,
  gaslessDensity,
}: {
  readonly readings: readonly JarReading[];
  readonly gaslessDensity: number;
}): FoamSurvival {
  demand('gaslessDensity', gaslessDensity, 'density', { min: 0, aboveMin: true });
  demand('readings', readings.length, 'count', { min: 2 }, 'too-few-readings');
  for (const { time, density } of readings) {
    demand('time', time, 'time', { min: 0 });
    const allowed = { min: 0, max: gaslessDensity, aboveMin: true, belowMax: true };
    demand('density', density, 'density', allowed, 'no-gas');
  }
  const inOrder = readings.toSorted((a, b) => a.time - b.time);
  const first = inOrder[0]!;
  const gas = ({ density }: JarReading) => 1 / density - 1 / gaslessDensity;
  const gasLeft: { time: number; share: number }[] = [];
  const between: { from: number; to: number; rate: number }[] = [];
  let [logs, squares] = [0, 0];
  for (const [i, later] of inOrder.slice(1).entries()) {
    const before = inOrder[i]!;
    demand('time', later.time, 'time', { min: before.time, aboveMin: true }, 'same-time');
    const share = gas(later) / gas(first);
    const time = later.time - first.time;
    logs -= time * Math.log(share);
    squares += time ** 2;
    gasLeft.push({ time: later.time, share });
    const rate = Math.log(gas(before) / gas(later)) / (later.time - before.time);
    between.push({ from: before.time, to: later.time, rate });
  }
  return {
    rate: Math.max(0, logs / squares),
    gasLeft,
    between,
    notes: between.some((pair) => pair.rate < 0) ? [{ code: 'gas-gain', of: 'density' }] : [],
  };
}

/**
 * What share of the gas is left after some minutes in the mix? exp(−k t).
 *
 * @param rate of loss, 1/s, from `foamSurvival`
 * @param time in the mix, s
 * @returns share of the gas, 0–1. No range is published.
 * @throws {DomainError} a negative rate or time
 * @source common-practice first-order loss
 */
export function gasLeftAfter({ rate, time }: { readonly rate: number; readonly time: number }) {
  demand('rate', rate, 'ratio', { min: 0 });
  demand('time', time, 'time', { min: 0 });
  return Math.exp(-rate * time);
}
