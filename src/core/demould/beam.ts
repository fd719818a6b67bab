import { DomainError, demand } from '../domain-error.ts';

/** A straight part under its own uniform weight, supported at two points of its length. */
export interface HeldBeam {
  /** Whole length, m. */
  readonly length: number;
  /** From the left end to the left support, m. */
  readonly left: number;
  /** From the right end to the right support, m. */
  readonly right: number;
  /** Uniform load along the length, N/m. */
  readonly load: number;
}

export interface BeamMoments {
  /** Upward forces at the supports, N. */
  readonly reactionLeft: number;
  readonly reactionRight: number;
  /** Hogging moments over the supports (top face stretched), N·m, never negative. */
  readonly hogLeft: number;
  readonly hogRight: number;
  /**
   * Largest sagging moment between the supports (bottom face stretched), N·m; negative when the
   * whole span hogs.
   */
  readonly sag: number;
  /** From the left end to where `sag` acts, m. */
  readonly sagAt: number;
  /** The largest absolute moment, N·m. */
  readonly worst: number;
}

/**
 * The support distance, as a share of the length from each end, at which hogging over two supports
 * equals sagging between them, (√2 − 1)/2 = 0.2071…: the smallest moment a uniform beam can be held
 * with.
 * @source beam-statics
 * @source lifting-points-statics
 */
export const BEST_SUPPORT_FRACTION = (Math.SQRT2 - 1) / 2;

/**
 * Where should two lifters hold a uniform beam? Distance from each end, m: (√2 − 1)/2 · length.
 * Exact for a uniform straight beam on two knife edges; no range is published.
 * @param length whole length, m, above 0
 * @throws {DomainError} when the length is not above 0
 * @source beam-statics
 */
export function bestSupportDistance(length: number): number {
  demand('length', length, 'length', { min: 0, aboveMin: true });
  return BEST_SUPPORT_FRACTION * length;
}

/**
 * The moments in a uniform beam on two supports with ends that may overhang.
 *
 * Statics: R_left = w L (x₂ − L/2)/(x₂ − x₁); M over a support = w a²/2 (hogging); between them
 * M(x) = R_left (x − x₁) − w x²/2, largest where the shear is zero, x = R_left/w. Exact for a
 * straight beam on knife edges; no range is published.
 * @returns forces in N and moments in N·m
 * @throws {DomainError} for a length or load not above 0, supports outside the beam or in the wrong
 *   order, and `would-tip` when the middle of the beam is not between the supports
 * @source beam-statics
 */
export function heldAtTwoPoints(beam: HeldBeam): BeamMoments {
  const { length, left, right, load } = beam;
  demandHeld(beam);
  const [x1, x2] = [left, length - right];
  const reactionLeft = (load * length * (x2 - length / 2)) / (x2 - x1);
  const reactionRight = load * length - reactionLeft;
  const hogLeft = (load * left ** 2) / 2;
  const hogRight = (load * right ** 2) / 2;
  // The shear is zero inside the span whenever both supports push up.
  const sagAt = Math.min(Math.max(reactionLeft / load, x1), x2);
  const sag = reactionLeft * (sagAt - x1) - (load * sagAt ** 2) / 2;
  const worst = Math.max(hogLeft, hogRight, Math.abs(sag));
  return { reactionLeft, reactionRight, hogLeft, hogRight, sag, sagAt, worst };
}

/**
 * The moment at one place of a beam on two supports, N·m, sagging positive. Exact statics; no range
 * is published.
 * @param beam the beam, as for `heldAtTwoPoints`
 * @param x from the left end, m, within the beam
 * @throws {DomainError} as `heldAtTwoPoints`, and for a place off the beam
 * @source beam-statics
 */
export function momentAt(beam: HeldBeam, x: number): number {
  demand('x', x, 'length', { min: 0, max: beam.length });
  const { reactionLeft, reactionRight } = heldAtTwoPoints(beam);
  const [x1, x2] = [beam.left, beam.length - beam.right];
  return (
    reactionLeft * Math.max(0, x - x1) +
    reactionRight * Math.max(0, x - x2) -
    (beam.load * x ** 2) / 2
  );
}

/**
 * The largest absolute moment in a uniform beam carried in its middle, N·m. Two hands `grip` apart
 * are two supports (L − grip)/2 in from the ends, so it is that of `heldAtTwoPoints`: hogging over
 * the hands, w (L/2 − grip/2)²/2, until they are 0.586 L apart, then sagging between them. 0 is a
 * knife edge, which gives w L²/8. Exact statics; no range is published.
 * @param beam length m, grip m, load N/m
 * @throws {DomainError} for a length or load not above 0, or a grip wider than the beam
 * @source beam-statics
 */
export function carriedInTheMiddle(beam: {
  readonly length: number;
  readonly grip: number;
  readonly load: number;
}): number {
  const { length, grip, load } = beam;
  demand('length', length, 'length', { min: 0, aboveMin: true });
  demand('grip', grip, 'length', { min: 0, max: length });
  demandLoad(load, length);
  const inset = (length - grip) / 2;
  return inset < length - inset
    ? heldAtTwoPoints({ length, left: inset, right: inset, load }).worst
    : (load * inset ** 2) / 2;
}

/** There is no kind of quantity for N/m, so a load is refused as the weight of the whole beam. */
function demandLoad(load: number, length: number): void {
  demand('load', load * length, 'force', { min: 0, aboveMin: true });
}

function demandHeld({ length, left, right, load }: HeldBeam): void {
  demand('length', length, 'length', { min: 0, aboveMin: true });
  demandLoad(load, length);
  demand('left', left, 'length', { min: 0, max: length });
  demand('right', right, 'length', { min: 0, max: length });
  demand('left', left, 'length', { max: length - right, belowMax: true }, 'supports-cross');
  const middle = length / 2;
  for (const [quantity, value] of [
    ['left', left],
    ['right', right],
  ] as const)
    if (value > middle)
      throw new DomainError({
        quantity,
        value,
        kind: 'length',
        allowed: { min: 0, max: middle },
        because: 'would-tip',
      });
}
