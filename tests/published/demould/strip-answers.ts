import { grownBand } from '../../../src/core/curing/strength-growth.ts';
import { breakABar } from '../../../src/core/demould/break-a-bar.ts';
import { handlingStress } from '../../../src/core/demould/handling.ts';
import {
  HANDLING_MULTIPLIERS,
  LIFTING_HARDWARE_FACTOR,
  MOULD_ADHESION,
  type MouldFace,
} from '../../../src/core/demould/multipliers.ts';
import { stripWindow } from '../../../src/core/demould/strip-window.ts';
import { strippingBurden } from '../../../src/core/demould/stripping.ts';
import { STANDARD_GRAVITY } from '../../../src/core/quantity/constants.ts';
import { type Answers, answer } from '../answer.ts';

export const stripAnswers: Answers = {
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
    input: { form: 'text', finish: 'text', during: 'text' },
    gives: 'number',
    work: ({ form, finish, during }) =>
      HANDLING_MULTIPLIERS.find(
        (m) => m.form === form && m.finish === finish && m.during === during,
      )!.factor,
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
      return stripWindow({
        stress: { low: fraction, high: fraction },
        strength: (age) =>
          grownBand({
            known: { low: 1, high: 1 },
            least: { age },
            most: { age },
            coefficients: [s],
          }),
        age: (t) => ({ low: t, high: t }),
        share: 1,
        within: 365 * 86400,
      }).latest!;
    },
  }),
};
