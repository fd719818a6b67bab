import {
  BEST_SUPPORT_FRACTION,
  carriedInTheMiddle,
  heldAtTwoPoints,
} from '../../../src/core/demould/beam.ts';
import { bendingShape } from '../../../src/core/demould/bending-shape.ts';
import { breakABar } from '../../../src/core/demould/break-a-bar.ts';
import { handlingStress } from '../../../src/core/demould/handling.ts';
import { combineTasks } from '../../../src/core/demould/lifting-equation/composite.ts';
import { couplingMultiplier } from '../../../src/core/demould/lifting-equation/coupling.ts';
import {
  durationClass,
  recoveryNeeded,
} from '../../../src/core/demould/lifting-equation/duration.ts';
import {
  averageRate,
  frequencyMultiplier,
} from '../../../src/core/demould/lifting-equation/frequency.ts';
import type {
  Coupling,
  Duration,
  Form,
  Lift,
} from '../../../src/core/demould/lifting-equation/lift.ts';
import {
  asymmetricMultiplier,
  distanceMultiplier,
  estimateHorizontal,
  horizontalMultiplier,
  verticalMultiplier,
} from '../../../src/core/demould/lifting-equation/multipliers.ts';
import { judgeLift } from '../../../src/core/demould/lifting-equation/single.ts';
import {
  HANDLING_MULTIPLIERS,
  LIFTING_HARDWARE_FACTOR,
  MOULD_ADHESION,
  type MouldFace,
} from '../../../src/core/demould/multipliers.ts';
import { stripWindow } from '../../../src/core/demould/strip-window.ts';
import { strippingBurden } from '../../../src/core/demould/stripping.ts';
import { STANDARD_GRAVITY } from '../../../src/core/quantity/constants.ts';
import { answer } from '../answer.ts';

const liftInput = {
  load: 'mass',
  horizontal: 'length',
  vertical: 'length',
  travel: 'length',
  asymmetry: 'angle',
  perMinute: 'number',
  duration: 'text',
  coupling: 'text',
  form: 'text',
} as const;

function judged(
  row: Omit<Lift, 'duration' | 'coupling'> &
    Record<'duration' | 'coupling' | 'form', string> & { load: number },
) {
  const { duration, coupling, form, load, ...rest } = row;
  const lift = { ...rest, duration: duration as Duration, coupling: coupling as Coupling };
  return judgeLift(lift, load, form as Form, 'manual');
}

/** A unit beam: length 1 m under 1 N/m. */
const unitBeam = (left: number, right = left) =>
  heldAtTwoPoints({ length: 1, left, right, load: 1 });

export const answers = {
  'demould/horizontal-multiplier': answer({
    asks: 'Horizontal multiplier at a distance of the hands, as the manual prints it',
    input: { horizontal: 'length', form: 'text' },
    gives: 'number',
    work: ({ horizontal, form }) => horizontalMultiplier(horizontal, form as Form, 'manual'),
  }),
  'demould/horizontal-multiplier-exact': answer({
    asks: 'Horizontal multiplier by its formula, unrounded',
    input: { horizontal: 'length', form: 'text' },
    gives: 'number',
    work: ({ horizontal, form }) => horizontalMultiplier(horizontal, form as Form),
  }),
  'demould/vertical-multiplier': answer({
    asks: 'Vertical multiplier at a height of the hands, as the manual prints it',
    input: { vertical: 'length', form: 'text' },
    gives: 'number',
    work: ({ vertical, form }) => verticalMultiplier(vertical, form as Form, 'manual'),
  }),
  'demould/distance-multiplier': answer({
    asks: 'Distance multiplier for a travel of the hands, as the manual prints it',
    input: { travel: 'length', form: 'text' },
    gives: 'number',
    work: ({ travel, form }) => distanceMultiplier(travel, form as Form, 'manual'),
  }),
  'demould/distance-multiplier-exact': answer({
    asks: 'Distance multiplier by its formula, unrounded',
    input: { travel: 'length', form: 'text' },
    gives: 'number',
    work: ({ travel, form }) => distanceMultiplier(travel, form as Form),
  }),
  'demould/asymmetric-multiplier': answer({
    asks: 'Asymmetric multiplier at an angle of twist, as the manual prints it',
    input: { asymmetry: 'angle' },
    gives: 'number',
    work: ({ asymmetry }) => asymmetricMultiplier(asymmetry, 'manual'),
  }),
  'demould/frequency-multiplier': answer({
    asks: 'Frequency multiplier at a rate (lifts a minute), a duration and a height of the hands',
    input: { perMinute: 'number', duration: 'text', vertical: 'length', form: 'text' },
    gives: 'number',
    work: ({ perMinute, duration, vertical, form }) =>
      frequencyMultiplier({ perMinute, duration: duration as Duration, vertical }, form as Form),
  }),
  'demould/coupling-multiplier': answer({
    asks: 'Coupling multiplier of a grip at a height of the hands',
    input: { coupling: 'text', vertical: 'length', form: 'text' },
    gives: 'number',
    work: ({ coupling, vertical, form }) =>
      couplingMultiplier({ coupling: coupling as Coupling, vertical }, form as Form),
  }),
  'demould/horizontal-estimate': answer({
    asks: 'Horizontal distance estimated from the depth of the load',
    input: { depth: 'length', vertical: 'length', form: 'text' },
    gives: 'length',
    work: ({ depth, vertical, form }) => estimateHorizontal({ depth, vertical }, form as Form),
  }),
  'demould/weight-limit': answer({
    asks: 'Recommended weight limit of a lift, with the manual’s rounding of the multipliers',
    input: liftInput,
    gives: 'mass',
    work: (row) => judged(row).weightLimit,
  }),
  'demould/lifting-index': answer({
    asks: 'Lifting index of a load, with the manual’s rounding of the multipliers',
    input: liftInput,
    gives: 'number',
    work: (row) => judged(row).liftingIndex,
  }),
  'demould/composite-index': answer({
    asks: 'Composite lifting index of tasks from their single-task and frequency-independent indices and rates (short duration, hands above 75 cm)',
    input: { liftingIndex: 'numbers', withoutRate: 'numbers', perMinute: 'numbers' },
    gives: 'number',
    work: ({ liftingIndex, withoutRate, perMinute }) =>
      combineTasks(
        liftingIndex.map((li, i) => ({
          liftingIndex: li,
          liftingIndexWithoutRate: withoutRate[i]!,
          perMinute: perMinute[i]!,
          duration: 'short' as const,
          vertical: 1,
        })),
        'metric',
      ).compositeIndex,
  }),
  'demould/average-rate': answer({
    asks: 'Lifts a minute that count when lifting fills part of each quarter of an hour',
    input: { perMinute: 'number', minutes: 'number' },
    gives: 'number',
    work: averageRate,
  }),
  'demould/duration-class': answer({
    asks: 'Duration class of spells of work, each with its recovery (minutes)',
    input: { work: 'numbers', recovery: 'numbers', shortRecovery: 'number' },
    gives: 'text',
    work: ({ work, recovery, shortRecovery }) =>
      durationClass(
        work.map((w, i) => ({ work: w * 60, recovery: recovery[i]! * 60 })),
        shortRecovery,
      ).duration,
  }),
  'demould/recovery-needed': answer({
    asks: 'Light work or rest that must follow a spell of lifting',
    input: { work: 'time', shortRecovery: 'number' },
    gives: 'time',
    work: ({ work, shortRecovery }) => recoveryNeeded(work, shortRecovery),
  }),
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
    asks: 'Moment of an even beam balanced over its middle, over load per length times length squared',
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
  'demould/handling-stress': answer({
    asks: 'Bending tension in a flat part lifted by its two ends',
    input: {
      length: 'length',
      width: 'length',
      depth: 'length',
      density: 'density',
      factor: 'number',
      adhesion: 'stress',
    },
    gives: 'stress',
    work: (part) => handlingStress(part, { by: 'ends' }).stress,
  }),
  'demould/stripping-stress': answer({
    asks: 'Bending tension in a flat part lifted by its two ends out of its form, the larger of a factor on its weight and a pull on its face',
    input: {
      length: 'length',
      width: 'length',
      depth: 'length',
      density: 'density',
      factor: 'number',
      adhesion: 'stress',
    },
    gives: 'stress',
    work: (part) => {
      const { factor, adhesion } = strippingBurden(part);
      return handlingStress({ ...part, factor, adhesion }, { by: 'ends' }).stress;
    },
  }),
  'demould/handling-multiplier': answer({
    asks: 'Multiplier on the weight for a form, finish and stage',
    input: { row: 'text' },
    gives: 'number',
    work: ({ row }) => HANDLING_MULTIPLIERS.find(({ id }) => id === row)!.factor,
  }),
  'demould/mould-adhesion': answer({
    asks: 'Pull of a mould face on the part that leaves it',
    input: { face: 'text' },
    gives: 'stress',
    work: ({ face }) => MOULD_ADHESION[face as MouldFace],
  }),
  'demould/hardware-factor': answer({
    asks: 'How many times its load a lifting insert or hardware must hold',
    input: { part: 'text' },
    gives: 'number',
    work: ({ part }) => LIFTING_HARDWARE_FACTOR[part as keyof typeof LIFTING_HARDWARE_FACTOR],
  }),
  'demould/flexural-strength': answer({
    asks: 'Modulus of rupture of a bar, own weight left out',
    input: {
      loading: 'text',
      load: 'force',
      span: 'length',
      breadth: 'length',
      depth: 'length',
      brokeAt: 'length',
    },
    gives: 'stress',
    work: ({ loading, load, span, breadth, depth, brokeAt }) => {
      const sure = (value: number) => ({ value, uncertainty: 0 });
      return breakABar(
        {
          span: sure(span),
          breadth: sure(breadth),
          depth: sure(depth),
          length: sure(span),
          barMass: sure(0),
          hung: sure(load / STANDARD_GRAVITY),
        },
        loading as 'centre' | 'thirds',
        brokeAt,
      ).strength;
    },
  }),
  'demould/strip-time': answer({
    asks: 'Time at which a share of the strength is reached, growth exp(s(1 − √(28 d/t))) at 20 °C',
    input: { fraction: 'number', s: 'number' },
    gives: 'time',
    work: ({ fraction, s }) => {
      const grow = (age: number) => Math.exp(s * (1 - Math.sqrt((28 * 86400) / age)));
      const clock = (elapsed: number) => elapsed;
      return stripWindow({
        stress: { low: fraction, high: fraction },
        strength28: { low: 1, high: 1 },
        gain: { slow: grow, fast: grow },
        adjustedAge: { slow: clock, fast: clock },
        share: 1,
        within: 365 * 86400,
      }).latest!;
    },
  }),
};
