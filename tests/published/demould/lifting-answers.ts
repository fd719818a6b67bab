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
import { type Answers, answer } from '../answer.ts';

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

export const liftingAnswers: Answers = {
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
    beside: true,
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
    beside: true,
    work: averageRate,
  }),
  'demould/duration-class': answer({
    asks: 'Duration class of spells of work, each with its recovery (minutes)',
    input: { work: 'numbers', recovery: 'numbers', shortRecovery: 'number' },
    gives: 'text',
    beside: true,
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
    beside: true,
    work: ({ work, shortRecovery }) => recoveryNeeded(work, shortRecovery),
  }),
};
