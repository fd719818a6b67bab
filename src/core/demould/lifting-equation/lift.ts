import { POUND } from '../../quantity/constants.ts';

/**
 * The revised lifting equation is published twice, in rounded metric and rounded US units; the two
 * do not convert exactly into one another (23 kg against 51 lb, 25 cm against 10 in).
 */
export type Form = 'metric' | 'us';

/**
 * `none` keeps every digit; `manual` rounds each multiplier to two decimals as the printed tables
 * have it.
 */
export type Rounding = 'none' | 'manual';

export type Coupling = 'good' | 'fair' | 'poor';

/** How long a day the lifting goes on: up to 1 h, up to 2 h, up to 8 h, each with its recovery. */
export type Duration = 'short' | 'moderate' | 'long';

/** One end of a lift. */
interface Grasp {
  /** H: from the middle between the ankles to the middle between the hands, along the floor, m. */
  readonly horizontal: number;
  /** V: the hands above the floor, m. */
  readonly vertical: number;
  /** A: how far the load lies to the side of straight ahead, rad. */
  readonly asymmetry: number;
}

export interface Lift extends Grasp {
  /** D: how far up or down the hands travel, m. */
  readonly travel: number;
  /** F: lifts a minute, averaged over 15 minutes. */
  readonly perMinute: number;
  readonly duration: Duration;
  readonly coupling: Coupling;
}

/** The six multipliers, each 0 to 1. 1 costs nothing; 0 means the method allows no such lift. */
export interface Multipliers {
  readonly horizontal: number;
  readonly vertical: number;
  readonly distance: number;
  readonly asymmetry: number;
  readonly frequency: number;
  readonly coupling: number;
}

/** Load constant of the metric form, kg. Manual p. 7. @source niosh-lifting-1994 */
export const LOAD_CONSTANT_METRIC = 23;
/** Load constant of the US form, 51 lb in kg. Manual p. 7. @source niosh-lifting-1994 */
export const LOAD_CONSTANT_US = 51 * POUND;
