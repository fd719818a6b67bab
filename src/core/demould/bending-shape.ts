import { demand, demandWhole } from '../domain-error.ts';
import { interpolate } from '../interpolate.ts';
import { type HeldBeam, heldAtTwoPoints, momentAt } from './beam.ts';

export interface BendingShape {
  /** Places along the length, m from the left end. */
  readonly x: readonly number[];
  /** Moment at each place, N·m, sagging positive. */
  readonly moment: readonly number[];
  /** Deflection at each place, m, downward positive, zero at both supports. */
  readonly deflection: readonly number[];
}

/**
 * Number of steps: enough for a smooth drawn line. Common practice, no source.
 * @source common-practice
 */
const STEPS = 60;

/**
 * How does a held beam bend? Moments and deflections at even steps, for a drawing. Integrates y″ =
 * −M/(EI) twice, by Simpson's rule within each step, and sets y = 0 at the supports. Small
 * deflections of an uncracked beam; no range is published.
 * @param beam as for `heldAtTwoPoints`
 * @param stiffness E·I, N·m², above 0
 * @param steps how many steps, a whole number of at least 2
 * @throws {DomainError} as `heldAtTwoPoints`, and for a stiffness not above 0 or a number of steps
 *   that is below 2 or not whole
 * @source beam-statics
 */
export function bendingShape(beam: HeldBeam, stiffness: number, steps = STEPS): BendingShape {
  heldAtTwoPoints(beam);
  // There is no kind of quantity for N·m², so it is refused as the moment that bends the beam to a
  // radius equal to its length.
  demand('stiffness', stiffness / beam.length, 'moment', { min: 0, aboveMin: true });
  demandWhole('steps', steps, { min: 2 });
  const h = beam.length / steps;
  const x = Array.from({ length: steps + 1 }, (_, i) => Math.min(i * h, beam.length));
  const moment = x.map((place) => momentAt(beam, place));
  const fallen = [0];
  let slope = 0;
  for (let i = 0; i < steps; i++) {
    const [m0, m2] = [moment[i]!, moment[i + 1]!];
    const m1 = momentAt(beam, (x[i]! + x[i + 1]!) / 2);
    // Over one step with M a parabola: ∫M and ∫∫M in closed form.
    const area = ((m0 + 4 * m1 + m2) * h) / 6;
    const sweep = ((m0 + 2 * m1) * h * h) / 6;
    fallen.push(fallen[i]! + slope * h - sweep / stiffness);
    slope -= area / stiffness;
  }
  const [x1, x2] = [beam.left, beam.length - beam.right];
  const [y1, y2] = [interpolate(x, fallen, x1), interpolate(x, fallen, x2)];
  const deflection = fallen.map((y, i) => y - y1 - ((y2 - y1) * (x[i]! - x1)) / (x2 - x1));
  return { x, moment, deflection };
}
