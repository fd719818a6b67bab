import { demand } from '../../domain-error.ts';
import {
  type Form,
  type Lift,
  LOAD_CONSTANT_METRIC,
  LOAD_CONSTANT_US,
  type Multipliers,
  type Rounding,
} from './lift.ts';
import { multipliers } from './multipliers.ts';

export interface LiftVerdict {
  readonly multipliers: Multipliers;
  /** RWL: what nearly all healthy workers could lift like this, kg. */
  readonly weightLimit: number;
  /** FIRWL: the same with the rate of lifting left out, kg. */
  readonly weightLimitWithoutRate: number;
  /** LI: mass ÷ weightLimit; Infinity when the limit is 0. */
  readonly liftingIndex: number;
  /** FILI: mass ÷ weightLimitWithoutRate; Infinity when that limit is 0. */
  readonly liftingIndexWithoutRate: number;
}

/**
 * A lifting index above this is a lift to redesign; 1 or less is the aim. Manual p. 20.
 * @source niosh-lifting-1994
 */
export const INDEX_AIM = 1;
/** Above this many workers are at high risk. Manual p. 20. @source niosh-lifting-1994 */
export const INDEX_HIGH = 3;

/**
 * How heavy may one lift be, and how does this one compare? RWL = LC·HM·VM·DM·AM·FM·CM; LI =
 * mass/RWL. Judges one end of the lift: where the load must be set down with care, the destination
 * is a second call, and the lower limit rules. Range: see `scope.ts` for what the method does not
 * cover.
 * @param lift lengths m, asymmetry rad, lifts a minute
 * @param mass of the load, kg, above 0
 * @param form metric or US constants
 * @param rounding `manual` rounds the multipliers (not the limits) as the manual's worked examples
 *   do
 * @returns limits kg, indices without unit
 * @throws {DomainError} for a mass not above 0 and for what the multipliers refuse
 * @source niosh-lifting-1994 pp. 7–20
 */
export function judgeLift(
  lift: Lift,
  mass: number,
  form: Form = 'metric',
  rounding: Rounding = 'none',
): LiftVerdict {
  demand('mass', mass, 'mass', { min: 0, aboveMin: true });
  const m = multipliers(lift, form, rounding);
  const constant = form === 'us' ? LOAD_CONSTANT_US : LOAD_CONSTANT_METRIC;
  const weightLimitWithoutRate =
    constant * m.horizontal * m.vertical * m.distance * m.asymmetry * m.coupling;
  const weightLimit = weightLimitWithoutRate * m.frequency;
  return {
    multipliers: m,
    weightLimit,
    weightLimitWithoutRate,
    liftingIndex: mass / weightLimit,
    liftingIndexWithoutRate: mass / weightLimitWithoutRate,
  };
}
