import { demand } from '../domain-error.ts';
import { type Drainage, drainedAt, timeToDrain } from './drainage-curve.ts';
import {
  type Blend,
  blendAfterStanding,
  type FoamInHand,
  type StandingFoam,
  standingFoam,
} from './standing-foam.ts';

export interface AfterWaiting extends Blend {
  /** Share of the foam's liquid drained by the time it is blended. */
  readonly lost: number;
  readonly foam: StandingFoam;
}

export interface TimeInHand extends AfterWaiting {
  /** Wet density of the same batch with fresh foam and the planned survival of its gas, kg/m³. */
  readonly planned: number;
  /**
   * The last moment, s after making, at which foam taken without its liquid gives the planned
   * density within the tolerance. Infinity: draining never takes it outside. Undefined: it is
   * outside from the start, because the mix costs too much gas.
   */
  readonly latest: number | undefined;
}

/**
 * The effect of the minutes from making to blending: the share of the liquid lost is from the
 * drainage, the densities from `blendAfterStanding`.
 *
 * @param drainage of this foam, from `fitDrainage`
 * @param wait from making to blending, s
 * @returns densities in kg/m³, the share lost 0–1. No range is published.
 * @throws {DomainError} as the functions it uses; a negative wait
 * @source common-practice mass and volume balance
 * @source food-foam-drainage the share lost
 */
export function afterWaiting({
  drainage,
  wait,
  ...hand
}: FoamInHand & { readonly drainage: Drainage; readonly wait: number }): AfterWaiting {
  const lost = drainedAt({ drainage, time: wait });
  return {
    ...blendAfterStanding({ ...hand, share: lost }),
    lost,
    foam: standingFoam({ ...hand, share: lost }),
  };
}

/**
 * How long may the foam wait? The effect of the minutes from making to blending, and the latest
 * moment.
 *
 * The share lost is from the drainage, the densities from `blendAfterStanding`. The latest moment
 * is where |liquidStays − planned| reaches the tolerance, found by bisection on the share (the
 * density is monotonic in it).
 *
 * @param drainage of this foam, from `fitDrainage`
 * @param wait from making to blending, s
 * @param tolerance of the wet density, kg/m³, above 0
 * @param survival share of the gas that the plan takes to live, 0–1; all of it by default
 * @returns see `TimeInHand`. No range is published.
 * @throws {DomainError} as the functions it uses; a negative wait; a tolerance not above 0
 * @source common-practice mass and volume balance
 * @source food-foam-drainage the share lost
 */
export function timeInHand({
  drainage,
  wait,
  tolerance,
  survival = 1,
  ...hand
}: FoamInHand & {
  readonly drainage: Drainage;
  readonly wait: number;
  readonly tolerance: number;
  readonly survival?: number;
}): TimeInHand {
  demand('wait', wait, 'time', { min: 0 });
  demand('tolerance', tolerance, 'density', { min: 0, aboveMin: true });
  const planned = blendAfterStanding({ ...hand, gasLeft: survival, share: 0 }).liquidGoesIn;
  const within = (share: number) =>
    Math.abs(blendAfterStanding({ ...hand, share }).liquidStays - planned) <= tolerance;
  return {
    ...afterWaiting({ ...hand, drainage, wait }),
    planned,
    latest: latestMoment(drainage, within),
  };
}

function latestMoment(drainage: Drainage, within: (share: number) => boolean): number | undefined {
  if (!within(0)) return undefined;
  let low = 0;
  let high = 1 - 1e-9;
  if (within(high)) return Number.POSITIVE_INFINITY;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (within(middle)) low = middle;
    else high = middle;
  }
  return timeToDrain({ drainage, share: low });
}
