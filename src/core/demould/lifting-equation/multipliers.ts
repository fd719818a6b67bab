import { demand } from '../../domain-error.ts';
import { INCH } from '../../quantity/constants.ts';
import { justOver } from '../../quantity/dust.ts';
import { couplingMultiplier } from './coupling.ts';
import { frequencyMultiplier } from './frequency.ts';
import type { Form, Lift, Multipliers, Rounding } from './lift.ts';
import { toTwoDecimals } from './rounding.ts';

const CENTIMETRE = 0.01;

/** The constants of one form, in that form's own unit of length. Manual pp. 7–12. */
interface Constants {
  readonly unit: number;
  /** H at and below which HM is 1, and H beyond which it is 0. */
  readonly near: number;
  readonly far: number;
  readonly bestHeight: number;
  readonly perHeight: number;
  readonly highest: number;
  readonly travelShare: number;
  readonly leastTravel: number;
  readonly mostTravel: number;
  /**
   * Entries of the printed tables that differ from their own formula as rounded: [argument,
   * printed].
   */
  readonly printedHorizontal: readonly (readonly [number, number])[];
  readonly printedDistance: readonly (readonly [number, number])[];
}

const METRIC: Constants = {
  unit: CENTIMETRE,
  near: 25,
  far: 63,
  bestHeight: 75,
  perHeight: 0.003,
  highest: 175,
  travelShare: 4.5,
  leastTravel: 25,
  mostTravel: 175,
  printedHorizontal: [],
  printedDistance: [[130, 0.86]],
};

const US: Constants = {
  unit: INCH,
  near: 10,
  far: 25,
  bestHeight: 30,
  perHeight: 0.0075,
  highest: 70,
  travelShare: 1.8,
  leastTravel: 10,
  mostTravel: 70,
  printedHorizontal: [
    [22, 0.46],
    [23, 0.44],
  ],
  printedDistance: [],
};

/**
 * The shortest reach of the method, m; a shorter one counts as this. pp. 7–8.
 * @source niosh-lifting-1994
 */
export const NEAREST_REACH = METRIC.near * METRIC.unit;

const constants = (form: Form) => (form === 'us' ? US : METRIC);

/**
 * HM: 25/H (cm) or 10/H (in); 1 at 25 cm (10 in) and nearer, 0 beyond 63 cm (25 in). There the
 * method's range ends.
 * @param horizontal H, m, above 0
 * @throws {DomainError} for H not above 0
 * @source niosh-lifting-1994 pp. 7–8, Table 1
 */
export function horizontalMultiplier(
  horizontal: number,
  form: Form,
  rounding: Rounding = 'none',
): number {
  demand('horizontal', horizontal, 'length', { min: 0, aboveMin: true });
  const { unit, near, far, printedHorizontal } = constants(form);
  const h = horizontal / unit;
  if (over(h, far)) return 0;
  return rounded(near / Math.max(h, near), h, printedHorizontal, rounding);
}

/**
 * VM: 1 − 0.003 |V − 75| (cm) or 1 − 0.0075 |V − 30| (in); 0 above 175 cm (70 in). There the
 * method's range ends.
 * @param vertical V, m, from the floor up
 * @throws {DomainError} for a V below the floor
 * @source niosh-lifting-1994 pp. 7, 9, Table 2
 */
export function verticalMultiplier(
  vertical: number,
  form: Form,
  rounding: Rounding = 'none',
): number {
  demand('vertical', vertical, 'length', { min: 0 });
  const { unit, bestHeight, perHeight, highest } = constants(form);
  const v = vertical / unit;
  if (over(v, highest)) return 0;
  return rounded(1 - perHeight * Math.abs(v - bestHeight), v, [], rounding);
}

/**
 * DM: 0.82 + 4.5/D (cm) or 0.82 + 1.8/D (in); 1 at 25 cm (10 in) and less, 0 beyond 175 cm (70 in).
 * There the method's range ends.
 * @param travel D, m, 0 or more
 * @throws {DomainError} for a negative D
 * @source niosh-lifting-1994 pp. 7, 10–11, Table 3
 */
export function distanceMultiplier(
  travel: number,
  form: Form,
  rounding: Rounding = 'none',
): number {
  demand('travel', travel, 'length', { min: 0 });
  const { unit, leastTravel, mostTravel, travelShare, printedDistance } = constants(form);
  const d = travel / unit;
  if (over(d, mostTravel)) return 0;
  return rounded(0.82 + travelShare / Math.max(d, leastTravel), d, printedDistance, rounding);
}

/**
 * AM: 1 − 0.0032 A with A in degrees; 0 above 135°. There the method's range ends.
 * @param asymmetry A, rad, from 0 to π
 * @throws {DomainError} for an angle outside 0–π
 * @source niosh-lifting-1994 pp. 7, 12, Table 4
 */
export function asymmetricMultiplier(asymmetry: number, rounding: Rounding = 'none'): number {
  demand('asymmetry', asymmetry, 'angle', { min: 0, max: Math.PI });
  const degrees = (asymmetry * 180) / Math.PI;
  return over(degrees, 135) ? 0 : rounded(1 - 0.0032 * degrees, degrees, [], rounding);
}

/**
 * All six multipliers of one lift. Ranges as the single multipliers.
 * @param lift lengths m, asymmetry rad, lifts a minute
 * @returns each 0 to 1
 * @throws {DomainError} for what the single multipliers refuse
 * @source niosh-lifting-1994 pp. 7–17
 */
export function multipliers(lift: Lift, form: Form, rounding: Rounding = 'none'): Multipliers {
  return {
    horizontal: horizontalMultiplier(lift.horizontal, form, rounding),
    vertical: verticalMultiplier(lift.vertical, form, rounding),
    distance: distanceMultiplier(lift.travel, form, rounding),
    asymmetry: asymmetricMultiplier(lift.asymmetry, rounding),
    frequency: frequencyMultiplier(lift, form),
    coupling: couplingMultiplier(lift, form),
  };
}

/**
 * H when it cannot be measured, m, from the depth W of the load (front to back): 20 cm + W/2 with
 * the hands at 25 cm or higher, 25 cm + W/2 lower (8 in and 10 in from 10 in). No range is
 * published.
 * @param load depth W m; vertical V m
 * @throws {DomainError} for a depth not above 0 or a V below the floor
 * @source niosh-lifting-1994 p. 8
 */
export function estimateHorizontal(
  load: { readonly depth: number; readonly vertical: number },
  form: Form,
): number {
  demand('depth', load.depth, 'length', { min: 0, aboveMin: true });
  demand('vertical', load.vertical, 'length', { min: 0 });
  const { unit, near } = constants(form);
  const high = !over(near, load.vertical / unit);
  const reach = form === 'us' ? (high ? 8 : 10) : high ? 20 : 25;
  return reach * unit + load.depth / 2;
}

/** Whether a value exceeds a limit by more than the rounding error of a unit conversion. */
function over(value: number, limit: number): boolean {
  return value > justOver(limit);
}

function rounded(
  exact: number,
  argument: number,
  printed: readonly (readonly [number, number])[],
  rounding: Rounding,
): number {
  if (rounding === 'none') return exact;
  const entry = printed.find(([at]) => Math.abs(at - argument) < 1e-9);
  return entry?.[1] ?? toTwoDecimals(exact);
}
