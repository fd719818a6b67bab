import {
  BEST_SUPPORT_FRACTION,
  carriedInTheMiddle,
  heldAtTwoPoints,
} from '../../../src/core/demould/beam.ts';
import { bendingShape } from '../../../src/core/demould/bending-shape.ts';
import { handlingStress } from '../../../src/core/demould/handling.ts';
import { STANDARD_GRAVITY } from '../../../src/core/quantity/constants.ts';
import { type Answers, answer } from '../answer.ts';

const unitBeam = (left: number, right = left) =>
  heldAtTwoPoints({ length: 1, left, right, load: 1 });

export const beamAnswers: Answers = {
  'demould/best-support': answer({
    asks: 'Share of the length from each end where two lifters bend an even beam least',
    input: {},
    gives: 'number',
    work: () => BEST_SUPPORT_FRACTION,
  }),
  'demould/worst-moment': answer({
    asks: 'Greatest moment of an even beam held at two points, over load per length times length squared',
    input: { left: 'number', right: 'number' },
    gives: 'number',
    work: ({ left, right }) => unitBeam(left, right).worst,
  }),
  'demould/hog-and-sag': answer({
    asks: 'Hogging over the supports and sagging between them, over load per length times length squared, supports equally far in',
    input: { in: 'number' },
    gives: 'numbers',
    work: ({ in: inset }) => {
      const { hogLeft, sag } = unitBeam(inset);
      return [hogLeft, sag];
    },
  }),
  'demould/middle-moment': answer({
    asks: 'Greatest moment of an even beam carried in its middle, over load per length times length squared',
    input: { grip: 'number' },
    gives: 'number',
    work: ({ grip }) => carriedInTheMiddle({ length: 1, grip, load: 1 }),
  }),
  'demould/overhang-beam': answer({
    asks: 'Reactions (near, far from the overhang) and sagging moment of an evenly loaded span with one overhang; load 1 N/m',
    input: { span: 'number', overhang: 'number' },
    gives: 'numbers',
    work: ({ span, overhang }) => {
      const beam = { length: span + overhang, left: 0, right: overhang, load: 1 };
      const { reactionRight, reactionLeft, sag } = heldAtTwoPoints(beam);
      return [reactionRight, reactionLeft, sag];
    },
  }),
  'demould/mid-deflection': answer({
    asks: 'Deflection at the middle of an even beam on its ends, over load · length⁴ ÷ stiffness',
    input: {},
    gives: 'number',
    work: () => bendingShape({ length: 1, left: 0, right: 0, load: 1 }, 1, 40).deflection[20]!,
  }),
  'demould/four-point-moment': answer({
    asks: 'Moment at each line of lifters of a square slab lifted at four points 0.207 in, over weight per area times length cubed',
    input: {},
    gives: 'number',
    work: () => {
      const inset = BEST_SUPPORT_FRACTION;
      const density = 1 / STANDARD_GRAVITY;
      const part = { length: 1, width: 1, depth: 1, density, factor: 1, adhesion: 0 };
      return handlingStress(part, { by: 'four-points', in: inset, aside: inset }).moment;
    },
  }),
};
