import { demand } from '../domain-error.ts';
import type { Note } from '../note.ts';
import { STANDARD_GRAVITY } from '../quantity/constants.ts';
import { carriedInTheMiddle, heldAtTwoPoints } from './beam.ts';

/** A flat part and the loads on it while it is moved. */
export interface FlatPart {
  /** The dimension that spans, m. */
  readonly length: number;
  /** Across the span, m. */
  readonly width: number;
  /** The depth that resists bending, m: the thickness when carried flat, the width when on edge. */
  readonly depth: number;
  /** Density as lifted, kg/m³: the wet density unless the part has been seen to dry. */
  readonly density: number;
  /** Multiplier on the weight for stripping or handling, 1 or more. See `multipliers.ts`. */
  readonly factor: number;
  /** Pull of the mould on the underside while stripping, Pa; 0 once the part is free. */
  readonly adhesion: number;
}

/** How the part is held. Distances in m. */
export type Hold =
  /** By its two ends. */
  | { readonly by: 'ends' }
  /** At two lines, each a distance in from its end. */
  | { readonly by: 'two-points'; readonly left: number; readonly right: number }
  /** At four points, `in` from the ends of the length and `aside` from the sides of the width. */
  | { readonly by: 'four-points'; readonly in: number; readonly aside: number }
  /**
   * Tipped up about one end line, the other gripped `grip` in from its end. Worst as it leaves
   * flat.
   */
  | { readonly by: 'tipping'; readonly grip: number }
  /** In the middle, on hands `grip` apart. */
  | { readonly by: 'middle'; readonly grip: number };

export interface HandlingStress {
  /**
   * Uniform load along the length while handled, N/m: (density · g · depth · factor + adhesion) ·
   * width.
   */
  readonly load: number;
  /** The largest bending moment, N·m, over the section that resists it. */
  readonly moment: number;
  /** The largest tension in the extreme fibre, Pa. */
  readonly stress: number;
  readonly notes: readonly Note[];
}

/**
 * The width of slab that shares a lifting line's moment in a four-point lift is the least of half
 * the slab and this many thicknesses. From memory.
 * @source pci-handbook
 */
const LIFTING_STRIP_IN_THICKNESSES = 15;

/**
 * Tension in the extreme fibre of a rectangular section, Pa: 6 M/(b d²). Elastic and uncracked; no
 * range is published.
 * @throws {DomainError} for a breadth or depth not above 0
 * @source beam-statics
 */
export function bendingStress(section: {
  /** Moment, N·m. */
  readonly moment: number;
  /** Breadth, m. */
  readonly breadth: number;
  /** Depth in the plane of bending, m. */
  readonly depth: number;
}): number {
  demand('breadth', section.breadth, 'length', { min: 0, aboveMin: true });
  demand('depth', section.depth, 'length', { min: 0, aboveMin: true });
  return (6 * section.moment) / (section.breadth * section.depth ** 2);
}

/**
 * What bending tension does moving the part cause?
 *
 * Elastic, uncracked, plain: fibres are given no credit. The weight (times its multiplier) and the
 * pull of the mould act together as a uniform load; moments as `heldAtTwoPoints` and
 * `carriedInTheMiddle`. A four-point lift carries the whole weight in each direction (statics of
 * the whole section), half of it on the strip at each line of lifters. No range is published for
 * foamed concrete.
 * @param part the part, SI
 * @param hold how it is held, m
 * @returns load N/m, moment N·m, stress Pa; `strip-narrower-than-half` when the strip at a line of
 *   lifters is limited by the thickness. A multiplier above 1 stands for suction too: with adhesion
 *   beside it that is counted twice
 * @throws {DomainError} for dimensions or density not above 0, a factor below 1, a negative
 *   adhesion, or supports that could not hold the part
 * @source beam-statics
 * @source pci-handbook
 */
export function handlingStress(part: FlatPart, hold: Hold): HandlingStress {
  const { length, width, depth, density, factor, adhesion } = part;
  demand('length', length, 'length', { min: 0, aboveMin: true });
  demand('width', width, 'length', { min: 0, aboveMin: true });
  demand('depth', depth, 'length', { min: 0, aboveMin: true });
  demand('density', density, 'density', { min: 0, aboveMin: true });
  demand('factor', factor, 'ratio', { min: 1 });
  demand('adhesion', adhesion, 'stress', { min: 0 });
  const perArea = density * STANDARD_GRAVITY * depth * factor + adhesion;
  const load = perArea * width;
  if (hold.by === 'four-points') return fourPoints(part, hold, perArea);
  const moment =
    hold.by === 'middle'
      ? carriedInTheMiddle({ length, grip: hold.grip, load })
      : heldAtTwoPoints({ length, load, ...supports(hold) }).worst;
  return { load, moment, stress: bendingStress({ moment, breadth: width, depth }), notes: [] };
}

function supports(hold: Exclude<Hold, { by: 'four-points' | 'middle' }>): {
  left: number;
  right: number;
} {
  if (hold.by === 'ends') return { left: 0, right: 0 };
  if (hold.by === 'tipping') return { left: 0, right: hold.grip };
  return hold;
}

function fourPoints(
  { length, width, depth }: FlatPart,
  hold: Extract<Hold, { by: 'four-points' }>,
  perArea: number,
): HandlingStress {
  demand('in', hold.in, 'length', { max: length / 2, belowMax: true }, 'supports-cross');
  demand('aside', hold.aside, 'length', { max: width / 2, belowMax: true }, 'supports-cross');
  const along = strip(length, hold.in, width);
  const across = strip(width, hold.aside, length);
  const worst = along.stress >= across.stress ? along : across;
  return {
    load: perArea * width,
    moment: worst.moment,
    stress: worst.stress,
    notes: worst.limited ? [{ code: 'strip-narrower-than-half', of: 'depth' }] : [],
  };

  function strip(span: number, inset: number, other: number) {
    const load = (perArea * other) / 2;
    const moment = heldAtTwoPoints({ length: span, left: inset, right: inset, load }).worst;
    const most = LIFTING_STRIP_IN_THICKNESSES * depth;
    const breadth = Math.min(other / 2, most);
    return { moment, stress: bendingStress({ moment, breadth, depth }), limited: most < other / 2 };
  }
}

/**
 * How much of the strength does the handling use? Stress over strength, as a band: the strength's
 * low end gives `high`. Above 1 the part is expected to crack. No range: a comparison.
 * @param use stress Pa; flexural strength band Pa, low end above 0
 * @throws {DomainError} for a negative stress, a strength not above 0 or a band upside down
 * @source beam-statics
 */
export function utilisation(use: {
  readonly stress: number;
  readonly strength: { readonly low: number; readonly high: number };
}): { readonly low: number; readonly high: number } {
  const { stress, strength } = use;
  demand('stress', stress, 'stress', { min: 0 });
  demand('strength', strength.low, 'stress', { min: 0, aboveMin: true });
  demand('strength', strength.high, 'stress', { min: strength.low });
  return { low: stress / strength.high, high: stress / strength.low };
}
